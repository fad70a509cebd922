// R102: picture missing.
import { defineDiagnostic } from './define.js';
import { libraryFile } from './register-example.js';

export const pictureMissing = defineDiagnostic<{ readonly path: string; readonly outside: boolean }>({
  code: 'R102',
  name: 'picture-missing',
  severity: 'warning',
  message: (d) => (d.outside ? `${d.path} lies outside the library` : `there is no file ${d.path}`),
  advice: (d) => (d.outside ? "only files below the library's root are printed" : undefined),
  why: `The guide is printed with an empty frame where the technician looks for the third bolt. Paths are counted from the file that names the picture.`,
  wrong: `--- file: procedures/a.bay
${libraryFile('', 'A-1').replace('--- file: \n', '')}    picture "../pictures/mirror.svg": Mirror from the inside.
#           ^^^^^^^^^^^^^^^^^^^^^^^^ R102
`,
  right: `--- file: pictures/mirror.svg
<svg/>
--- file: procedures/a.bay
${libraryFile('', 'A-1').replace('--- file: \n', '')}    picture "../pictures/mirror.svg": Mirror from the inside.
`,
});
