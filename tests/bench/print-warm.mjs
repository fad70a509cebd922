// Prints one guide of a folder again and again in one process and gives the median as JSON.   node print-warm.mjs FOLDER [TIMES]
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { renderPdf } from '@baywright/compiler';
import { createLibrary, DEFAULT_SETTINGS } from '@baywright/language';
import { clock, median } from './measure.mjs';

const [folder = '.', times = '12'] = process.argv.slice(2);
const { lowerGuide } = await import('../../compiler/dist/document/lower/index.js');
const read = (path) => {
  try {
    return readFileSync(join(folder, path), 'utf8');
  } catch {
    return undefined;
  }
};
const library = createLibrary({ read, list: () => ['catalogue.bay', 'job-0.bay'] }, DEFAULT_SETTINGS);
const analysis = library.analyse('job-0.bay');
const choice = { sheet: 'guide', option: {}, units: DEFAULT_SETTINGS.units, language: 'en' };
const shelf = { settings: DEFAULT_SETTINGS, bytes: () => undefined };
let pages = 0;
const make = async () => {
  ({ pages } = await renderPdf(lowerGuide(analysis, choice, shelf).document));
};
await make();
await make();
const taken = [];
for (let i = 0; i < Number(times); i++) taken.push(await clock(make));
console.log(JSON.stringify({ ms: median(taken), pages }));
process.exit(0);
