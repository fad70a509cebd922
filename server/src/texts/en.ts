// The server's own words in English: titles of actions, labels of hovers and lenses, progress, refusals. Messages of
// findings, titles of their fixes and what words of the language mean come from the language, which has them in English.
export const EN = {
  // Where something holds
  when: (variants: string) => `when ${variants}`,
  counted: (done: number, all: number) => `${done} of ${all}`,
  andMore: (names: string, more: number) => `${names} and ${more} more`,

  // Progress and notices
  checkingLibrary: 'Checking the library',
  readingLibrary: 'Reading the library',
  suppressedNothing: (entries: string) =>
    `These settings of baywright.findings.suppress silence nothing: ${entries}`,
  notStarted: 'Baywright has not been started.',
  notOurs: (uri: string | undefined) => `${uri ?? 'The document'} is no Baywright file of this folder.`,

  // Actions
  mendAll: (count: number, name: string) => `Mend all ${count} of “${name}” in this file`,
  importFor: (path: string, name: string) => `Use ${path} for ${name}`,
  performFrom: (operation: string, number: string) => `Perform ${operation} from ${number}`,
  acceptHere: (code: string) => `Accept ${code} here, with a reason`,
  applySafe: 'Apply all safe fixes',
  organiseImports: 'Organise imports',
  fittingHalf: 'Write the fitting half from the taking-off half',
  moveTo: (name: string, file: string) => `Move ${name} to ${file}`,
  writeAs: (quantity: string) => `Write as ${quantity}`,
  referTo: (reference: string) => `Refer to ${reference} instead of a number`,
  splitStep: 'Split the step here',
  toOperation: (steps: number, again: number) =>
    `Turn ${steps === 1 ? 'this step' : 'these steps'} into an operation${again === 0 ? '' : `, performed ${again === 1 ? 'once more' : `${again} times more`}`}`,

  // Lenses
  off: (count: number) => `${count} off`,
  backOn: (count: number) => `${count} back on`,
  owed: (count: number) => (count === 0 ? 'nothing owed' : `${count} owed`),
  usedBy: (count: number) =>
    count === 0
      ? 'used by no other procedure'
      : count === 1
        ? 'used by 1 procedure'
        : `used by ${count} procedures`,

  // Hovers and hints
  beforeLine: (state: string) => `Before this line: ${state.slice(0, 1).toLowerCase()}${state.slice(1)}`,
  mayMean: (word: string, units: readonly string[]) => `“${word}” may mean ${units.join(' or ')}.`,
  asksThat: 'Asks that',
  comesOffAfter: (names: string, more: number) =>
    `Comes off after ${more > 0 ? `${more} more, ` : ''}${names}`,
  setOnWrench: (torque: string, name: string) => `Set **${torque}** on the wrench for ${name}`,
  ofDrag: (torque: string) => `${torque} of drag`,
  adapterOn: (adapter: string, offset: number, wrench: string, lever: number) =>
    `${adapter} of ${offset} mm on ${wrench} of ${lever} mm`,
  fromTo: (low: string, high: string) => `${low} to ${high}`,
  preload: (force: string, percent: number) => `preload ${force}, ${percent} % of proof`,
  nutProof: (percent: number) => `the nut itself at ${percent} % of its proof`,
  withFriction: (low: string, high: string) => `(${low} to ${high} with the friction)`,
  pitch: (length: string) => `Pitch ${length}`,
  stressArea: (area: string) => `Tensile stress area ${area}`,
  strength: (proof: number, tensile: number) => `Proof ${proof} MPa, tensile ${tensile} MPa`,
  wrench: (name: string) => `wrench: ${name}`,
  operationNeeds: (things: string) => `Needs before it: ${things}`,
  operationLeaves: (things: string) => `Leaves: ${things}`,
  stepsComeTo: (handsOn: string, waiting: string | undefined, all: string) =>
    `The steps come to **${handsOn}** with hands on (usual minutes of the bare work), ${waiting ?? 'nothing'} waiting, ${all} in all`,
  freezesAt: (celsius: number, glycol: string) => `Freezes at ${celsius} °C (${glycol})`,
  ethylene: 'ethylene glycol',
  propylene: 'propylene glycol',
  pouredOf: (fill: string, concentrate: string, water: string) =>
    `${fill}: ${concentrate} of concentrate and ${water} of water`,
  foundWeak: (percent: number, drain: string) =>
    `found at ${percent} %, drain ${drain} and fill with concentrate`,
  lastsFrom: (least: string) => `Lasts to the next service from ${least}`,
  newLasts: (services: number) => `a new one lasts ${services} service${services === 1 ? '' : 's'}`,
  fresh: 'new',
  since: (step: string) => `since “${step}”`,

  // Signatures and completion
  mayBeLeftOut: 'May be left out.',
  oneOrMore: 'One or more, with commas.',
  notYet: (names: string) => `Not yet: ${names} first.`,
  undeclared: 'used and not declared',
  ofASet: 'of a set',
  mark: 'mark',
  thread: 'thread',
  anotherValue: 'Another value.',
  anotherOption: 'Another option.',
  alternative: 'Names an alternative.',
  onlyForThese: 'Only for these variants.',
  lineOnlyFor: 'The line holds for these variants only.',
  existsOnlyOn: 'The thing exists on these variants only.',
  fromProcedure: 'The procedure that has the operation.',
  usual: 'usual',
  belowLimit: 'The reading is under its limit.',
  aboveLimit: 'The reading is over its limit.',
  outsideLimit: 'The reading is under or over its limit.',
  withinLimit: 'The reading is inside its limits.',
  isRejected: 'What was looked at is unfit.',
  isNeeded: 'It does not come off or go on by itself.',
  stepSnippet: 'A step with its first line.',
  partSnippet: 'A part with what holds it.',
  fastenerSnippet: 'A set of fasteners with thread, head and torque.',
  procedureSnippet: 'A procedure from its opening line to its first step.',
  retainer: 'without a thread',
  notKnownYet: 'not known yet',
  turnBack: 'Turned back before the next stage.',
  inPasses: (passes: number, source: string) => `In ${passes} passes, as is usual for a flange (${source}).`,
  nextStage: 'Another stage of the torque.',
  setSnippet: 'How many, of what thread, with what head.',
  entrySnippet: 'An entry with its title.',
  catalogueSnippet: 'A catalogue from its opening line to its vehicle.',
  measureSnippet: 'A reading, and what is done beyond its limit.',
  inspectSnippet: 'A look, and what makes the thing unfit.',
  liftSnippet: 'Chock, raise and support, with its warning.',
  fromYear: 'The first model year.',
  whatDay: 'The day, as 2026-10-05.',
  byWhom: 'Who signed.',

  // Renaming
  noNameHere: 'There is no declared name here to rename.',
  notAName: (name: string) =>
    `“${name}” cannot be a name: use letters, digits and single hyphens, beginning with a letter.`,
  notSmall: (name: string) => `“${name}” cannot be a name: names are written in small letters.`,
  reserved: (name: string) => `“${name}” cannot be a name: it means something in the language.`,
  nameTaken: (name: string, title: string) => `“${name}” is already the name of ${title}.`,
  notAWord: (word: string) => `“${word}” cannot stand here: use small letters, digits and single hyphens.`,
  wordTaken: (word: string, beside: string) => `“${word}” is already there beside “${beside}”.`,

  // Guides
  noGuides: 'Guides are made by the Baywright command, which is not here.',
  noSigning: 'Procedures are signed and issued by the Baywright command, which is not here.',
  noPreview: 'The preview is made by the Baywright command, which is not here.',
};

/** What every language has. */
export type Texts = typeof EN;
