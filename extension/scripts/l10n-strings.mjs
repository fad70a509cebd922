// The sentences that the client asks the editor to translate: every `l10n.t('…')` in src. Tests hold the bundles to it.
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const SOURCE = fileURLToPath(new URL('../src/', import.meta.url));

export function l10nStrings() {
  const files = readdirSync(SOURCE, { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.ts'),
  );
  const found = files.flatMap((name) =>
    [...readFileSync(SOURCE + name, 'utf8').matchAll(/l10n\.t\(\s*'((?:[^'\\]|\\.)*)'/g)].map((match) =>
      match[1].replace(/\\'/g, "'"),
    ),
  );
  return [...new Set(found)].sort();
}

if (process.argv[1] === fileURLToPath(import.meta.url))
  for (const text of l10nStrings()) process.stdout.write(`${text}\n`);
