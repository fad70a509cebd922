// Filling of sentence templates.
import { describe, expect, it } from 'vitest';
import {
  type Piece,
  parsePhrase,
  renderPhrase,
  slotsOf,
  textOf,
} from '../../language/src/vocabulary/render-phrase.js';

const hub: Piece = { thing: 'hub-bolt', text: 'hub bolts', strong: true };
const turn: Piece = { quantity: '1/2 turn', text: '½ turn' };

describe('renderPhrase', () => {
  it('keeps things and quantities as pieces of their own and joins plain text', () => {
    expect(
      renderPhrase('Loosen {object}[ by {amount}]', { object: [{ text: 'the ' }, hub], amount: [turn] }),
    ).toEqual([{ text: 'Loosen the ' }, hub, { text: ' by ' }, turn]);
  });

  it.each([undefined, []])('drops a bracketed part with its empty slot (%j)', (empty) => {
    const pieces = renderPhrase('Remove {object}[ from {from}][ with {with}]', {
      object: [hub],
      from: empty,
    });
    expect(textOf(pieces)).toBe('Remove hub bolts');
  });

  it('drops inner brackets alone, and all with the outer slot', () => {
    const template = 'Off: {off}[, {torque} to torque[ by {time}]]';
    expect(textOf(renderPhrase(template, { off: [{ text: '5' }], torque: [{ text: '1' }] }))).toBe(
      'Off: 5, 1 to torque',
    );
    expect(textOf(renderPhrase(template, { off: [{ text: '5' }], time: [{ text: '9' }] }))).toBe('Off: 5');
  });

  it('takes away the comma that a dropped part leaves', () => {
    expect(textOf(renderPhrase('{object}[, {amount},][ mit {with}] auftragen', { object: [hub] }))).toBe(
      'Hub bolts auftragen',
    );
    expect(textOf(renderPhrase('Apply {a}[, {b},][ to {c}]', { a: [hub], b: [turn] }))).toBe(
      'Apply hub bolts, ½ turn',
    );
    expect(textOf(renderPhrase('A[, {a},][, {b}]', { a: [turn], b: [turn] }))).toBe('A, ½ turn, ½ turn');
  });

  it('gives a capital to a sentence that opens with a slot, not to one that opens with a small letter', () => {
    expect(renderPhrase('{object} lösen', { object: [{ ...hub, text: 'öldüse' }] })[0]).toEqual({
      ...hub,
      text: 'Öldüse',
    });
    expect(textOf(renderPhrase('stage {number}', { number: [{ text: '2' }] }))).toBe('stage 2');
  });

  it('keeps a French colon on the line of the word before it', () => {
    expect(textOf(renderPhrase('Refuser : {text}', { text: [{ text: 'fissures' }] }))).toBe(
      'Refuser\u00a0: fissures',
    );
  });

  it('leaves the text of things alone', () => {
    const odd: Piece = { thing: 'a', text: 'a,  b :', strong: true };
    expect(renderPhrase('Remove {object}', { object: [odd] })).toEqual([{ text: 'Remove ' }, odd]);
  });
});

describe('templates', () => {
  it('name their slots in reading order, spaces included', () => {
    expect(slotsOf('Fill {object}[ until level at {until level at}[ {x}]]')).toEqual([
      'object',
      'until level at',
      'x',
    ]);
  });

  it.each(['a [b', 'a ]b', 'a {b', 'a }b', '{a[b]}'])(
    'are refused when brackets do not pair: %s',
    (template) => {
      expect(() => parsePhrase(template)).toThrow(/phrase/);
    },
  );
});
