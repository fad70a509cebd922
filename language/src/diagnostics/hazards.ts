// The diagnostics of hazards: signal words and the usual cautions.
import { messageAfterAction } from './h101-message-after-action.js';
import { noticeOfInjury } from './h102-notice-of-injury.js';
import { cautionOfDamage } from './h103-caution-of-damage.js';
import { graveWordForDamage } from './h104-grave-word-for-damage.js';
import { signalTooWeak } from './h105-signal-too-weak.js';
import { messageRepeated } from './h106-message-repeated.js';
import { usualWarningMissing } from './h201-usual-warning-missing.js';
import { usualCautionMissing } from './h202-usual-caution-missing.js';

export const HAZARD_DIAGNOSTICS = [
  messageAfterAction,
  noticeOfInjury,
  cautionOfDamage,
  graveWordForDamage,
  signalTooWeak,
  messageRepeated,
  usualWarningMissing,
  usualCautionMissing,
] as const;
