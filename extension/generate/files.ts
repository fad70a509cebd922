// The files of the extension that are made from the tables of the language: all of them, or in part.
import { buildGrammar } from './grammar.js';
import { manifestParts } from './manifest.js';

/** Each file below `extension/` with its text. `read` gives the present text of files that are generated in part. */
export function extensionFiles(
  read: (name: string) => string,
): readonly { readonly name: string; text(): string }[] {
  return [
    { name: 'syntaxes/baywright.tmLanguage.json', text: () => json(buildGrammar()) },
    { name: 'package.json', text: () => manifest(read('package.json')) },
    { name: 'package.nls.json', text: () => texts(read('package.nls.json')) },
  ];
}

/** Settings and token types are generated; commands, menus and views are written by hand. */
function manifest(present: string): string {
  const { texts: _texts, ...parts } = manifestParts();
  const whole = JSON.parse(present) as { contributes: object };
  return json({ ...whole, contributes: { ...whole.contributes, ...parts } });
}

function texts(present: string): string {
  const byHand = Object.entries(JSON.parse(present) as Record<string, string>).filter(
    ([key]) => !key.startsWith('setting.'),
  );
  return json({ ...Object.fromEntries(byHand), ...manifestParts().texts });
}

function json(value: unknown): string {
  return `${JSON.stringify(value, null, 2)}\n`;
}
