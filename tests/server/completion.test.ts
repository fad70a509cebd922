// Completion through a session: the text after accepting is what counts.

import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { CompletionItem } from 'vscode-languageserver-protocol';
import { applied, offeredAt, type Session, startSession } from './session.js';
import { HEAD, PATH, shop } from './shop.js';

let session: Session;
beforeAll(async () => {
  session = await startSession({ files: shop(HEAD) });
  session.open(PATH, HEAD);
});
afterAll(() => session.close());

const offered = (text: string): Promise<CompletionItem[]> => offeredAt(session, PATH, text);
const labels = async (text: string): Promise<string[]> => (await offered(text)).map((i) => i.label);

/** The line of the cursor after the item is accepted. */
async function accepted(text: string, label: string): Promise<string> {
  const item = (await offered(text)).find((i) => i.label === label);
  if (!item?.textEdit || !('range' in item.textEdit)) throw new Error(`${label} is not offered`);
  return applied(session.text(PATH), [item.textEdit]).split('\n')[item.textEdit.range.start.line] ?? '';
}

describe('behind a verb', () => {
  test('remove offers what can come off now, nearest first', async () => {
    expect((await labels(`${HEAD}    remove $0`)).slice(0, 1)).toEqual(['wheel-nut']);
    expect(await labels(`${HEAD}    remove $0`)).not.toContain('wheel');
    expect((await labels(`${HEAD}    remove wheel-nut\n    remove $0`))[0]).toBe('wheel');
    expect((await labels(`${HEAD}    remove wheel-nut, $0`))[0]).toBe('wheel');
    const later = await labels(`${HEAD}    remove wheel-nut, wheel\n    remove $0`);
    expect(later[0]).toBe('caliper-bolt');
    expect(later).not.toContain('disc');
  });
  test('what cannot be done yet says what comes off first, the first first', async () => {
    const caliper = (await offered(`${HEAD}    hang $0`)).find((item) => item.label === 'caliper');
    const full = await session.request<CompletionItem>('completionItem/resolve', caliper);
    expect(JSON.stringify(full.documentation)).toContain('Not yet: wheel, caliper-bolt first.');
  });
  test('install offers what is off and can go on, the last taken off first', async () => {
    const off = `${HEAD}    remove wheel-nut, wheel, caliper-bolt, caliper, disc\n`;
    expect(await labels(`${off}    install $0`)).toEqual(['disc']);
    expect((await labels(`${off}    install disc\n    install $0`))[0]).toBe('caliper');
  });
  test('torque offers what is fitted and not torqued', async () => {
    const on = `${HEAD}    remove wheel-nut, wheel, caliper-bolt, caliper\n    install caliper, caliper-bolt\n`;
    expect((await labels(`${on}    torque $0`))[0]).toBe('caliper-bolt');
  });
  test('accepting replaces the word being typed', async () => {
    expect(await accepted(`${HEAD}    remove whe$0`, 'wheel-nut')).toBe('    remove wheel-nut');
  });
  test('offers the clauses that the verb still lacks', async () => {
    const clauses = await labels(`${HEAD}    raise vehicle with trolley-jack $0`);
    expect(clauses).toContain('at');
    expect(clauses).not.toContain('with');
    expect(await accepted(`${HEAD}    raise vehicle a$0`, 'at')).toBe('    raise vehicle at ');
  });
  test('offers tools behind with, options behind when', async () => {
    expect(await labels(`${HEAD}    raise vehicle with $0`)).toEqual(
      expect.arrayContaining(['trolley-jack', 'axle-stands']),
    );
    expect(await labels(`${HEAD}    remove wheel-nut, when $0`)).toContain('axle');
    expect(await labels(`${HEAD}    remove wheel-nut, when axle $0`)).toEqual(['light', 'heavy']);
  });
});

describe('units and tables', () => {
  test('a number asks for a unit of the right dimension', async () => {
    const units = await labels(HEAD.replace('torque 110 N·m', 'torque 110 $0'));
    expect(units).toEqual(expect.arrayContaining(['N·m', 'ft·lbf', 'in·lbf']));
    expect(units).not.toContain('L');
    expect(await labels(`${HEAD}    wait 10 $0`)).toContain('min');
  });
  test('threads behind of, head sizes for the thread, classes', async () => {
    expect(await labels(HEAD.replace('2 of M12x1.5, class 10.9, hex 18 mm', '2 of $0'))).toContain('M12x1.5');
    expect(await labels(HEAD.replace('hex 18 mm', 'hex $0'))).toContain('18 mm');
    expect(await labels(HEAD.replace('class 10.9', 'class $0'))).toContain('10.9');
  });
  test('clauses of an entry that it does not have yet come first', async () => {
    expect(
      (await labels(HEAD.replace('    held by caliper-bolt\n', '    held by caliper-bolt\n    $0\n')))[0],
    ).not.toBe('held by');
    expect(await labels(HEAD.replace('held by caliper-bolt', 'held by $0'))).toContain('caliper-bolt');
    expect(await accepted(HEAD.replace('per "HL-90"', 'per $0'), 'HL-90')).toBe(
      '    torque 110 N·m, per "HL-90"',
    );
  });
});

describe('the rest', () => {
  test('names in braces, then their figures', async () => {
    expect(await labels(`${HEAD}    note: Mind the {$0`)).toContain('caliper-bolt');
    expect(await labels(`${HEAD}    note: Torque {caliper-bolt $0`)).toContain('torque');
  });
  test('imports, vehicles, heads, sections, snippets', async () => {
    expect(await labels(HEAD.replace('use "../catalogue/van.bay"', 'use "$0'))).toContain(
      '../catalogue/van.bay',
    );
    expect(await labels(HEAD.replace('applies to maristow-300', 'applies to maristow-300\n$0'))).toEqual(
      expect.arrayContaining(['labour', 'parts', 'installation']),
    );
    const step = (await offered(`${HEAD}  $0`)).find((i) => i.label === 'step …');
    expect(step?.textEdit).toMatchObject({ newText: expect.stringMatching(/^step: \$\{1:Title\}/) });
  });
  test('words of rules: what opens a line, what may end the time allowed', async () => {
    const rule = (line: string): string => `${HEAD}\nrules\n  cap-it: Open lines are capped\n    ${line}`;
    expect(await labels(rule('$0'))).toEqual(expect.arrayContaining(['after', 'require', 'at most once']));
    expect(await labels(rule('$0'))).not.toContain('step ends');
    expect(await labels(rule('before $0'))).toEqual(expect.arrayContaining(['step ends', 'raise']));
    expect(await accepted(rule('after torque $0'), 'it')).toBe('    after torque it');
    expect(await accepted(rule('after torque $0'), 'any')).toBe('    after torque any ');
  });
  test('values of conditions, and states that a rule may ask for', async () => {
    const text = HEAD.replace(
      'parts\n',
      'conditions\n  brake: Parking brake\n    applied, released\n\nparts\n',
    );
    const before = (line: string): string =>
      text.replace('removal\n', `prerequisites\n  ${line}\n\nremoval\n`);
    expect(await labels(before('brake $0'))).toEqual(['applied', 'released']);
    expect(await labels(`${text}    set brake $0`)).toEqual(['released', 'applied']);
    expect(await labels(text.replace('held by caliper-bolt', 'held by brake $0'))).toEqual([
      'applied',
      'released',
    ]);
    const rule = (line: string): string =>
      `${text}\nrules\n  no: Never so\n    never remove caliper, ${line}`;
    expect(await labels(rule('while vehicle $0'))).toEqual(expect.arrayContaining(['raised', 'not']));
    expect(await labels(rule('while brake $0'))).toEqual(
      expect.arrayContaining(['applied', 'released', 'not']),
    );
    expect(await labels(rule('while any temporary $0'))).toEqual(
      expect.arrayContaining(['placed', 'marked']),
    );
    expect(await labels(rule('while any temporary not $0'))).not.toContain('not');
  });
  test('undeclared names where they could be declared', async () => {
    expect(await labels(`${HEAD.replace('parts\n', 'parts\n  $0\n')}    remove dust-shield\n`)).toContain(
      'dust-shield',
    );
  });
  test('resolve gives docs', async () => {
    const item = (await offered(`${HEAD}    remove $0`)).find((i) => i.label === 'wheel-nut');
    const full = await session.request<CompletionItem>('completionItem/resolve', item);
    expect(full.documentation).toMatchObject({ value: expect.stringContaining('M14x1.5') });
  });
  test('comments and text have none', async () => {
    expect(await offered(`${HEAD}    # remove $0`)).toEqual([]);
    expect(await offered(`${HEAD}    note: remove $0`)).toEqual([]);
  });
});
