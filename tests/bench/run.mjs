// The benchmark: everything the project promises about speed and memory, beside its peers, in one run.
//   npm run bench                        all of it, about ten minutes; writes tests/bench/RESULTS.md
//   node tests/bench/run.mjs --quick     smaller libraries, for a first look; writes nothing
//   node tests/bench/run.mjs --only=editing,library,guides,size,growth
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { installPeers } from './install.mjs';
import { editing } from './parts/editing.mjs';
import { growth } from './parts/growth.mjs';
import { guides } from './parts/guides.mjs';
import { library } from './parts/library.mjs';
import { size } from './parts/size.mjs';
import { curves, machine, results, table } from './report.mjs';

const quick = process.argv.includes('--quick');
const only = process.argv
  .find((arg) => arg.startsWith('--only='))
  ?.slice('--only='.length)
  .split(',');
const wants = (name) => only === undefined || only.includes(name);

installPeers();
// How busy the machine was before the benchmark made it so.
const on = machine();
const rows = [];
for (const [name, part] of Object.entries({ editing, library, guides, size })) {
  if (!wants(name)) continue;
  const found = await part({ quick });
  rows.push(...found);
  console.log(`${table(found)}\n`);
}
const curve = wants('growth') ? growth({ quick }) : [];
console.log(curves(curve));
if (!quick && only === undefined) {
  const day = new Date().toISOString().slice(0, 10);
  writeFileSync(
    fileURLToPath(new URL('./RESULTS.md', import.meta.url)),
    results({ rows, growth: curve, day, on }),
  );
  console.log('\nWritten to tests/bench/RESULTS.md.');
}
process.exit(0);
