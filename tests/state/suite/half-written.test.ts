// What a draft leaves off is a question until somebody begins to put it back: a first draft is no wall of errors.
import { expect, test } from 'vitest';
import { findingsOf } from '../../suite-helper.js';

const draft = (status: string, more: string): string => `procedure A-1: Mirror, renew
${status}
parts
  mirror: Door mirror
    held by mirror-screw

fasteners
  mirror-screw: Mirror screws
    3 of M6x1.0
    no torque

removal
  step: Take it off
    remove mirror-screw, mirror
${more}`;

const INSPECTION = '\ninspection\n  step: Look\n    clean mirror\n';
const INSTALLATION = '\ninstallation\n  step: Look\n    clean mirror\n';

test.each([
  ['a draft of the taking-off half', '', '', 'question'],
  ['with a look at what came off', 'status draft\n', INSPECTION, 'question'],
  ['with its second half begun', 'status draft\n', INSTALLATION, 'error'],
  ['a proved one', 'status proved by KM\n', '', 'error'],
])('%s', (_name, status, more, severity) => {
  const found = findingsOf(new Map([['a.bay', draft(status, more)]])).filter(({ code }) => code === 'S301');
  expect(found.map((f) => f.severity)).toEqual([severity]);
});
