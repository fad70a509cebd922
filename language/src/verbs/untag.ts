// untag: take the label off.
import { defineVerb } from '../vocabulary/verb.js';
import { labelled, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const untag = defineVerb({
  word: 'untag',
  on: labelled(
    { needs: ['reachable', 'tagged'], makes: ['untagged'] },
    { needs: ['tagged'], makes: ['untagged'] },
  ),
  machines: ['vehicle'],
  object: 'one or more',
  clauses: {
    at: named(SPOTS, 'Where it hangs.'),
  },
  minutes: 0.2,
  phrase: {
    en: 'Take the tag off {object}[ at {at}]',
    es: 'Retirar la etiqueta: {object}[ en {at}]',
    fr: 'Retirer l’étiquette : {object}[ ({at})]',
    de: 'Schild entfernen: {object}[ ({at})]',
  },
  done: 'untagged',
  docs: 'Takes off what `tag` put on. A tag on the vehicle is left on at the end of a job only by mistake.',
  example: 'untag vehicle',
});
