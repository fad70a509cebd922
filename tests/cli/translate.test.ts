// Translations: gathered beside the sources, kept when sources change, used by prints.
import { expect, it } from 'vitest';
import { mergeTranslations, readTranslations } from '../../compiler/src/translate/po.js';
import { baywright } from './fake-shell.js';

const files = {
  'baywright.json': '{ "languages": ["en", "de"] }',
  'van.bay': 'catalogue: Van\n\nvehicles\n  van: Test van\n\nplaces\n  lamp: Rear lamp\n',
  'a.bay': `procedure A-1: Lamp, look at

use "van.bay"

applies to van

inspection
  step: Look
    inspect lamp: With the light on.
      reject: cracks
`,
};

it('gathers what is printed, by source file', async () => {
  const { code, out, files: after } = await baywright('translate', { files });
  expect(code).toBe(0);
  expect(out).toBe('a.de.po: 4 texts, 4 not translated\nvan.de.po: 2 texts, 2 not translated\n');
  expect(after.get('a.de.po')).toContain('msgid "With the light on."\nmsgstr ""');
});

it('lists what is missing and writes nothing', async () => {
  const { code, out, files: after } = await baywright('translate --list', { files });
  expect(code).toBe(1);
  expect(out).toContain('  Rear lamp\n');
  expect([...after.keys()]).not.toContain('a.de.po');
});

it('prints a translation, and marks what has none', async () => {
  const po =
    'msgid ""\nmsgstr "Content-Type: text/plain; charset=utf-8\\n"\n\nmsgid "Rear lamp"\nmsgstr "Rücklicht"\n';
  const { files: after, err } = await baywright('build a.bay --format html --language de', {
    files: { ...files, 'van.de.po': po },
  });
  const html = String(after.get('out/a.de.html'));
  expect(/<strong>Rücklicht<\/strong> sichtprüfen/.exec(html)?.[0]).toBeDefined();
  expect(html).toContain('<span lang="en">With the light on.</span> [en]');
  expect(html).toContain('<h1 lang="en">Lamp, look at</h1>');
  expect(html).toMatch(/<h2 id="h-s1" lang="en">.*Look<\/h2>/);
  expect(html).toContain('<b>1</b><span lang="en">Look</span>');
  expect(err).toBe('');
});

it('prints as written where the file of translations is no text', async () => {
  const { code, err } = await baywright('build a.bay --format html --language de', {
    files: { ...files, 'a.de.po': new Uint8Array([0x6d, 0xff, 0x00]) },
  });
  expect([code, err]).toEqual([0, '']);
});

const translated = (po: string, text: string, translation: string): string =>
  po.replace(`msgid "${text}"\nmsgstr ""`, `msgid "${text}"\nmsgstr "${translation}"`);

it('keeps what was translated, in the order of the source, and puts away what the source no longer says', () => {
  const empty = mergeTranslations('one two', 'a.bay', ['one', 'two'], 'es').po;
  const before = translated(translated(empty, 'one', 'uno'), 'two', 'dos');
  const { po, missing, all } = mergeTranslations('three one', 'a.bay', ['three', 'one'], 'es', before);
  expect([all, missing]).toEqual([2, ['three']]);
  expect([...readTranslations(po)]).toEqual([['one', 'uno']]);
  expect(po.indexOf('three')).toBeLessThan(po.indexOf('"one"'));
  expect(po).toContain('#~ msgid "two"\n#~ msgstr "dos"');
});

it('takes a translation back when the source says its text again', () => {
  const before = translated(mergeTranslations('two', 'a.bay', ['two'], 'es').po, 'two', 'dos');
  const without = mergeTranslations('one', 'a.bay', ['one'], 'es', before).po;
  const again = mergeTranslations('two', 'a.bay', ['two'], 'es', without);
  expect([again.po, again.missing]).toEqual([before, []]);
});

it('offers the translation of a text that was reworded, as doubtful, until it is reworded back', () => {
  const was = 'Wipe the "face" with a clean rag.';
  const now = 'Wipe the "face" with a dry rag.';
  const first = mergeTranslations(was, 'a.bay', [was], 'es').po;
  const before = first.replace('rag."\nmsgstr ""', 'rag."\nmsgstr "Limpie la cara con un trapo."');
  const { po, missing } = mergeTranslations(now, 'a.bay', [now], 'es', before);
  expect(missing).toEqual([now]);
  expect(readTranslations(po).size).toBe(0);
  expect(po).toContain(`#, fuzzy
#| msgid "Wipe the \\"face\\" with a clean rag."
msgid "Wipe the \\"face\\" with a dry rag."
msgstr "Limpie la cara con un trapo."`);
  const back = mergeTranslations(was, 'a.bay', [was], 'es', po);
  expect(back.missing).toEqual([]);
  expect(readTranslations(back.po)).toEqual(new Map([[was, 'Limpie la cara con un trapo.']]));
});

it('keeps entries with a context, plural forms and what other programs note beside a text', () => {
  const before = mergeTranslations('one', 'a.bay', ['one'], 'es').po.replace(
    'msgid "one"\nmsgstr ""',
    `#: drawing.svg:4
#. On the cover.
msgid "one"
msgid_plural "ones"
msgstr[0] "uno"
msgstr[1] "unos"

#, c-format
msgctxt "cover"
msgid "one"
msgstr "una"`,
  );
  expect(mergeTranslations('one', 'a.bay', ['one'], 'es', before).po).toBe(before);
  expect([...readTranslations(before)]).toEqual([['one', 'uno']]);
});

it('keeps the remark at the top of the file', () => {
  const before = `# Read by RB before it is printed.\n${mergeTranslations('one', 'a.bay', ['one'], 'de').po}`;
  expect(mergeTranslations('one', 'a.bay', ['one'], 'de', before).po).toBe(before);
});

it('keeps what a translation editor wrote beside the texts: who translated, marks, and what it put away', () => {
  const before = `# Read by KM.
msgid ""
msgstr ""
"Content-Type: text/plain; charset=iso-8859-1\\n"
"Last-Translator: KM\\n"
"Language: xx\\n"

#, fuzzy, no-wrap
msgid "one"
msgstr "uno"

#~ msgid "old words"
#~ msgstr "palabras viejas"
`;
  const { po } = mergeTranslations('one', 'a.bay', ['one'], 'es', before);
  expect(po).toBe(`# Read by KM.
msgid ""
msgstr ""
"Content-Type: text/plain; charset=utf-8\\n"
"Last-Translator: KM\\n"
"Language: es\\n"
"X-Source: a.bay\\n"

#, fuzzy, no-wrap
msgid "one"
msgstr "uno"

#~ msgid "old words"
#~ msgstr "palabras viejas"
`);
  expect(mergeTranslations('one', 'a.bay', ['one'], 'es', po).po).toBe(po);
});
