// The head of the first page: title, what it is for, times, what to look at before, and what this print is for.
import type { BlockOf } from '../../document/blocks.js';
import { codeDrawing } from '../../document/drawing/code.js';
import { PRINT_INKS } from '../../document/drawing/drawing.js';
import { planDrawing } from '../../document/drawing/plan.js';
import { say } from '../../document/words.js';
import type { PrintContext } from '../context.js';
import { markedTitle, titleCode } from '../prose.js';
import { saidPicture } from '../steps/boxes.js';
import { SIDE, WIDTH } from '../steps/frame.js';
import { drawn, high, moved, type Part, placed, prose, stacked, together, words } from '../steps/set.js';
import { linesHigh, widthOf } from '../type/faces.js';
import { fill } from '../type/lines.js';
import { type Run, textRuns } from '../type/runs.js';
import { call, type Raw, sequence } from '../typst-code.js';

const CODE = 19;

export function mastheadPart(block: BlockOf<'masthead'>, context: PrintContext): Part {
  const { accent } = context.frame;
  const code = saidPicture(
    codeDrawing(block.code, PRINT_INKS),
    say(context.words.codeAlt, { text: block.code }),
    CODE,
  );
  const width = WIDTH - CODE - 6;
  const lines = fill(titleRuns(context), width).count;
  const title = placed(linesHigh(lines, 26), (x, y) => call('main-title', [x, y, width, mainTitle(context)]));
  const head = together(
    stacked(3, [title, prose(block.appliesTo, { size: 12 }, width)]),
    moved(code, WIDTH - CODE, 0),
  );
  const print = printedFor(block, context);
  // One print for all says nothing of itself, and leaves its place to the rest.
  const left = print ? WIDTH - SIDE - 6 : WIDTH;
  const facts = stacked(3.5, [
    ...(block.times.length > 0 ? [timesPart(block.times, left)] : []),
    ...(block.before.length > 0 ? [beforePart(block, left, context)] : []),
  ]);
  if (!print) return facts.height > 0 ? stacked(4.5, [head, facts]) : head;
  const frame = drawn(print.height, (art, x, y) => art.frame(x, y, SIDE, print.height, 1.5, accent));
  return stacked(4.5, [head, together(facts, moved(together(frame, print), WIDTH - SIDE, 0))]);
}

/** The mark of a missing translation is small behind a title, and never alone on a line. */
const MARK = { size: 12, weight: 400 };

const markOf = ({ titleLanguage }: PrintContext): string => markedTitle('', titleLanguage);

const titleRuns = (context: PrintContext): readonly Run[] => [
  ...textRuns(context.title, { size: 26, weight: 800 }),
  ...textRuns(markOf(context), MARK),
];

function mainTitle(context: PrintContext): Raw {
  const title = titleCode(context.title, context.titleLanguage);
  const mark = markOf(context);
  return mark === '' ? title : sequence([title, call('title-mark', [MARK.size, MARK.weight, mark])]);
}

/** Between two times beside each other. */
const APART = 5;

/** As many beside each other as fit; their labels may take two lines. */
function timesPart(times: BlockOf<'masthead'>['times'], width: number): Part {
  const label = { size: 8.5 };
  // Smaller, where that puts them all beside each other.
  const wideAt = (size: number) =>
    times.reduce(
      (sum, time) => sum + Math.max(widthOf(time.value, '800ExtraBold', size, true), labelWidth(time.label)),
      APART * (times.length - 1) + 0.2 * times.length,
    );
  const size = [16, 14.5, 13].find((one) => wideAt(one) <= width) ?? 16;
  const value = { size, weight: 800, tabular: true };
  const columns = times.map((time) => {
    const valueWide = widthOf(time.value, '800ExtraBold', size, true) + 0.2;
    const labelWide = labelWidth(time.label);
    return {
      wide: Math.min(Math.max(valueWide, labelWide), width),
      label: words(time.label, label, labelWide),
      value: words(time.value, value, Math.min(valueWide, width)),
    };
  });
  const lines: (typeof columns)[] = [];
  let used = 0;
  for (const column of columns) {
    const line = lines.at(-1);
    if (line && used + column.wide <= width) line.push(column);
    else lines.push([column]);
    used = (line && used + column.wide <= width ? used : 0) + column.wide + APART;
  }
  return stacked(
    2.4,
    lines.map((line) => {
      // The figures stand on one line.
      const labels = Math.max(...line.map((column) => column.label.height));
      let x = 0;
      return together(
        ...line.map((column) => {
          const both = stacked(1.9, [moved(column.label, 0, labels - column.label.height), column.value]);
          const at = moved(both, x, 0);
          x += column.wide + APART;
          return at;
        }),
      );
    }),
  );
}

const labelWidth = (label: string): number => Math.min(30, widthOf(label, '400Regular', 8.5) + 0.2);

function beforePart({ before }: BlockOf<'masthead'>, width: number, { words: said }: PrintContext): Part {
  const rows = before.map((one) => {
    const text = prose(one, { size: 10 }, width - 5.8);
    const tick = drawn(3.8, (art, x, y) => art.frame(x, y - 0.6, 3.8, 3.8, 0.75));
    return together(tick, moved(text, 5.8, 0));
  });
  return stacked(1.6, [words(said.beforeYouStart, { size: 10, weight: 700 }, width), stacked(1.4, rows)]);
}

/** The largest in which no word is wider than its place. */
const titleSize = (title: string, width: number): number =>
  [20, 18, 16, 14].find((size) =>
    title.split(' ').every((word) => widthOf(word, '800ExtraBold', size) < width),
  ) ?? 12;

function printedFor(block: BlockOf<'masthead'>, { words: said }: PrintContext): Part | undefined {
  const { printedFor: print, plan } = block;
  if (!print) return undefined;
  const drawing = plan && saidPicture(planDrawing(plan.corners, PRINT_INKS), plan.alt, 16);
  const x = drawing ? 20 : 0;
  const width = SIDE - 6 - x;
  const text = stacked(1.9, [
    words(said.printedFor, { size: 8.5 }, width),
    words(print.title, { size: titleSize(print.title, width), weight: 800 }, width),
    ...print.options.map((option) => words(option, { size: 12, weight: 700 }, width)),
    ...(print.others && print.others.length > 0 ? [prose(print.others, { size: 8.5 }, width)] : []),
  ]);
  const height = Math.max(text.height, drawing?.height ?? 0);
  const middle = (part: Part) => (height - part.height) / 2;
  return high(
    height + 5,
    together(
      ...(drawing ? [moved(drawing, 3, 2.5 + middle(drawing))] : []),
      moved(text, 3 + x, 2.5 + middle(text)),
    ),
  );
}
