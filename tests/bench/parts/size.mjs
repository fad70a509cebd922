// What an installation weighs: the command with its one native package, and the extension.
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from '../measure.mjs';

export function size() {
  const command = ['compiler/dist', 'compiler/fonts', 'compiler/schemas', 'compiler/templates']
    .map((folder) => weigh(join(ROOT, folder), (name) => !name.endsWith('.d.ts')))
    .reduce((a, b) => a + b, 0);
  const typesetter = readdirSync(join(ROOT, 'node_modules/@myriaddreamin'))
    .filter((name) => name.startsWith('typst-ts-node-compiler'))
    .map((name) => weigh(join(ROOT, 'node_modules/@myriaddreamin', name)))
    .reduce((a, b) => a + b, 0);
  const packages = existsSync(join(ROOT, 'extension'))
    ? readdirSync(join(ROOT, 'extension')).filter((name) => name.endsWith('.vsix'))
    : [];
  const rows = [
    {
      work: 'installed size of the command, with its typesetter',
      ours: (command + typesetter) / 1e6,
      unit: 'MB',
      goal: 90,
      peers: [],
    },
  ];
  const universal = packages
    .map((name) => statSync(join(ROOT, 'extension', name)).size)
    .sort((a, b) => a - b)[0];
  if (universal !== undefined)
    rows.push({
      work: 'extension, universal package',
      ours: universal / 1e6,
      unit: 'MB',
      goal: 1.5,
      peers: [],
    });
  return rows;
}

function weigh(folder, counts = () => true) {
  if (!existsSync(folder)) return 0;
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && counts(entry.name))
    .reduce((sum, entry) => sum + statSync(join(entry.parentPath ?? entry.path, entry.name)).size, 0);
}
