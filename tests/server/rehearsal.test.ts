// The rehearsal of edits works on a copy, gives way, and comes to an end.
import { createLibrary, DEFAULT_SETTINGS } from '@baywright/language';
import { expect, test } from 'vitest';
import { Rehearsal } from '../../server/src/rehearsal.js';
import type { Snapshot } from '../../server/src/snapshot.js';

const TEXT = `procedure R-1 "Wheel"

parts
  wheel: Road wheel

removal
  step Take the wheel off
    remove wheel

installation
  step Put the wheel back
    install wheel
`;

function rehearsed(text = TEXT) {
  const read: string[] = [];
  const host = {
    read(path: string) {
      read.push(path);
      return path === 'job.bay' ? text : undefined;
    },
    list: () => ['job.bay'],
  };
  const library = createLibrary(host, DEFAULT_SETTINGS);
  const before = library.analyse('job.bay');
  const waiting: (() => void)[] = [];
  let clock = 0;
  const rehearsal = new Rehearsal({ path: 'job.bay', text, library } as unknown as Snapshot, {
    now: () => (clock += 0.5),
    later(_milliseconds, work) {
      waiting.push(work);
      return () => {
        waiting.splice(waiting.indexOf(work), 1);
      };
    },
  });
  read.length = 0;
  return { rehearsal, waiting, library, before, read };
}

test('it comes to an end, and leaves what is known of the document as it was', () => {
  const { rehearsal, waiting, library, before, read } = rehearsed();
  rehearsal.goOn();
  let turns = 0;
  for (let work = waiting.shift(); work && turns < 10_000; work = waiting.shift()) {
    turns += 1;
    work();
  }
  expect(turns).toBeGreaterThan(10);
  expect(turns).toBeLessThan(10_000);
  expect(library.analyse('job.bay')).toBe(before);
  // It looks at its copy, not at the text of the document.
  expect(read).not.toContain('job.bay');
});

test('stopped, it leaves nothing waiting; later it goes on', () => {
  const { rehearsal, waiting } = rehearsed();
  rehearsal.goOn();
  for (let turn = 0; turn < 4; turn += 1) waiting.shift()?.();
  rehearsal.stop();
  expect(waiting).toHaveLength(0);
  rehearsal.goOn();
  expect(waiting).toHaveLength(1);
});

test('a text too long to be held twice is not rehearsed', () => {
  const { rehearsal, waiting } = rehearsed(`${TEXT}${'# The end.\n'.repeat(20_000)}`);
  rehearsal.goOn();
  expect(waiting).toHaveLength(0);
});
