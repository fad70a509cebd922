// The torque card in print: on as few pages as can be, each of which says what it is.
import type { Language } from '@baywright/language';
import { afterAll, expect, test } from 'vitest';
import { renderPdf } from '../../compiler/src/output.js';
import { openEngine } from '../../compiler/src/pdf/engine.js';
import { openSamples } from './sample-guides.js';
import { pdfText } from './support.js';

const engine = openEngine();
afterAll(engine.close);

test('a torque card stands closer where that saves a page with one line on it', async () => {
  const { document } = openSamples().lower('procedures/HC-17-head-cover.bay', {
    sheet: 'torque-card',
    side: 'right',
  });
  const { pages } = await renderPdf(document, {}, engine);
  expect(pages).toBe(1);
});

test('joints of both sides share a row of the torque card where that saves a page', async () => {
  const card = async (folder: string, name: string, language: Language = 'en') => {
    const choice = { sheet: 'torque-card', language } as const;
    const { document } = openSamples(folder).lower(`procedures/${name}.bay`, choice);
    const { pdf, pages } = await renderPdf(document, { paper: folder === 'us' ? 'letter' : 'a4' }, engine);
    return { pages, said: pdfText(pdf, '-raw').replace(/\s+/g, ' ') };
  };
  const long = await card('us', 'SP-02-spindle');
  expect(long.pages).toBe(2);
  expect(long.said).toContain('7.10 14.10 King pin draw keys with nuts 7/16-20 UNF');
  expect(long.said).toContain('Left Right');
  // What is for both in one line, stays so.
  expect(long.said).toContain('21.18 Wheel nuts, recheck');
  // The sides have longer names: one page more, of the four that it was.
  expect((await card('us', 'SP-02-spindle', 'es')).pages).toBe(3);
  const short = await card('', 'RD-04-rear-door');
  expect(short.pages).toBe(1);
  expect(short.said).toContain('4.7 Striker bolts, left');
  expect(short.said).toContain('8.7 Striker bolts, right');
});

test('each page of a torque card says what it is', async () => {
  const { document } = openSamples('us').lower('procedures/SP-02-spindle.bay', { sheet: 'torque-card' });
  const { pdf, pages } = await renderPdf(document, { paper: 'letter' }, engine);
  expect(pages).toBeGreaterThan(1);
  for (const page of pdfText(pdf, '-raw').split('\f').slice(0, pages)) expect(page).toContain('Torque card');
});
