// The catalogue of findings: every code once. Reference pages, `explain`, tests and severity settings read it.
import type { DiagnosticDef } from './define.js';
import { FASTENER_DIAGNOSTICS } from './fasteners.js';
import { FLUID_DIAGNOSTICS } from './fluids.js';
import { SETTINGS_DIAGNOSTICS } from './settings.js';

export const DIAGNOSTICS: readonly DiagnosticDef<never>[] = [...FASTENER_DIAGNOSTICS, ...FLUID_DIAGNOSTICS, ...SETTINGS_DIAGNOSTICS];
