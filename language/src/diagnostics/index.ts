// The catalogue of findings: every code once. Reference pages, `explain`, tests and severity settings read it.
import type { DiagnosticDef } from './define.js';
import { FASTENER_DIAGNOSTICS } from './fasteners.js';
import { FLUID_DIAGNOSTICS } from './fluids.js';
import { GRAMMAR_DIAGNOSTICS } from './grammar.js';
import { HAZARD_DIAGNOSTICS } from './hazards.js';
import { NAME_DIAGNOSTICS } from './names.js';
import { QUANTITY_DIAGNOSTICS } from './quantities.js';
import { REGISTER_DIAGNOSTICS } from './register.js';
import { SETTINGS_DIAGNOSTICS } from './settings.js';
import { STATE_DIAGNOSTICS } from './state.js';
import { VARIANT_DIAGNOSTICS } from './variants.js';
import { WORDING_DIAGNOSTICS } from './wording.js';

export const DIAGNOSTICS: readonly DiagnosticDef<never>[] = [
  ...GRAMMAR_DIAGNOSTICS,
  ...STATE_DIAGNOSTICS,
  ...QUANTITY_DIAGNOSTICS,
  ...NAME_DIAGNOSTICS,
  ...VARIANT_DIAGNOSTICS,
  ...FASTENER_DIAGNOSTICS,
  ...FLUID_DIAGNOSTICS,
  ...HAZARD_DIAGNOSTICS,
  ...WORDING_DIAGNOSTICS,
  ...REGISTER_DIAGNOSTICS,
  ...SETTINGS_DIAGNOSTICS,
];
