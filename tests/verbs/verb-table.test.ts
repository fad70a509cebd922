// Laws that every row of the verb table keeps.
import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { quantityKinds } from '../../language/src/quantity/dimension.js';
import { VERB_BY_WORD, VERBS } from '../../language/src/verbs/index.js';
import { SAID_FOR, suggestVerbs } from '../../language/src/verbs/said-for.js';
import { STEP_CLAUSE_BY_WORD } from '../../language/src/vocabulary/clauses.js';
import { HEADS } from '../../language/src/vocabulary/heads.js';
import { BUILT_IN_NAMES, LANGUAGES, THING_KINDS } from '../../language/src/vocabulary/kinds.js';
import { MAKES, NEEDS } from '../../language/src/vocabulary/needs.js';
import { slotsOf } from '../../language/src/vocabulary/render-phrase.js';
import type { Effect, VerbDef } from '../../language/src/vocabulary/verb.js';

// The torque box beside the action prints these, so the sentence does not.
const IN_THE_TORQUE_BOX = ['per', 'on ground', 'at ride height'];
const JOINERS = ['then', 'and', 'or', 'back', 'of', 'it'];

function effects(verb: VerbDef): Effect[] {
  return [...Object.values(verb.on), ...(verb.alone ? [verb.alone] : [])];
}

describe('the table', () => {
  it('is sorted and has each word once', () => {
    const words = VERBS.map((verb) => verb.word);
    expect(words).toEqual([...new Set(words)].sort());
    expect(VERB_BY_WORD.size).toBe(VERBS.length);
  });

  it('has one file per verb, named by its word', () => {
    const files = readdirSync(new URL('../../language/src/verbs/', import.meta.url));
    const words = files
      .map((file) => file.replace(/\.ts$/, ''))
      .filter((file) => !['index', 'said-for'].includes(file));
    expect(words.sort()).toEqual(VERBS.map((verb) => verb.word));
  });

  it('uses every need and every make', () => {
    expect(new Set(VERBS.flatMap(effects).flatMap((effect) => effect.needs))).toEqual(
      new Set(Object.keys(NEEDS)),
    );
    expect(new Set(VERBS.flatMap(effects).flatMap((effect) => effect.makes))).toEqual(
      new Set(Object.keys(MAKES)),
    );
  });

  it('asks for the whole vehicle in lower, run and road-test only', () => {
    expect(VERBS.filter((verb) => verb.wholeVehicle).map((verb) => verb.word)).toEqual([
      'lower',
      'road-test',
      'run',
    ]);
  });

  it('cannot be changed by a reader', () => {
    expect(VERBS.every((verb) => Object.isFrozen(verb))).toBe(true);
  });
});

describe.each(VERBS.map((verb) => [verb.word, verb] as const))('%s', (word, verb) => {
  const clauses = Object.keys(verb.clauses);

  it('is a plain word that no clause, head or joiner uses', () => {
    expect(word).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(STEP_CLAUSE_BY_WORD.has(word)).toBe(false);
    expect([...HEADS.map((head) => head.word), ...JOINERS, 'accept']).not.toContain(word);
  });

  it('acts on known kinds and machines', () => {
    const kinds = Object.keys(verb.on);
    expect([...THING_KINDS, 'machine']).toEqual(expect.arrayContaining(kinds));
    expect(kinds.includes('machine')).toBe(verb.machines !== undefined);
    expect([...BUILT_IN_NAMES]).toEqual(expect.arrayContaining([...(verb.machines ?? [])]));
    expect(kinds.length === 0).toBe(verb.object === 'none');
    expect(verb.alone !== undefined).toBe(verb.object !== 'one or more');
    if (verb.takesCount) expect(kinds).toContain('fastener');
  });

  it('has clauses that statements know, with the slots they need', () => {
    for (const [clause, slot] of Object.entries(verb.clauses)) {
      const shape = STEP_CLAUSE_BY_WORD.get(clause)?.shape;
      expect(shape, clause).toBeDefined();
      if (shape === 'flag' || shape === 'raw' || shape === 'event' || shape === 'words') {
        expect(slot.names ?? slot.quantity, clause).toBeUndefined();
      } else expect(slot.names ?? slot.quantity, clause).toBeDefined();
      if (shape === 'names') expect(slot.names, clause).toBeDefined();
      expect(slot.docs, clause).toMatch(/^[A-Z].*[.?]$/);
    }
    for (const slot of [...Object.values(verb.clauses), ...(verb.bare ? [verb.bare] : [])]) {
      expect(Object.keys(quantityKinds)).toEqual(expect.arrayContaining([...(slot.quantity ?? [])]));
      expect([...THING_KINDS]).toEqual(expect.arrayContaining([...(slot.names ?? [])]));
    }
    if (verb.bare) expect(verb.bare.docs).toMatch(/^[A-Z].*\.$/);
  });

  it.each(LANGUAGES)('says everything a line can hold in %s', (language) => {
    const phrases = [verb.phrase, ...Object.values(verb.phraseFor ?? {})].map((words) => words[language]);
    const wanted = [
      ...(verb.object === 'none' ? [] : ['object']),
      ...(verb.takesValue ? ['value'] : []),
      ...(verb.bare ? ['amount'] : []),
      ...clauses.filter((clause) => !IN_THE_TORQUE_BOX.includes(clause)),
    ];
    for (const words of phrases) expect(slotsOf(words).sort()).toEqual([...wanted].sort());
    // Elision and contraction need the article; the words chosen must do without.
    if (language === 'fr') expect(phrases.join('\n')).not.toMatch(/\b(de|du|le|la|que) \{/);
    if (language === 'es') expect(phrases.join('\n')).not.toMatch(/\b(del|al) \{/);
  });

  it('is documented with a line that uses it', () => {
    expect(verb.docs).toMatch(/^[A-Z].*\.$/);
    expect(verb.example.split(/[ :]/)[0]).toBe(word);
    expect(verb.done).toMatch(/^[a-z]/);
    expect(verb.minutes).toBeGreaterThanOrEqual(0);
    expect(verb.minutes).toBeLessThanOrEqual(15);
  });
});

describe('words that shops say instead', () => {
  it('lead to verbs and are none themselves', () => {
    for (const [said, verb] of SAID_FOR) {
      expect(VERB_BY_WORD.has(verb), verb).toBe(true);
      expect(VERB_BY_WORD.has(said), said).toBe(false);
      expect(HEADS.map((head) => head.word)).not.toContain(said);
    }
  });

  it('come before likeness of spelling', () => {
    expect(suggestVerbs('check')[0]).toBe('inspect');
    expect(suggestVerbs('replace')[0]).toBe('renew');
    expect(suggestVerbs('refit')[0]).toBe('install');
    expect(suggestVerbs('tourqe')[0]).toBe('torque');
    expect(suggestVerbs('isntall')).toEqual(['install']);
    expect(suggestVerbs('xylophone')).toEqual([]);
  });
});
