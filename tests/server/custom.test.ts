// The requests beside the standard protocol.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type * as protocol from '../../server/src/protocol.js';
import { type Session, startSession } from './session.js';
import { HEAD, PATH, shop } from './shop.js';

const WORK = `${HEAD}    remove wheel-nut, wheel\n    remove caliper-bolt\n    hang caliper\n`;
let session: Session;
beforeAll(async () => {
  session = await startSession({ files: shop(WORK) });
  session.open(PATH, WORK);
});
afterAll(() => session.close());

describe('the vehicle at a line', () => {
  const stateBefore = async (needle: string): Promise<Record<string, string[]>> => {
    const line = WORK.split('\n').findIndex((l) => l.includes(needle));
    const state = await session.request<protocol.VehicleState>('baywright/state', {
      uri: session.uri(PATH),
      position: { line, character: 6 },
    });
    return Object.fromEntries(
      state.sections.map((s) => [
        s.title,
        s.entries.map((e) => [e.label, e.detail].filter((x) => x !== '').join(': ')),
      ]),
    );
  };
  test('says what is off just before it', async () => {
    expect(await stateBefore('chock rear-wheels')).toEqual({});
    expect(await stateBefore('remove caliper-bolt')).toEqual({
      'Vehicle up': ['vehicle: on stands · since “Raise the van”'],
      'Off the vehicle': ['Wheel nuts: all 5 · since “Raise the van”', 'Road wheel: since “Raise the van”'],
      'Placed for the job': ['Rear wheels: chocked · since “Raise the van”'],
    });
  });
  test('each entry leads to the line that did it', async () => {
    const line = WORK.split('\n').findIndex((l) => l.includes('hang caliper'));
    const state = await session.request<protocol.VehicleState>('baywright/state', {
      uri: session.uri(PATH),
      position: { line, character: 0 },
    });
    const bolt = state.sections.flatMap((s) => s.entries).find((e) => e.label === 'Caliper bolts');
    expect(bolt?.location?.range.start.line).toBe(line - 1);
  });
});

test('choices, check, library, questions', async () => {
  const choices = await session.request<protocol.Choices>('baywright/choices', { uri: session.uri(PATH) });
  expect(choices).toMatchObject({
    number: 'FB-03',
    title: 'Front brake disc, replace',
    sides: [],
    canMakePdf: false,
  });
  const check = await session.request<protocol.CheckAnswer>('baywright/check', {});
  expect(check.files).toBe(2);
  expect(check.findings.questions).toBeGreaterThan(0);
  const library = await session.request<protocol.Library>('baywright/library', null);
  expect(library.procedures.map((p) => [p.number, p.vehicles[0]?.title])).toEqual([
    ['FB-03', 'Maristow 300 delivery van'],
  ]);
  expect(library.specs.map((s) => [s.name, s.figure, s.source])).toContainEqual([
    'caliper-bolt torque',
    '110 N·m',
    'HL-90',
  ]);
  expect(Array.isArray(await session.request('baywright/questions', { uri: session.uri(PATH) }))).toBe(true);
});

test('the tightening order under the cursor, and none where there is none', async () => {
  const ask = async (needle: string) => {
    const line = WORK.split('\n').findIndex((l) => l.includes(needle));
    const character = (WORK.split('\n')[line] ?? '').indexOf(needle) + 2;
    return session.request<protocol.OrderAnswer>('baywright/order', {
      uri: session.uri(PATH),
      position: { line, character },
    });
  };
  expect((await ask('wheel-nut, wheel')).svg).toMatch(/^<svg/);
  expect(await ask('caliper-bolt: Caliper')).toEqual({});
});

test('without a renderer, guides are refused in words', async () => {
  const question = { uri: session.uri(PATH), kind: 'guide', options: {} };
  expect((await session.request<protocol.PreviewAnswer>('baywright/preview', question)).html).toContain(
    '<!doctype html>',
  );
  expect(await session.request('baywright/print', { ...question, format: 'pdf' })).toMatchObject({
    made: false,
  });
  const signature = { uri: session.uri(PATH), to: 'proved', initials: 'KM' };
  expect(await session.request('baywright/sign', signature)).toMatchObject({ signed: false });
  expect(await session.request('baywright/issue', { uri: session.uri(PATH), copies: [] })).toMatchObject({
    state: 'refused',
  });
});
