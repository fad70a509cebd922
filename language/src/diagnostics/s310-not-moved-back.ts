// S310: not moved back.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const notMovedBack = defineDiagnostic<StateWords>({
  code: 'S310',
  name: 'not-moved-back',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} moved here and never moved back to \`${d.value}\``,
  why: 'A part left in its working position does not do its job: an axle pushed in carries no load, a tensioner held back tensions nothing.',
  wrong: `procedure A-11: Axle bore, clean

parts
  axle: Drive axle
    positions seated, pushed-in

places
  seal-bore: Bore of the axle seal

removal
  step: Push the axle in
    move axle to pushed-in
#   ^^^^^^^^^^^^^^^^^^^^^^ S310

inspection
  step: Clean the bore
    clean seal-bore
`,
  right: `procedure A-11: Axle bore, clean

parts
  axle: Drive axle
    positions seated, pushed-in

places
  seal-bore: Bore of the axle seal

removal
  step: Push the axle in
    move axle to pushed-in

inspection
  step: Clean the bore
    clean seal-bore

installation
  step: Pull the axle out
    move axle to seated
`,
});
