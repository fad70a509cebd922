// The diagnostics of the register: numbers, status, revisions, pictures, and the library as a whole.
import { numberTwice } from './r101-number-twice.js';
import { pictureMissing } from './r102-picture-missing.js';
import { changedSinceIssue } from './r103-changed-since-issue.js';
import { performsUnreleased } from './r104-performs-unreleased.js';
import { releasedWithOpenPoints } from './r105-released-with-open-points.js';
import { reviewDue } from './r106-review-due.js';
import { revisionOrder } from './r107-revision-order.js';
import { statusUnknown } from './r108-status-unknown.js';
import { releaseNotSigned } from './r109-release-not-signed.js';
import { dayImpossible } from './r110-day-impossible.js';
import { labourFarOff } from './r111-labour-far-off.js';
import { performsWithdrawn } from './r112-performs-withdrawn.js';
import { entryUnused } from './r201-entry-unused.js';
import { ruleBindsNothing } from './r202-rule-binds-nothing.js';
import { declaredAlike } from './r203-declared-alike.js';
import { acceptUnused } from './r901-accept-unused.js';

export const REGISTER_DIAGNOSTICS = [
  numberTwice,
  pictureMissing,
  changedSinceIssue,
  performsUnreleased,
  releasedWithOpenPoints,
  reviewDue,
  revisionOrder,
  statusUnknown,
  releaseNotSigned,
  dayImpossible,
  labourFarOff,
  performsWithdrawn,
  entryUnused,
  ruleBindsNothing,
  declaredAlike,
  acceptUnused,
] as const;

/** Found over the whole library, not when one file is checked. */
export const LIBRARY_WIDE_DIAGNOSTICS = [entryUnused, ruleBindsNothing, declaredAlike] as const;
