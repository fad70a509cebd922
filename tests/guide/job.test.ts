// The state of a job from ticks and readings.
import { expect, test } from 'vitest';
import { jobRecord } from '../../compiler/page/record.js';
import { type Entries, jobState, type Times } from '../../compiler/page/state.js';
import { pageData } from '../../compiler/src/html/page-data.js';
import { JOB_RECORD } from '../../compiler/src/record-schema.js';
import { everyKind } from './fixtures/every-kind.js';
import { fh12 } from './fixtures/fh-12.js';

const data = pageData(fh12());
const all = data.rows.map(({ id }) => id);
const ticks = (ids: readonly string[]): Entries => Object.fromEntries(ids.map((id) => [`t-${id}`, true]));
const upTo = (id: string) => ticks(all.slice(0, all.indexOf(id) + 1));
const state = (entries: Entries, times: Times = {}, now = 0) => jobState(data, entries, times, now);
const FINISHED: Entries = {
  ...ticks(all),
  'disc-thickness': '22.4',
  'knuckle-bore-good': true,
  'h9-5': 'AB',
  'field-technician': 'C. D.',
};

test('the count of things off is the rail of the guide', () => {
  expect(state(upTo('r3-5')).off).toHaveLength(10);
  expect(state(upTo('r2-7'))).toMatchObject({ loose: ['axle-nut'], bans: [] });
  expect(state(upTo('r2-7')).off).toHaveLength(5);
  expect(state(upTo('r5-7'))).toMatchObject({
    loose: ['axle-nut'],
    bans: ['Keep the van off its wheels until 7.1, axle nut torqued.'],
  });
  expect(state(upTo('r7-1')).bans).toEqual([]);
});

test('a job that is done can be signed', () => {
  expect(state(FINISHED)).toMatchObject({ off: [], loose: [], open: [] });
});

test('an open hold, a missing reading or a line without a tick keeps the record open', () => {
  expect(state({ ...FINISHED, 'h9-5': '' }).open).toEqual([{ why: 'hold', line: '9.5', row: 'r9-5' }]);
  expect(state({ ...FINISHED, 'disc-thickness': '' }).open).toEqual([
    { why: 'reading', line: '2.6', row: 'r2-6' },
  ]);
  expect(state({ ...FINISHED, 'knuckle-bore-good': false }).open).toEqual([
    { why: 'reading', line: '4.2', row: 'r4-2' },
  ]);
  expect(state({ ...FINISHED, 't-r9-4': false }).open).toEqual([{ why: 'ticks', count: 1 }]);
  expect(state({ ...FINISHED, 't-r7-1': false }).open).toContainEqual({ why: 'off' });
  expect(state({ ...FINISHED, 'field-technician': ' ' }).open).toEqual([{ why: 'fields' }]);
});

test('a reading below its limit asks for the line that hangs on it; a good one lets that line go', () => {
  const without = { ...FINISHED, 't-r2-7': false };
  expect(state(without).open).toEqual([]);
  expect(state({ ...without, 'disc-thickness': '21.9' }).open).toContainEqual({
    why: 'failed',
    line: '2.6',
    row: 'r2-6',
  });
  expect(state({ ...FINISHED, 'disc-thickness': '21.9' }).open).toEqual([]);
});

test('a rejected inspection with nothing to do about it keeps the record open', () => {
  const rejected = { ...FINISHED, 'knuckle-bore-good': false, 'knuckle-bore-bad': true };
  expect(state(rejected).open).toEqual([{ why: 'failed', line: '4.2', row: 'r4-2' }]);
});

const every = pageData(everyKind());
test('a clock starts with its line, and a cure keeps the record open until it has run', () => {
  const open = (now: number) =>
    jobState(every, {}, { 'r1-2': 0 }, now).open.filter(({ why }) => why === 'clock');
  expect(open(60_000)).toEqual([{ why: 'clock', name: 'cure before filling, 4 h' }]);
  expect(open(14_400_000)).toEqual([]);
  expect(
    jobState(every, {}, { 'r1-2': 0 }, 360_000).clocks.find(({ clock }) => clock.id === 'open')?.left,
  ).toBe(-60);
});

test('a stop counts only when its case has come', () => {
  const needed = (reading: string) => jobState(every, { 'end-float': reading }, {}, 0).rows;
  expect(needed('')['r1-9']?.needed).toBe(false);
  expect(needed('0.10')).toMatchObject({
    'r1-9': { needed: false },
    'r1-7': { needed: false },
    'r1-8': { needed: false },
  });
  expect(needed('0.20')).toMatchObject({ 'r1-9': { needed: true }, 'r1-7': { needed: true } });
});

test('the record says what was done and follows its schema', () => {
  const times = { 'r1-1': 1_760_000_000_000 };
  const record = jobRecord(data, FINISHED, times, state(FINISHED, times), 1_760_000_100_000);
  expect(JOB_RECORD.parse(record)).toEqual(record);
  expect(record).toMatchObject({
    guide: { number: 'FH-12', revision: '4', print: 'left-axle-light' },
    signedAt: '2025-10-09T08:55:00.000Z',
    open: 0,
    fields: { technician: 'C. D.' },
    readings: [{ line: '2.6', typed: '22.4', unit: 'mm', low: '22.0', result: 'pass' }],
    holds: [{ line: '9.5', initials: 'AB' }],
    stillOff: [],
  });
  expect(record.lines[0]).toEqual({
    number: '1.1',
    done: true,
    needed: true,
    at: '2025-10-09T08:53:20.000Z',
  });
});

test('what hangs on the low end of a limit is not needed when the reading is high', () => {
  const low = {
    ...every,
    rows: every.rows.map((row) =>
      row.id === 'r1-7' ? { ...row, depends: { row: 'r1-6', result: 'low' as const } } : row,
    ),
  };
  const needed = (reading: string) => jobState(low, { 'end-float': reading }, {}, 0).rows['r1-7']?.needed;
  expect(['', '0.01', '0.10', '0.20'].map(needed)).toEqual([true, true, false, false]);
});

test('an outcome that is told about, with nothing to do, does not keep the record open', () => {
  const rejected = { ...FINISHED, 'knuckle-bore-good': false, 'knuckle-bore-bad': true };
  const told = {
    ...data,
    rows: data.rows.map((row) => (row.id === 'r4-2' ? { ...row, told: ['bad' as const] } : row)),
  };
  expect(jobState(told, rejected, {}, 0).open).toEqual([]);
});

test('a reading at four places is four readings, each compared, and all in the record', () => {
  const row = every.rows.find(({ number }) => number === '1.8');
  expect(row?.readings.map(({ id, place }) => [id, place])).toEqual([
    ['backlash-1', 1],
    ['backlash-2', 2],
    ['backlash-3', 3],
    ['backlash-4', 4],
  ]);
  const entries = { 'backlash-1': '0.20', 'backlash-2': '0.15', 'backlash-3': '0.31', 'unit-backlash': 'mm' };
  const now = jobState(every, entries, {}, 0);
  const record = jobRecord(every, entries, {}, now, undefined);
  expect(
    record.readings.flatMap(({ line, place, typed, unit, result }) =>
      line === '1.8' ? [[place, typed, unit, result]] : [],
    ),
  ).toEqual([
    [1, '0.20', 'mm', 'pass'],
    [2, '0.15', 'mm', 'low'],
    [3, '0.31', 'mm', 'high'],
    [4, '', 'mm', 'none'],
  ]);
  expect(now.rows['r1-8']?.result).toBe('bad');
});

test('of readings for different vehicles one is taken', () => {
  const row = every.rows.find(({ number }) => number === '1.6');
  const [reading] = row?.readings ?? [];
  if (!row || !reading) throw new Error('the fixture has no reading');
  const readings = ['light', 'heavy'].map((id) => ({ ...reading, id, box: id, group: 'play' }));
  const both = { ...every, rows: every.rows.map((one) => (one === row ? { ...row, readings } : one)) };
  const result = (entries: Entries) => jobState(both, entries, {}, 0).rows[row.id]?.result;
  expect(result({})).toBeUndefined();
  expect(result({ heavy: '0.10' })).toBe('good');
  expect(result({ heavy: '0.20' })).toBe('bad');
});

test('lines for some vehicles count once one of them is begun', () => {
  const some = {
    ...data,
    rows: data.rows.map((row) =>
      row.id === 'r9-3' || row.id === 'r9-4' ? { ...row, variant: 'axle heavy' } : row,
    ),
  };
  const without = { ...FINISHED, 't-r9-3': false, 't-r9-4': false };
  expect(jobState(some, without, {}, 0).open).toEqual([]);
  expect(jobState(some, { ...without, 't-r9-3': true }, {}, 0).open).toEqual([{ why: 'ticks', count: 1 }]);
});

test('a line of a later visit does not keep the record open', () => {
  const later = {
    ...data,
    rows: data.rows.map((row) => (row.id === 'r9-4' ? { ...row, later: true } : row)),
  };
  expect(jobState(later, { ...FINISHED, 't-r9-4': false }, {}, 0).open).toEqual([]);
});
