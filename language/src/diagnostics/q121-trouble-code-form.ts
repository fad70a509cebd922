// A trouble code of a form that none has.
import { defineDiagnostic } from './define.js';

export const troubleCodeForm = defineDiagnostic<{
  readonly code: string;
  readonly problem: string;
  readonly meant: string | undefined;
}>({
  code: 'Q121',
  name: 'trouble-code-form',
  severity: 'hint',
  message: ({ code, problem }) => `\`${code}\` is no trouble code: ${problem}`,
  advice: ({ meant }) => (meant === undefined ? undefined : `did you mean \`${meant}\`?`),
  why: `A trouble code is a letter P, C, B or U, a digit 0 to 3 and three hexadecimal digits (SAE J2012, ISO 15031-6). An O typed for a zero cannot be found in any table, nor by looking for it in this library. Looked at in the text of lines that read, scan or clear, and in titles that speak of codes.`,
  wrong: `procedure EN-1: Ignition codes, read

tools
  code-reader: Code reader

inspection
  step: Read what is stored
    read codes with code-reader
      expect: PO301 or nothing at all
#             ^^^^^ Q121
`,
  right: `procedure EN-1: Ignition codes, read

tools
  code-reader: Code reader

inspection
  step: Read what is stored
    read codes with code-reader
      expect: P0301 or nothing at all
`,
});
