// Makes the pictures of the README from the real thing: pages of a sample's PDF. `node compiler/scripts/pictures.mjs`,
// after `npm run build`; needs pdftoppm (Debian: poppler-utils).
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const PICTURES = join(ROOT, 'language/docs/pictures');
/** Which page of which guide becomes which picture. */
const PAGES = [
  { procedure: 'samples/procedures/FH-12-front-hub.bay', page: 1, name: 'guide-first-page' },
  { procedure: 'samples/procedures/FH-12-front-hub.bay', page: 3, name: 'guide-steps' },
];
const DOTS_PER_INCH = 80;

const folder = mkdtempSync(join(tmpdir(), 'baywright-pictures-'));
try {
  mkdirSync(PICTURES, { recursive: true });
  for (const { procedure, page, name } of PAGES) {
    const program = join(ROOT, 'compiler/dist/baywright.js');
    const choices = ['--side', 'left', '--format', 'pdf', '--out', folder];
    execFileSync('node', [program, 'build', join(ROOT, procedure), ...choices], { stdio: 'inherit' });
    const pdf = readdirSync(folder, { recursive: true, encoding: 'utf8' }).find((path) =>
      path.endsWith('.pdf'),
    );
    if (pdf === undefined) throw new Error(`no PDF was made of ${procedure}`);
    const only = [
      '-f',
      String(page),
      '-l',
      String(page),
      '-singlefile',
      '-r',
      String(DOTS_PER_INCH),
      '-gray',
      '-png',
    ];
    execFileSync('pdftoppm', [...only, join(folder, pdf), join(PICTURES, name)]);
    console.log(`language/docs/pictures/${name}.png`);
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
