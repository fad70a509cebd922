// The same guide as a page, printed by Chromium.   node chromium.mjs [TIMES] prints milliseconds
import { chromium } from 'playwright-core';
import { markdown, procedure } from '../content.mjs';
import { clock, median, peer } from '../measure.mjs';

const times = Number(process.argv[2] ?? 1);
const { default: MarkdownIt } = await peer('markdown-it');
const html = `<!doctype html><meta charset="utf-8">${MarkdownIt().render(markdown(procedure('P-1', 640)))}`;
const launch = () => chromium.launch({ executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium' });
const print = async (browser) => {
  const page = await browser.newPage();
  await page.setContent(html);
  await page.pdf({ format: 'A4', tagged: true });
  await page.close();
};
const cold = [];
for (let i = 0; i < 3; i++)
  cold.push(
    await clock(async () => {
      const browser = await launch();
      await print(browser);
      await browser.close();
    }),
  );
const browser = await launch();
await print(browser);
const warm = [];
for (let i = 0; i < times; i++) warm.push(await clock(() => print(browser)));
await browser.close();
console.log(JSON.stringify({ cold: median(cold), warm: median(warm) }));
