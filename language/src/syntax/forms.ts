// What kind of text and block each kind of line has.
import type { HeadClass } from '../vocabulary/heads.js';
import type { BlockPlace, Classified, Place } from './classify.js';

export interface Form {
  readonly class: HeadClass;
  readonly place: Place;
  /** How many tokens of a titled or bare line belong to its code when the colon is missing. */
  readonly operands: number;
}

export function formOf(
  classified: Exclude<Classified, { is: 'unknown' }>,
  place: BlockPlace,
  word: string,
): Form {
  switch (classified.is) {
    case 'section':
      return { class: 'block', place: sectionPlace(classified.section), operands: 0 };
    case 'entry':
      return { class: 'titled', place: { context: 'entry', kind: place.kind }, operands: 0 };
    case 'verb':
      return { class: 'plain', place: { context: 'statement', kind: undefined, verb: word }, operands: 0 };
    case 'prerequisite':
      return { class: 'plain', place: { context: 'entry', kind: undefined }, operands: 0 };
    case 'clauses':
    case 'values':
    case 'rule':
      return { class: 'plain', place: 'nothing', operands: 0 };
    case 'head':
      return headForm(classified, place);
  }
}

function headForm({ head }: Extract<Classified, { is: 'head' }>, place: BlockPlace): Form {
  const base = {
    class: head.class,
    operands: head.kind === 'operation' || head.kind === 'procedure' ? 1 : 0,
  };
  const at = (context: BlockPlace['context']): Form => ({ ...base, place: { context, kind: undefined } });
  switch (head.kind) {
    case 'operation':
      return at('operation');
    case 'step':
      return at('step');
    case 'perform':
      return at('statement');
    case 'when':
      return { ...base, place };
    case 'if':
    case 'otherwise':
    case 'repeat':
      return place.context === 'statement' ? at('step') : { ...base, place };
    default:
      return { ...base, place: 'nothing' };
  }
}

function sectionPlace(section: {
  readonly word: string;
  readonly declares?: BlockPlace['kind'];
  readonly work?: true;
}): BlockPlace {
  if (section.work === true) return { context: 'work', kind: undefined };
  if (section.declares === undefined) return { context: 'prerequisites', kind: undefined };
  return { context: 'declarations', kind: section.declares };
}
