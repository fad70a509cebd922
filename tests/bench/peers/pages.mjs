// Pages by general converters: every file of a folder to an HTML file in another.
//   node pages.mjs FOLDER OUT markdown-it|asciidoctor
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { peer } from '../measure.mjs';

const [folder = '.', out = '.', way = 'markdown-it'] = process.argv.slice(2);
const render = way === 'asciidoctor' ? await asciidoctor() : await markdownIt();
mkdirSync(out, { recursive: true });
for (const name of readdirSync(folder))
  writeFileSync(join(out, `${name}.html`), await render(readFileSync(join(folder, name), 'utf8')));

async function markdownIt() {
  const { default: MarkdownIt } = await peer('markdown-it');
  const converter = MarkdownIt();
  return (text) => `<!doctype html><meta charset="utf-8">${converter.render(text)}`;
}

async function asciidoctor() {
  const module = await peer('@asciidoctor/core');
  const converter = typeof module.default === 'function' ? module.default() : module;
  return (text) => converter.convert(text, { standalone: true });
}
