// Packages the extension into out/extension: one universal package, for the browser too, without the PDF engine, and
// one for each platform with it, so that a shop PC prints with nothing else installed.
//   node extension/scripts/package.mjs [--target universal|linux-x64|…]…    (all of them when none is named)
import { existsSync, mkdirSync, statSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { createVSIX } from '@vscode/vsce';
import { bundle } from './bundle.mjs';
import { ENGINES, fetchEngine } from './engines.mjs';
import { smaller } from './smaller.mjs';
import { stage } from './stage.mjs';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const OUT = `${ROOT}out/extension`;
/** The scripts of server and command, most of what a package weighs. */
const SCRIPTS = ['compiler/dist/worker.js', 'compiler/dist/program.cjs'];
/** What the universal package may weigh, in bytes: it is what a browser fetches. */
const UNIVERSAL_LIMIT = 1.5e6;

export async function packageExtension(targets) {
  await bundle();
  mkdirSync(OUT, { recursive: true });
  const missing = [];
  for (const target of targets) {
    const engine = target === 'universal' ? undefined : fetchEngine(target);
    if (target !== 'universal' && !engine) {
      missing.push(target);
      continue;
    }
    const { folder, version } = stage(target, engine);
    for (const file of SCRIPTS) writeFileSync(`${folder}/bundles/${file}`, await smaller(ROOT + file));
    const name = target === 'universal' ? `baywright-${version}.vsix` : `baywright-${target}-${version}.vsix`;
    const packagePath = `${OUT}/${name}`;
    await createVSIX({
      cwd: folder,
      packagePath,
      dependencies: false,
      allowMissingRepository: true,
      skipLicense: !existsSync(`${folder}/LICENSE.txt`),
      ...(target !== 'universal' && { target }),
    });
    const { size } = statSync(packagePath);
    process.stdout.write(`${name}  ${(size / 1e6).toFixed(2)} MB\n`);
    if (target === 'universal' && size > UNIVERSAL_LIMIT) throw new Error(`${name} weighs more than 1.5 MB`);
  }
  return missing;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { values } = parseArgs({ options: { target: { type: 'string', multiple: true } } });
  try {
    const missing = await packageExtension(values.target ?? ['universal', ...Object.keys(ENGINES)]);
    if (missing.length > 0)
      throw new Error(`not made, because their PDF engine could not be fetched: ${missing.join(', ')}`);
  } catch (error) {
    process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
    process.exitCode = 1;
  }
}
