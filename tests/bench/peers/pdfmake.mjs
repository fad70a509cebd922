// Six pages by pdfmake from its own document tree, with the type that Baywright ships.   node pdfmake.mjs [TIMES] prints milliseconds
import { join } from 'node:path';
import { procedure } from '../content.mjs';
import { clock, median, peer, ROOT } from '../measure.mjs';

const times = Number(process.argv[2] ?? 1);
const folder = join(ROOT, 'compiler/fonts');
const face = (name) => join(folder, `AtkinsonHyperlegibleNext_${name}.ttf`);
const { default: pdfmake } = await peer('pdfmake');
pdfmake.setUrlAccessPolicy(() => false);
pdfmake.setLocalAccessPolicy(() => true);
pdfmake.setFonts({ Text: { normal: face('400Regular'), bold: face('700Bold') } });

const { groups, number, title } = procedure('P-1', 640);
const document = () => ({
  defaultStyle: { font: 'Text', fontSize: 10 },
  pageSize: 'A4',
  info: { title },
  content: [
    { text: `${number}: ${title}`, fontSize: 18, bold: true },
    {
      table: {
        headerRows: 1,
        body: [
          ['Name', 'What', 'Thread', 'Torque'].map((text) => ({ text, bold: true })),
          ...groups.map((g) => [g.bolt, g.boltTitle, 'M8x1.25, class 8.8', `${g.torque} N·m`]),
        ],
      },
    },
    { ol: groups.map((g, i) => [`Take part ${i} off`, { text: `Remove ${g.bolt} and ${g.part}.` }]) },
    {
      ol: groups.map((g, i) => [
        `Fit part ${i}`,
        { text: `Install ${g.part}. Torque ${g.bolt} to ${g.torque} N·m.` },
      ]),
    },
  ],
});
const make = () => pdfmake.createPdf(document()).getBuffer();
const taken = [];
for (let i = 0; i < times; i++) taken.push(await clock(make));
console.log(JSON.stringify({ ms: median(taken.slice(times > 3 ? 2 : 0)) }));
