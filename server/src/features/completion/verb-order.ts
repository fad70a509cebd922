// The verbs in the order in which a phase of the work asks for them; common practice. The rest follows by the alphabet.
import { VERB_BY_WORD, VERBS, type VerbDef } from '@baywright/language';

export function verbsIn(section: string | undefined): readonly VerbDef[] {
  const first = (FIRST[section ?? ''] ?? []).flatMap((word) => VERB_BY_WORD.get(word) ?? []);
  return [...first, ...VERBS.filter((verb) => !first.includes(verb))];
}

const FIRST: Readonly<Record<string, readonly string[]>> = {
  preparation: [
    'set',
    'chock',
    'wear',
    'loosen',
    'raise',
    'support',
    'disconnect',
    'drain',
    'place',
    'cover',
  ],
  removal: ['remove', 'disconnect', 'loosen', 'hang', 'drain', 'cap', 'mark', 'measure', 'move', 'support'],
  inspection: ['inspect', 'measure', 'clean', 'test', 'renew', 'record'],
  installation: [
    'install',
    'torque',
    'connect',
    'tighten',
    'snug',
    'lubricate',
    'apply',
    'fill',
    'bleed',
    'clean',
  ],
  completion: [
    'lower',
    'torque',
    'unchock',
    'connect',
    'check-level',
    'test',
    'road-test',
    'recheck',
    'record',
    'scrap',
  ],
};
