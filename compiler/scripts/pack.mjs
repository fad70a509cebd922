// Packs the command into one file that installs on a clean folder: `node pack.mjs [FOLDER]`, after `npm run build`.
// The packages of this repository travel inside it; those of the registry are fetched on installing. No script of ours
// runs on installing.
import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '../..');
const target = resolve(process.argv[2] ?? join(root, 'out'));
const stage = mkdtempSync(join(tmpdir(), 'baywright-pack-'));
const manifest = (folder) => JSON.parse(readFileSync(join(root, folder, 'package.json'), 'utf8'));

const INSIDE = ['language', 'server'];
const compiler = manifest('compiler');
const inside = INSIDE.map(manifest);
const versions = new Set([compiler, ...inside].map(({ version }) => version));
if (versions.size !== 1) throw new Error(`the packages have several versions: ${[...versions].join(', ')}`);

/** Maps and build notes are of no use to a user. */
const isWanted = (path) => !/\.(?:map|tsbuildinfo)$/.test(path);
const copy = (from, to) => cpSync(join(root, from), join(stage, to), { recursive: true, filter: isWanted });

try {
  for (const part of compiler.files) copy(`compiler/${part}`, part);
  for (const name of ['LICENSE', 'README.md']) copy(name, name);
  for (const [i, folder] of INSIDE.entries()) {
    const { name, version, license, type, engines, exports, dependencies } = inside[i];
    copy(`${folder}/dist`, `node_modules/${name}/dist`);
    const own = { name, version, license, type, engines, exports: withoutSource(exports), dependencies };
    writeFileSync(join(stage, 'node_modules', name, 'package.json'), json(own));
  }
  const names = inside.map(({ name }) => name);
  // What the packages inside need is asked for outside, so that one look at the list tells everything.
  const dependencies = Object.assign({}, ...inside.map((one) => one.dependencies), compiler.dependencies);
  const { devDependencies, ...kept } = compiler;
  writeFileSync(
    join(stage, 'package.json'),
    json({
      ...kept,
      exports: withoutSource(compiler.exports),
      dependencies: sorted(dependencies),
      bundleDependencies: names,
    }),
  );
  mkdirSync(target, { recursive: true });
  const out = execFileSync('npm', ['pack', '--silent', '--pack-destination', target], {
    cwd: stage,
    encoding: 'utf8',
  });
  process.stdout.write(`${join(target, out.trim())}\n`);
} finally {
  rmSync(stage, { recursive: true });
}

/** The source condition is for this repository alone. */
function withoutSource(exports) {
  const own = Object.entries(exports).map(([path, { source, ...rest }]) => [path, rest]);
  return Object.fromEntries(own);
}

function sorted(record) {
  return Object.fromEntries(Object.entries(record).sort(([a], [b]) => (a < b ? -1 : 1)));
}

function json(value) {
  return `${JSON.stringify(value, undefined, 2)}\n`;
}
