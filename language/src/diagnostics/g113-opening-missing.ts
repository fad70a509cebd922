// A file that begins with neither procedure nor catalogue.
import { defineDiagnostic } from './define.js';

export const openingMissing = defineDiagnostic<Record<string, never>>({
  code: 'G113',
  name: 'opening-missing',
  severity: 'error',
  message: () => 'the file does not begin with `procedure` or `catalogue`',
  advice: () => 'begin with `procedure NUMBER: title`, or with `catalogue: title` for declarations and rules',
  why: `The first line says what the file is and what it is called. Everything else refers to it.`,
  wrong: `sides left, right
# <<<<< G113`,
  right: `procedure A-1: Mirror, replace

sides left, right`,
});
