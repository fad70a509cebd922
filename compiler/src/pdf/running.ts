// The running head and foot of a page and the word across it, of which readers hear nothing. What is the same on every page
// is one picture, which the typesetter reads once. `y` counts from the top of the page.
import type { GuideDocument } from '../document/document.js';
import { revisionText } from '../document/revision.js';
import type { Art, Canvas, TextLook } from './art.js';
import { type Frame, MARGIN_NOTES, RAIL, WIDTH } from './steps/frame.js';
import { BESIDE_BAR, type Counts, counts, countsWide, NARROW, type StepHead } from './steps/heads.js';
import { short } from './steps/set.js';
import { CAPITAL, type FaceName, faceOf, POINT, widthOf } from './type/faces.js';
import { type Argument, call, type Raw } from './typst-code.js';

const TOP = 12;
const SMALL = 8.5;
/** Between lines in the head. */
const LINE = 4.6;
const JOB = 44;

/** Draws what stands on every page, but for its number. */
export function drawRunning(art: Art, document: GuideDocument, frame: Frame): void {
  const { identity: id, words } = document;
  drawAcross(art, document, frame);
  art.text(0, TOP + 6.4, id.number, { size: 15, weight: 800 });
  const left = widthOf(id.number, '800ExtraBold', 15) + 4.5;
  const right = WIDTH - JOB - 4;
  const status = widthOf(id.statusText, '700Bold', SMALL) + 3;
  art.frame(right - status, TOP, status, 3.6, 0.75);
  art.text(right - status + 1.5, TOP + 2.8, id.statusText, { size: SMALL, weight: 700 });
  const room = right - status - 4 - left;
  const facts: Fact[] = [
    { said: revisionText(document), weight: 400 },
    { said: id.side ?? '', weight: 700 },
    ...id.options.map((said) => ({ said, weight: 400 })),
    { said: sheetName(document), weight: 700 },
  ].filter(({ said }) => said !== '');
  // What a page is printed for is never cut off: where it needs more lines, they stand closer.
  const lines = factLines(facts, right - 24 - left);
  const [first, step] = lines.length > 1 ? [2.3, 3.3] : [2.8, LINE];
  art.text(left, TOP + first, cutTo(id.title, '400Regular', room), { size: SMALL });
  for (const [i, line] of lines.entries()) {
    let x = left;
    for (const { said, weight } of line)
      x = drawText(art, x, TOP + first + (i + 1) * step, said, { size: SMALL, weight });
  }
  art.frame(WIDTH - JOB, TOP, JOB, 9, 0.75);
  art.text(WIDTH - JOB + 1.2, TOP + 3.2, words.jobNumber, { size: SMALL });
  drawFoot(art, document, frame);
}

/** What a sheet that is no guide is: its title stands on the first of its pages only. */
const sheetName = ({ blocks }: GuideDocument): string => {
  const heading = blocks.find((block) => block.kind === 'heading');
  return heading?.kind === 'heading' ? heading.title : '';
};

interface Fact {
  readonly said: string;
  readonly weight: number;
}

/** As many beside each other as fit, with dots between them. */
function factLines(facts: readonly Fact[], width: number): readonly (readonly Fact[])[] {
  const lines: Fact[][] = [];
  let x = 0;
  for (const { said, weight } of facts) {
    const dotted = `\u00A0\u00B7 ${said}`;
    const wide = widthOf(dotted, faceOf(weight), SMALL);
    const line = lines.at(-1);
    if (line && x + wide <= width) {
      line.push({ said: dotted, weight });
      x += wide;
    } else {
      lines.push([{ said, weight }]);
      x = wide;
    }
  }
  return lines;
}

/** Pale, and under everything else, until the procedure is released. */
function drawAcross(art: Art, { identity, words }: GuideDocument, { paper }: Frame): void {
  const word = { draft: words.draft, proved: words.draft, withdrawn: words.withdrawn, released: undefined }[
    identity.status
  ];
  if (word === undefined) return;
  const look = {
    size: 104,
    weight: 800,
    paint: '#e8e8e8',
    turned: -52,
    tracking: 6,
    anchor: 'middle',
    under: true,
  } as const;
  art.text(WIDTH / 2, paper[2] / 2 + 12, word, look);
}

const FOOT_TOP = 13;

/** More is never off at once, so that the counts at the right never need more room. */
const MOST = 888;

function drawFoot(art: Art, document: GuideDocument, { paper }: Frame): void {
  const y = paper[2] - FOOT_TOP;
  art.line(0, y, WIDTH, y, 0.5);
  const most = counts(document.words.atFoot, { off: MOST, loose: MOST }, document);
  const lines = linesOf(document.standing, WIDTH - countsWide(most, SMALL) - 3);
  lines.slice(0, 3).forEach((line, i) => {
    art.text(0, y + 3.2 + i * 3.4, line, { size: SMALL });
  });
}

/** Between two lines of a bar. */
const BETWEEN = 1.4;

/** Draws what only pages of steps have: bans, counts, which step goes on, the head of the column for notes. */
export function stepHead(art: Art, head: StepHead, { words }: GuideDocument, frame: Frame): readonly Raw[] {
  const signs: Raw[] = [];
  const add = (x: number, y: number, text: Argument, size: number, look: SignLook = {}) => {
    signs.push(sign(x, y, text, size, look));
  };
  const y = TOP + 10.8;
  const wide = head.narrow ? NARROW : countsWide(head.top, 9);
  const bar = WIDTH - wide - 6;
  const capital = head.size * CAPITAL * POINT;
  const around = head.crowded ? 1.4 : 3.4;
  let all = 0;
  for (const said of head.bars) {
    // Nothing of a ban is cut off: one that is too long for a line of the smallest type takes two.
    const lines = linesOf(said, WIDTH - wide - BESIDE_BAR + 1, '700Bold', head.size);
    const deep = lines.length * capital + (lines.length - 1) * BETWEEN + (lines.length > 1 ? 1.4 : around);
    const first = y + all + (deep - (lines.length - 1) * (capital + BETWEEN) + capital) / 2;
    art.fill(0, y + all, bar, deep, 'black');
    art.frame(0, y + all, bar, deep, 1);
    lines.forEach((line, i) => {
      add(3, first + i * (capital + BETWEEN), line, head.size, { weight: 700, white: true });
    });
    all += deep;
  }
  if (head.bars.length === 0) {
    all = capital + around;
    art.frame(0, y, bar, all, 1);
    add(3, y + (all + 9 * CAPITAL * POINT) / 2, words.noBan, 9);
  }
  art.frame(bar, y, WIDTH - bar, Math.max(all, head.narrow ? 7 : 0), 1);
  if (head.narrow) {
    const middle = y + Math.max(all, 7) / 2;
    add(bar + 3, middle - 0.6, countsCode([head.top[0], head.top[1], '']), SMALL);
    add(bar + 3, middle + 2.8, head.top[2], SMALL);
  } else add(bar + 3, y + (all + 9 * CAPITAL * POINT) / 2, countsCode(head.top), 9);
  const foot = frame.paper[2] - FOOT_TOP + 3.2;
  add(WIDTH - countsWide(head.foot, SMALL), foot, countsCode(head.foot), SMALL);
  const under = head.under - 2.1;
  if (head.step) {
    add(RAIL + 2.5, under, head.step[0], 10.5, { weight: 700 });
    const at = RAIL + frame.label;
    add(at, under, cutTo(head.step[1], '700Bold', frame.body - at, 10.5), 10.5, { weight: 700 });
  }
  if (frame.walk) {
    add(WIDTH - MARGIN_NOTES + 4, under, words.marginNotes, SMALL);
    art.frame(WIDTH - MARGIN_NOTES + 4, head.under, MARGIN_NOTES - 4, head.room, 0.5);
  }
  return signs;
}

interface SignLook {
  readonly weight?: number;
  readonly white?: true;
}

/** One line, its foot at `y`. */
function sign(x: number, y: number, text: Argument, size: number, { weight = 400, white }: SignLook): Raw {
  const top = y - size * CAPITAL * POINT;
  return call(
    'sign',
    [short(x), short(top), undefined, size, weight, text],
    white ? { fill: { raw: 'white' } } : {},
  );
}

/** `At the top: 3 off, 1 to torque`. */
const countsCode = ([label, off, loose]: Counts): Raw => call('counts', [label, off, loose]);

/** The number of the page at the right of its title. */
export function pageNumber(page: number | undefined): Raw {
  const right = WIDTH - JOB - 4;
  return call('page-number', [page, right - 60, short(TOP + 2.8 + LINE - SMALL * CAPITAL * POINT), 60]);
}

/** Gives where the text ends. */
function drawText(art: Art, x: number, y: number, text: string, look: TextLook): number {
  art.text(x, y, text, look);
  return x + widthOf(text, faceOf(look.weight ?? 400), look.size);
}

/** The words that fit, and a sign that there are more. */
function cutTo(text: string, face: FaceName, width: number, size = SMALL): string {
  if (widthOf(text, face, size) <= width) return text;
  const words = text.split(' ');
  while (words.length > 1 && widthOf(`${words.join(' ')} …`, face, size) > width) words.pop();
  return `${words.join(' ')} …`;
}

function linesOf(
  text: string,
  width: number,
  face: FaceName = '400Regular',
  size = SMALL,
): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    const longer = `${last} ${word}`;
    if (last !== undefined && widthOf(longer, face, size) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

/** What a picture of a page reaches over the text at its left, and at its right. */
const OVER = 15;

/** A picture as wide and high as a page may need. */
export function artArgument(canvas: Canvas, { paper }: Frame): Argument {
  const [width, height] = [WIDTH + 2 * OVER, paper[2]];
  return [canvas.svg(-OVER, 0, width, height), -OVER, width, height];
}
