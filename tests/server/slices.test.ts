// A check goes on in slices: questions are served in between, and a text that was edited meanwhile is not checked to
// its end.
import { expect, test } from 'vitest';
import { Checker } from '../../server/src/checker.js';
import { memoryFiles } from '../../server/src/files.js';
import { politely } from '../../server/src/manners.js';
import { Workspace } from '../../server/src/workspace.js';
import { HEAD, PATH, shop } from './shop.js';

const URI = `file:///shop/${PATH}`;

/** A checker whose clock jumps at every look, so that each slice is as short as can be; `turn` does what waits. */
async function slowly(text: string) {
  const files = new Map(Object.entries(shop(text)).map(([path, own]) => [`file:///shop/${path}`, own]));
  const workspace = new Workspace(memoryFiles(files));
  workspace.addFolder('file:///shop/');
  workspace.open(URI, 1, text);
  await workspace.ready;
  let waiting: (() => void)[] = [];
  let clock = 0;
  const sent: (number | null)[] = [];
  const later = (_ms: number, work: () => void): (() => void) => {
    waiting.push(work);
    return () => {
      waiting = waiting.filter((w) => w !== work);
    };
  };
  const checker = new Checker(workspace, {
    publish: (uri, version) => {
      if (uri === URI) sent.push(version);
    },
    checked: () => undefined,
    progress: () => undefined,
    unused: () => undefined,
    now: () => {
      clock += 10;
      return clock;
    },
    later,
  });
  const turn = (): boolean => {
    const now = waiting;
    waiting = [];
    for (const work of now) work();
    return now.length > 0;
  };
  return { workspace, checker, sent, turn };
}

test('a check takes many turns, and ends', async () => {
  const { checker, sent, turn } = await slowly(HEAD);
  checker.edited(URI);
  let turns = 0;
  while (turn()) turns += 1;
  expect(turns).toBeGreaterThan(10);
  expect(sent).toEqual([1]);
});

test('an edit in between begins anew with the new text alone', async () => {
  const { workspace, checker, sent, turn } = await slowly(HEAD);
  checker.edited(URI);
  for (let i = 0; i < 8; i++) turn();
  workspace.change(URI, 2, [{ text: `${HEAD}    remove wheel-nut, wheel\n` }]);
  checker.edited(URI);
  while (turn());
  expect(sent).toEqual([2]);
});

test('a message that has come in is answered before work that waits politely', async () => {
  const order: string[] = [];
  await new Promise<void>((resolve) => {
    const later = (_ms: number, work: () => void): (() => void) => {
      const immediate = setImmediate(work);
      return () => clearImmediate(immediate);
    };
    politely(later, () => {
      order.push('work');
      resolve();
    });
    // A connection reads a message in one turn of the loop and handles it in the next.
    setImmediate(() => order.push('answer'));
  });
  expect(order).toEqual(['answer', 'work']);
});
