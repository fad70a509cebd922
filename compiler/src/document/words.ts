// The fixed words of the sheets, in the language of the print. `{name}` stands for a value. Renderers hold no words
// of their own: a guide in another language needs another table and nothing else.

export const WORD_KEYS = [
  // Running head and foot
  'page', 'revision', 'jobNumber', 'continued', 'atTop', 'atFoot', 'offCount', 'torqueCount', 'noBan', 'draft', 'withdrawn',
  // First page
  'printedFor', 'beforeYouStart', 'needKind', 'needWhat', 'needFor', 'needNumber', 'needAmount', 'needBin',
  'keyTitle', 'keyBand', 'keyBroken', 'keyHeads', 'keyBar', 'sources', 'questions', 'codeAlt',
  'revisions', 'revisionHead', 'dateHead', 'changeHead', 'whereHead', 'statement', 'wear', 'dangerMeaning',
  'band', 'brokenLine', 'smallHeads', 'edgeBar',
  // Steps
  'hold', 'holdRule', 'stop', 'initials', 'time', 'fromHere', 'endsHere', 'why', 'clockSince', 'clockNotBefore',
  'clockNotAfter', 'atLeast', 'atMost', 'limitOpen', 'timesDone', 'marginNotes', 'openQuestion', 'times',
  // Record, card, off now
  'recordReadings', 'recordTorques', 'recordHolds', 'at', 'what', 'limit', 'found', 'pass', 'fail', 'joint', 'count', 'torque',
  'wrench', 'checked', 'signature', 'socket', 'how', 'backAt', 'offSince', 'clocks', 'bansNow', 'torquesLeft', 'none',
  // The page in the bay
  'skip', 'steps', 'jobState', 'stillOff', 'toTorque', 'doneOf', 'undo', 'startAgain', 'startAgainSure', 'sign', 'signed', 'saveRecord',
  'printRecord', 'notYet', 'whyHold', 'whyReading', 'whyFailed', 'whyOff', 'whyTicks', 'whyClock', 'whyFields', 'noReading',
  'readingPass', 'readingLow', 'readingHigh', 'notNumber', 'notNeeded', 'clockStart', 'clockLeft', 'clockDone', 'clockOver',
  'clockTimeLeft', 'readings', 'holds', 'nothing', 'kept', 'notKept', 'unit', 'good', 'bad', 'open', 'closed', 'filter', 'noMatch',
] as const;

export type WordKey = (typeof WORD_KEYS)[number];
export type Words = Readonly<Record<WordKey, string>>;

/** Puts values into a phrase: `say('page {page} of {pages}', { page: 2, pages: 6 })`. Unknown slots stay as they are. */
export function say(phrase: string, values: Readonly<Record<string, string | number>>): string {
  return phrase.replace(/\{(\w+)\}/g, (slot, name: string) => (name in values ? String(values[name]) : slot));
}
