// Lays the files of one package out in a folder of its own: only what runs, and a manifest without what only builds.
import { cpSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const EXTENSION = `${ROOT}extension/`;

const FILES = [
  'README.md',
  'CHANGELOG.md',
  'package.nls.json',
  'package.nls.es.json',
  'package.nls.fr.json',
  'package.nls.de.json',
  'language-configuration.json',
  'icons/baywright.png',
  'icons/views.svg',
  'icons/file-light.svg',
  'icons/file-dark.svg',
  'l10n',
  'media',
  'syntaxes',
  'walkthrough',
  'dist/preview.js',
];

/** Server and command lie as they lie in the repository, so that they find each other by the same paths. */
const BUNDLES = [
  'compiler/dist/worker.js',
  'compiler/dist/baywright.js',
  'compiler/dist/program.cjs',
  'compiler/templates/html',
  // By this one the program knows its own folder.
  'compiler/templates/pdf/base.typ',
  'compiler/fonts/AtkinsonHyperlegibleNext-latin.woff2',
  'compiler/fonts/AtkinsonHyperlegibleNext-latin-ext.woff2',
  'compiler/fonts/OFL.txt',
];
/** What the PDF engine reads; left out of the universal package, which a browser fetches. */
const BESIDE_ENGINE = ['compiler/fonts', 'compiler/templates/pdf'];

export function stage(target, engine) {
  const folder = `${ROOT}out/extension/stage/${target}`;
  const unbuilt = [...BUNDLES, ...BESIDE_ENGINE].filter((file) => !existsSync(ROOT + file));
  if (unbuilt.length > 0) throw new Error(`not built yet: ${unbuilt.join(', ')}. Run: npm run build`);
  rmSync(folder, { recursive: true, force: true });
  const copy = (from, to) => cpSync(from, `${folder}/${to}`, { recursive: true });
  for (const file of FILES) copy(EXTENSION + file, file);
  copy(`${EXTENSION}dist/client.cjs`, CLIENT);
  copy(`${ROOT}compiler/schemas/baywright.schema.json`, 'schemas/baywright.schema.json');
  if (existsSync(`${ROOT}LICENSE`)) copy(`${ROOT}LICENSE`, 'LICENSE.txt');
  for (const file of [...BUNDLES, ...(engine ? BESIDE_ENGINE : [])]) copy(ROOT + file, `bundles/${file}`);
  if (engine) {
    const scope = 'bundles/node_modules/@myriaddreamin';
    copy(engine.face, `${scope}/typst-ts-node-compiler`);
    copy(engine.native, `${scope}/typst-ts-node-compiler-${engine.suffix}`);
  }
  mkdirSync(`${folder}/bundles`, { recursive: true });
  writeFileSync(`${folder}/bundles/package.json`, '{ "type": "module" }\n');
  const manifest = shippedManifest();
  writeFileSync(`${folder}/package.json`, `${JSON.stringify(manifest, null, 2)}\n`);
  return { folder, version: manifest.version };
}

/** The one entry. A browser's loader puts `.js` behind every other name. */
const CLIENT = 'dist/client.js';

/** Without `type` the entry is CommonJS, as both loaders want it. */
function shippedManifest() {
  const {
    private: _private,
    type: _type,
    scripts: _scripts,
    dependencies: _bundled,
    devDependencies: _dev,
    engines,
    ...manifest
  } = JSON.parse(readFileSync(`${EXTENSION}package.json`, 'utf8'));
  // All that is staged is shipped; saying so keeps the packager from asking.
  const entry = `./${CLIENT}`;
  return { ...manifest, main: entry, browser: entry, files: ['**'], engines: { vscode: engines.vscode } };
}
