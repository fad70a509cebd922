// The state of the job from what was ticked and typed: what is off, what waits for its torque, which lines are not
// needed, what keeps the record from being signed. Pure: the same entries give the same state.
import type { Depends } from '../src/document/blocks.js';
import type { PageClock, PageData, PageReading, PageRow } from '../src/html/page-types.js';
import { judge, type Verdict } from './exact.js';

/** Everything entered on the page, by the name of its control. Ticks are `true`. */
export type Entries = Readonly<Record<string, string | boolean>>;
/** When lines were ticked and clocks started, as milliseconds since 1970. */
export type Times = Readonly<Record<string, number>>;

interface RowState {
  readonly ticked: boolean;
  /** False when another line came out so that this one falls away. */
  readonly needed: boolean;
  /** How its readings and inspections came out; undefined while one is missing. */
  readonly result: 'good' | 'bad' | undefined;
  readonly verdicts: Readonly<Record<string, Verdict>>;
}

export interface ClockState {
  readonly clock: PageClock;
  readonly started: number | undefined;
  /** Seconds to go; negative when over. */
  readonly left: number;
  /** The line that ends it is done: what was left then stays. */
  readonly isEnded: boolean;
}

export interface JobState {
  readonly rows: Readonly<Record<string, RowState>>;
  readonly off: readonly string[];
  readonly loose: readonly string[];
  readonly done: number;
  readonly needed: number;
  readonly bans: readonly string[];
  readonly clocks: readonly ClockState[];
  /** What still keeps the record from being signed. */
  readonly open: readonly Reason[];
}

export type Reason =
  | { readonly why: 'hold' | 'reading' | 'failed'; readonly line: string; readonly row: string }
  | { readonly why: 'clock'; readonly name: string }
  | { readonly why: 'off' }
  | { readonly why: 'ticks'; readonly count: number }
  | { readonly why: 'fields' };

export function jobState(data: PageData, entries: Entries, times: Times, now: number): JobState {
  const rows: Record<string, RowState> = {};
  const things = new Map<string, 'off' | 'loose' | 'done'>();
  const begun = new Set(data.rows.filter((row) => isBegun(row, entries)).map(({ variant }) => variant));
  for (const row of data.rows) {
    const own = rowState(row, entries, row.depends ? rows[row.depends.row] : undefined);
    const isForOther = row.variant !== undefined && !begun.has(row.variant);
    const state = isForOther ? { ...own, needed: false } : own;
    rows[row.id] = state;
    if (state.ticked && state.needed) for (const { thing, to } of row.changes) things.set(thing, to);
  }
  const at = (wanted: 'off' | 'loose') =>
    [...things].filter(([, is]) => is === wanted).map(([thing]) => thing);
  const needed = data.rows.filter((row) => rows[row.id]?.needed);
  const done = needed.filter((row) => rows[row.id]?.ticked).length;
  const clocks = data.rows.flatMap((row) => row.clocks).map((clock) => clockState(clock, times, now));
  const ticked = (row: string) => rows[row]?.ticked ?? false;
  const state = {
    rows,
    off: at('off'),
    loose: at('loose'),
    done,
    needed: needed.length,
    bans: data.bans.filter((ban) => ticked(ban.fromRow) && !ticked(ban.untilRow)).map(({ text }) => text),
    clocks,
  };
  return { ...state, open: reasons(needed, entries, state) };
}

/** Something is entered at the line. */
function isBegun({ id, readings, inspections, holds }: PageRow, entries: Entries): boolean {
  const names = [
    `t-${id}`,
    ...readings.map((reading) => reading.id),
    ...inspections.flatMap((name) => [`${name}-good`, `${name}-bad`]),
    ...holds,
  ];
  return names.some((name) => entries[name] === true || String(entries[name] || '').trim() !== '');
}

function rowState(row: PageRow, entries: Entries, on: RowState | undefined): RowState {
  const verdicts: Record<string, Verdict> = {};
  for (const reading of row.readings)
    verdicts[reading.id] = judge(
      reading,
      String(entries[reading.id] ?? ''),
      String(entries[`unit-${reading.box}`] ?? ''),
    );
  const outcomes = [
    ...row.readings
      .filter((reading) => !isForOthers(reading, row.readings, verdicts))
      .map(({ id }) => verdicts[id]?.verdict)
      .map((verdict) =>
        verdict === 'pass' ? 'good' : verdict === 'low' || verdict === 'high' ? 'bad' : undefined,
      ),
    ...row.inspections.map((id) =>
      entries[`${id}-good`] ? 'good' : entries[`${id}-bad`] ? 'bad' : undefined,
    ),
  ];
  const result = outcomes.includes('bad')
    ? 'bad'
    : outcomes.length === 0 || outcomes.includes(undefined)
      ? undefined
      : 'good';
  // What hangs on a line that fell away falls away with it. A stop counts only once its case has come.
  const fallen =
    row.depends !== undefined &&
    on !== undefined &&
    (!on.needed || cameOut(on, row.depends.result) === false);
  const waiting =
    row.stop === true &&
    (row.depends === undefined || on === undefined || cameOut(on, row.depends.result) !== true);
  return { ticked: entries[`t-${row.id}`] === true, needed: !fallen && !waiting, result, verdicts };
}

/** An empty box beside a filled one of its group is for another vehicle. */
export function isForOthers(
  { id, box, group }: PageReading,
  all: readonly PageReading[],
  verdicts: RowState['verdicts'],
): boolean {
  const isEmpty = (name: string): boolean => verdicts[name]?.verdict === 'none';
  if (group === undefined || !isEmpty(id)) return false;
  const isOwnBoxBegun = all.some((other) => other.box === box && !isEmpty(other.id));
  return !isOwnBoxBegun && all.some((other) => other.group === group && !isEmpty(other.id));
}

/** Whether a line came out as another asks; undefined while it is open. */
function cameOut(row: RowState | undefined, wanted: Depends['result']): boolean | undefined {
  if (row?.result === undefined) return undefined;
  if (wanted === 'good' || wanted === 'bad') return row.result === wanted;
  return Object.values(row.verdicts).some(({ verdict }) => verdict === wanted);
}

function clockState(clock: PageClock, times: Times, now: number): ClockState {
  const started = times[clock.id] ?? (clock.fromRow ? times[clock.fromRow] : undefined);
  const ended = clock.untilRow ? times[clock.untilRow] : undefined;
  const isEnded = started !== undefined && ended !== undefined && ended >= started;
  return {
    clock,
    started,
    left: started === undefined ? clock.seconds : clock.seconds - ((isEnded ? ended : now) - started) / 1000,
    isEnded,
  };
}

function reasons(needed: readonly PageRow[], entries: Entries, state: Omit<JobState, 'open'>): Reason[] {
  const found: Reason[] = [];
  const depending = (id: string) =>
    needed.filter((row) => row.depends?.row === id && row.depends.result !== 'good');
  for (const row of needed) {
    const { result } = state.rows[row.id] ?? {};
    if (row.holds.some((id) => String(entries[id] ?? '').trim().length < 2))
      found.push({ why: 'hold', line: row.number, row: row.id });
    if (row.readings.length + row.inspections.length > 0 && result === undefined)
      found.push({ why: 'reading', line: row.number, row: row.id });
    if (result !== 'bad') continue;
    const then = depending(row.id);
    if (then.length === 0 && row.told?.some((wanted) => cameOut(state.rows[row.id], wanted))) continue;
    if (then.length === 0 || then.some(({ id, stop }) => stop || !state.rows[id]?.ticked))
      found.push({ why: 'failed', line: row.number, row: row.id });
  }
  for (const { clock, left, started } of state.clocks)
    if (clock.sense === 'at least' && started !== undefined && left > 0)
      found.push({ why: 'clock', name: clock.name });
  if (state.off.length + state.loose.length > 0) found.push({ why: 'off' });
  const unticked = needed.filter(({ id, later }) => !later && !state.rows[id]?.ticked).length;
  if (unticked > 0) found.push({ why: 'ticks', count: unticked });
  if (String(entries['field-technician'] ?? 'not asked').trim() === '') found.push({ why: 'fields' });
  return found;
}
