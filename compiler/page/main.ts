// The guide in the bay: keeps ticks and readings, counts what is off, runs clocks, signs and saves the record. Without
// it the page is a document to read, fill in and print.
import type { PageData } from '../src/html/page-types.js';
import { byId, drawClocks, drawState, keepClearOfBar, RING_SECONDS, setText } from './draw.js';
import { deviceStore, type Kept, NOTHING_KEPT, readKept, writeKept } from './keep.js';
import { jobRecord } from './record.js';
import { ring } from './ring.js';
import { type JobState, jobState } from './state.js';

const data = JSON.parse(byId('data')?.textContent ?? '{}') as PageData;
const key = ['baywright', data.guide.number, data.guide.print, data.guide.revision].join('/');
const store = deviceStore();
const controls = [...document.querySelectorAll<HTMLInputElement | HTMLSelectElement>('input[id],select[id]')];
const dates = document.querySelectorAll<HTMLInputElement>('input[type=date]');
/** How many changes can be taken back. */
const UNDO_STEPS = 200;

let kept = readKept(store, key);
let past: Kept[] = [];
let state: JobState;
const rung = new Set<string>();

document.documentElement.classList.add('js');
keepClearOfBar();
restore();
for (const { clock, left } of state0().clocks) if (left <= -RING_SECONDS) rung.add(clock.id);
show();
document.addEventListener('input', changed);
document.addEventListener('click', clicked);
// A second is as fine as the clocks show.
setInterval(tick, 1000);
addEventListener('storage', (event) => {
  if (event.key !== key) return;
  kept = readKept(store, key);
  restore();
  show();
});

function state0(): JobState {
  // What is not kept yet stands as the page came.
  state = jobState(data, { ...readControls(), ...kept.entries }, kept.times, Date.now());
  return state;
}

function changed(event: Event): void {
  const control = event.target;
  if (!(control instanceof HTMLInputElement || control instanceof HTMLSelectElement) || control.id === '')
    return;
  const before = kept;
  const times: Record<string, number> = { ...kept.times };
  const row = control.dataset.row;
  if (row && control instanceof HTMLInputElement) {
    if (control.checked) times[row] = Date.now();
    else delete times[row];
  }
  change({ entries: readControls(), times }, before, control.id);
  fillHoldTime(control.id);
}

let lastTyped = '';
/** Keeps a change. Letters typed one after the other into one field are one step back. */
function change(next: Kept, before: Kept, name: string): void {
  const control = byId(name);
  const typing = control instanceof HTMLInputElement && control.type === 'text' && name === lastTyped;
  if (!typing) past = [...past.slice(-UNDO_STEPS), before];
  lastTyped = name;
  kept = next;
  show();
  keep();
}

/** The time beside a hold's initials, filled in once they are there. */
function fillHoldTime(id: string): void {
  if (!data.rows.some(({ holds }) => holds.includes(id))) return;
  const time = byId(`time-${id}`);
  if (!(time instanceof HTMLInputElement) || time.value !== '') return;
  time.value = new Date().toLocaleTimeString(document.documentElement.lang, {
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  });
  kept = { ...kept, entries: readControls() };
  keep();
}

function clicked(event: Event): void {
  const button = event.target instanceof Element ? event.target.closest('button') : null;
  if (!button) return;
  const { start } = button.dataset;
  if (start) change({ ...kept, times: { ...kept.times, [start]: Date.now() } }, kept, start);
  if (button.id === 'undo') undo();
  if (button.id === 'sign') change({ ...kept, signedAt: Date.now() }, kept, 'sign');
  if (button.id === 'save') save();
  if (button.id === 'print') printRecord();
  if (button.id === 'clear' && confirm(data.words.startAgainSure)) {
    const before = kept;
    kept = NOTHING_KEPT;
    restore();
    change(kept, before, 'clear');
  }
}

function undo(): void {
  const before = past.pop();
  if (!before) return;
  kept = before;
  lastTyped = '';
  restore();
  show();
  keep();
}

function show(): void {
  state = state0();
  drawState(data, state, kept.signedAt);
  drawClocks(data, state.clocks);
  // An empty date would print its pattern.
  for (const date of dates) date.classList.toggle('blank', date.value === '');
  const button = byId('undo');
  if (button instanceof HTMLButtonElement) button.disabled = past.length === 0;
}

function tick(): void {
  const before = state.open.length;
  state = state0();
  if (state.open.length !== before) drawState(data, state, kept.signedAt);
  drawClocks(data, state.clocks);
  for (const { clock, left, started, isEnded } of state.clocks) {
    if (started === undefined || isEnded || left > 0) rung.delete(clock.id);
    else if (!rung.has(clock.id)) {
      rung.add(clock.id);
      ring();
    }
  }
}

function keep(): void {
  setText('kept', writeKept(store, key, kept) ? data.words.kept : data.words.notKept);
}

function readControls(): Record<string, string | boolean> {
  const entries: Record<string, string | boolean> = {};
  for (const control of controls) {
    const isTick =
      control instanceof HTMLInputElement && (control.type === 'checkbox' || control.type === 'radio');
    entries[control.id] = isTick ? control.checked : control.value;
  }
  return entries;
}

/** Puts what is kept into the controls; what is not kept goes back to how the page came. */
function restore(): void {
  for (const control of controls) {
    const entry = kept.entries[control.id];
    if (control instanceof HTMLInputElement && (control.type === 'checkbox' || control.type === 'radio'))
      control.checked = entry === true;
    else if (typeof entry === 'string') control.value = entry;
    else if (control instanceof HTMLSelectElement) control.selectedIndex = 0;
    else control.value = '';
  }
}

/** The record alone, without the guide before it. */
function printRecord(): void {
  const { classList } = document.documentElement;
  classList.add('record-alone');
  addEventListener('afterprint', () => classList.remove('record-alone'), { once: true });
  print();
}

function save(): void {
  const record = jobRecord(data, kept.entries, kept.times, state, kept.signedAt);
  const file = new Blob([`${JSON.stringify(record, null, 2)}\n`], { type: 'application/json' });
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = `${[data.guide.number, data.guide.print, 'record'].join('-')}.json`;
  link.click();
  // The download has its own hold on the file by the next turn.
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
