// A comma at the end of the code with nothing after it.
import { defineDiagnostic } from './define.js';

export const trailingComma = defineDiagnostic<Record<string, never>>({
  code: 'G109',
  name: 'trailing-comma',
  severity: 'error',
  message: () => 'nothing follows this comma',
  advice: () => 'take it out, or go on with the list on the next line, deeper',
  why: `A comma that ends a line carries the list over to the next, deeper line. Here there is none: a name is missing, or the comma is one too many.`,
  wrong: `procedure A-1: Mirror, replace

sides left, right,
#                ^ G109
labour 25 min`,
  right: `procedure A-1: Mirror, replace

sides left, right
labour 25 min`,
});
