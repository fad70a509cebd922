// Work that stands in no step.
import { defineDiagnostic } from './define.js';

export const stepMissing = defineDiagnostic<{ readonly head: string }>({
  code: 'G112',
  name: 'step-missing',
  severity: 'error',
  message: ({ head }) => `\`${head}\` stands in no step`,
  advice: () => 'put a `step:` with a title above it',
  why: `The guide numbers and ticks off steps. Work outside a step has no number, so it is easily passed over.`,
  wrong: `procedure A-1: Mirror, clean

places
  mirror: Door mirror

inspection
  clean mirror
# ^^^^^ G112`,
  right: `procedure A-1: Mirror, clean

places
  mirror: Door mirror

inspection
  step: Clean the mirror
    clean mirror`,
});
