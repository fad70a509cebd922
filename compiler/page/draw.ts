// Puts the state of the job on the page.

import { say } from '../src/document/words.js';
import type { PageData, PageRow } from '../src/html/page-types.js';
import type { Verdict } from './exact.js';
import { type ClockState, isForOthers, type JobState, type Reason } from './state.js';

export const byId = (id: string): HTMLElement | null => document.getElementById(id);

export function setText(id: string, value: string): void {
  const element = byId(id);
  // Unchanged text is left alone: live regions would say it again.
  if (element && element.textContent !== value) element.textContent = value;
}

export function drawState(data: PageData, state: JobState, signedAt: number | undefined): void {
  const { words, things } = data;
  setText('off', String(state.off.length));
  setText('loose', String(state.loose.length));
  setText('done', String(state.done));
  setText('all', say(words.doneOf, { all: state.needed }));
  byId('next')?.setAttribute('href', `#${nextOpen(data, state) ?? 'record'}`);
  const named = (ids: readonly string[]) =>
    ids.map((id) => ({ text: things[id] ?? id, row: nextOpen(data, state, id) }));
  drawList('list-off', named(state.off), words.nothing);
  drawList('list-loose', named(state.loose), words.nothing);
  drawBans(state.bans);
  for (const row of data.rows) drawRow(data, state, row.id);
  drawProgress(data, state);
  drawReadings(data, state);
  const holds = data.rows.flatMap((row) =>
    row.holds.map((id) => ({ text: `${row.number} ${value(id) || words.open}`, row: row.id })),
  );
  drawList('list-holds', holds, words.nothing);
  const why = state.open[0];
  const sign = byId('sign');
  if (sign instanceof HTMLButtonElement) sign.disabled = why !== undefined || signedAt !== undefined;
  const time = signedAt === undefined ? '' : clockTime(new Date(signedAt));
  const said = why
    ? say(words.notYet, { why: reason(data, why, state) })
    : signedAt === undefined
      ? ''
      : say(words.signed, { time });
  const row = why && 'row' in why ? why.row : why?.why === 'ticks' ? nextOpen(data, state) : undefined;
  if (byId('why')?.textContent !== said) byId('why')?.replaceChildren(leading({ text: said, row }));
}

/** The next line to be done, or the next at which something comes on or is torqued. */
function nextOpen({ rows }: PageData, state: JobState, thing?: string): string | undefined {
  const isOpen = ({ id, changes }: PageRow): boolean =>
    state.rows[id]?.needed === true &&
    !state.rows[id]?.ticked &&
    (thing === undefined || changes.some((change) => change.thing === thing));
  return rows.find(isOpen)?.id;
}

/** Words that lead to a line of the guide, where they are about one. */
interface Entry {
  readonly text: string;
  readonly row?: string | undefined;
}

function leading({ text, row }: Entry): Node {
  if (row === undefined) return document.createTextNode(text);
  return Object.assign(document.createElement('a'), { href: `#${row}`, textContent: text });
}

export function drawClocks(data: PageData, clocks: readonly ClockState[]): void {
  const { words } = data;
  for (const state of clocks) {
    const { clock, left, started, isEnded } = state;
    const box = document.querySelector(`[data-clock="${CSS.escape(clock.id)}"]`);
    const text = started === undefined ? '' : clockText(data, state);
    const output = box?.querySelector('output');
    if (output && output.textContent !== text) output.textContent = text;
    box?.classList.toggle('rings', started !== undefined && !isEnded && left <= 0 && left > -RING_SECONDS);
    const button = box?.querySelector('button');
    if (button) button.hidden = started !== undefined;
  }
  const running = clocks.filter(({ started, isEnded }) => started !== undefined && !isEnded);
  drawList(
    'list-clocks',
    running.map((state) => ({ text: `${state.clock.name}${words.colon} ${clockText(data, state)}` })),
    words.nothing,
  );
}

/** A clock rings for this long. */
export const RING_SECONDS = 60;

function clockText({ words }: PageData, { clock: { sense }, left, isEnded }: ClockState): string {
  if (left > 0)
    return say(sense === 'at least' || isEnded ? words.clockLeft : words.clockTimeLeft, {
      time: duration(left),
    });
  return sense === 'at least' ? words.clockDone : say(words.clockOver, { time: duration(-left) });
}

/** Year first, like every date of a guide: other orders are read in two ways. */
function clockTime(at: Date): string {
  const [month, day, hour, minute] = [at.getMonth() + 1, at.getDate(), at.getHours(), at.getMinutes()].map(
    two,
  );
  return `${at.getFullYear()}-${month}-${day} ${hour}:${minute}`;
}

const two = (value: number): string => String(value).padStart(2, '0');

/** With the decimal sign of the page's language and a unit that stays with it, as its limits are printed. */
const local = (figure: string): string => figure.replace('.', DECIMAL_SIGN).replace(' ', '\u00a0');
const DECIMAL_SIGN = (1.5).toLocaleString(document.documentElement.lang).charAt(1);

function duration(seconds: number): string {
  const whole = Math.ceil(seconds);
  const [h, m, s] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
  return h > 0 ? `${h}:${two(m)}:${two(s)}` : `${m}:${two(s)}`;
}

function drawRow({ words, rows }: PageData, state: JobState, id: string): void {
  const { needed = true } = state.rows[id] ?? {};
  const depends = rows.find((found) => found.id === id)?.depends;
  const line = rows.find((found) => found.id === depends?.row)?.number ?? '';
  const result = depends && state.rows[depends.row]?.result;
  const skipped = !needed && result !== undefined;
  const phrase = result === 'good' ? words.notNeeded : words.notNeededAfter;
  // The line itself, and what the record has of it.
  for (const row of document.querySelectorAll(`[id="${CSS.escape(id)}"],[data-of="${CSS.escape(id)}"]`)) {
    row.classList.toggle('skipped', skipped);
    const note = row.matches('.na') ? row : row.querySelector('.na');
    if (!(note instanceof HTMLElement)) continue;
    note.hidden = !skipped;
    note.textContent = skipped ? say(phrase, { line }) : '';
  }
}

function drawProgress({ steps }: PageData, state: JobState): void {
  for (const step of steps) {
    const needed = step.rows.filter((id) => state.rows[id]?.needed);
    setText(`p-${step.id}`, `${needed.filter((id) => state.rows[id]?.ticked).length}/${needed.length}`);
  }
}

function drawReadings(data: PageData, state: JobState): void {
  const { words } = data;
  // Boxes for different vehicles, and places that are open, read alike and are told once.
  const list = new Map<string, Entry>();
  const put = (text: string, row: string) => list.set(text, { text, row });
  for (const row of data.rows) {
    const { needed = true, result, verdicts = {} } = state.rows[row.id] ?? {};
    for (const reading of row.readings) {
      const verdict = verdicts[reading.id] ?? { verdict: 'none' as const };
      const isNone = verdict.verdict === 'none';
      // Six times “no reading yet” would say less than six empty places.
      const text = isNone && reading.place !== undefined ? '' : verdictText(data, verdict);
      const output = document.querySelector(`output[for="${CSS.escape(reading.id)}"]`);
      if (output && output.textContent !== text) output.textContent = text;
      output?.classList.toggle('pass', verdict.verdict === 'pass');
      output?.classList.toggle('fail', verdict.verdict !== 'pass' && !isNone);
      const place = reading.place === undefined ? '' : `, ${reading.place}`;
      if (needed && !isForOthers(reading, row.readings, verdicts))
        put(
          `${row.number} ${reading.name}${isNone ? '' : place}${words.colon} ${isNone ? words.open : text}`,
          row.id,
        );
      setFound(reading.id, isNone ? (reading.units[0]?.label ?? '') : foundText(data, verdict));
    }
    for (const id of row.inspections) {
      const text = result === 'good' ? words.good : result === 'bad' ? words.bad : '';
      if (needed) put(`${row.number} ${row.says ?? ''}${words.colon} ${text || words.open}`, row.id);
      if (id) setFound(row.id, text);
    }
    for (const id of row.holds) {
      const output = document.querySelector(`[data-hold="${CSS.escape(row.id)}"]`);
      if (output) output.textContent = value(id);
    }
  }
  drawList('list-readings', [...list.values()], words.nothing);
}

/** In the record: a reading by its blank, an inspection by its row. */
function setFound(found: string, text: string): void {
  const output = document.querySelector(`[data-found="${CSS.escape(found)}"]`);
  if (output && output.textContent !== text) output.textContent = text;
}

function verdictText({ words }: PageData, verdict: Verdict): string {
  if (verdict.verdict === 'none') return words.noReading;
  if (verdict.verdict === 'not a number') return words.notNumber;
  const phrase = { pass: words.readingPass, low: words.readingLow, high: words.readingHigh }[verdict.verdict];
  return say(phrase, { value: local(verdict.shown), limit: local(verdict.limit) });
}

/** For the record, which has the limit beside it. */
function foundText(data: PageData, verdict: Verdict): string {
  if (!('shown' in verdict)) return verdictText(data, verdict);
  const { pass, fail } = data.words;
  return `${local(verdict.shown)} · ${verdict.verdict === 'pass' ? pass : fail}`;
}

function reason({ words }: PageData, open: Reason, state: JobState): string {
  switch (open.why) {
    case 'hold':
      return say(words.whyHold, { line: open.line });
    case 'reading':
      return say(words.whyReading, { line: open.line });
    case 'failed':
      return say(words.whyFailed, { line: open.line });
    case 'clock':
      return say(words.whyClock, { name: open.name });
    case 'off':
      return say(words.whyOff, { off: state.off.length, loose: state.loose.length });
    case 'ticks':
      return say(words.whyTicks, { count: open.count });
    case 'fields':
      return words.whyFields;
  }
}

function drawBans(bans: readonly string[]): void {
  const bar = byId('bans');
  if (!bar || bar.textContent === bans.join('')) return;
  bar.replaceChildren(
    ...bans.map((text) => Object.assign(document.createElement('p'), { textContent: text })),
  );
}

/** What is jumped to or focused comes to stand below the bar, as high as its bans make it. */
export function keepClearOfBar(): void {
  const top = document.querySelector<HTMLElement>('.top');
  const bar = top?.querySelector<HTMLElement>('.bar');
  if (!top || !bar) return;
  const { style } = document.documentElement;
  new ResizeObserver(() => {
    style.setProperty('--bar', `${bar.offsetHeight}px`);
    style.scrollPaddingTop = `${top.offsetHeight + Number.parseFloat(getComputedStyle(top).top) + 12}px`;
  }).observe(top);
}

function drawList(id: string, items: readonly Entry[], empty: string): void {
  const list = byId(id);
  const entries = items.length > 0 ? items : [{ text: empty }];
  const now = JSON.stringify(entries);
  if (!list || drawn.get(id) === now) return;
  drawn.set(id, now);
  list.replaceChildren(
    ...entries.map((entry) => {
      const item = document.createElement('li');
      item.append(leading(entry));
      return item;
    }),
  );
}

/** What the lists show: where it is the same, focus stays on its links. */
const drawn = new Map<string, string>();

function value(id: string): string {
  const control = byId(id);
  return control instanceof HTMLInputElement ? control.value.trim() : '';
}
