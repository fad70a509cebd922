// compress: press a spring or tensioner together.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, IN_REACH, measured, named } from '../vocabulary/verb-shorthand.js';

export const compress = defineVerb({
  word: 'compress',
  on: { part: IN_REACH, adjustment: IN_REACH },
  object: 'one or more',
  bare: measured(['length', 'force'], 'How far, or how hard.'),
  clauses: {
    to: named(['place', 'part'], 'How far.'),
    with: named(AIDS, 'The compressor.'),
  },
  minutes: 2,
  readies: true,
  phrase: {
    en: 'Compress {object}[, {amount},][ to {to}][ with {with}]',
    es: 'Comprimir {object}[, {amount},][ hasta {to}][ con {with}]',
    fr: 'Comprimer {object}[, {amount},][ jusqu’à {to}][ avec {with}]',
    de: '{object}[, {amount},][ bis {to}][ mit {with}] spannen',
  },
  done: 'compressed',
  docs: 'Presses a spring or tensioner together. It stores energy until `release`: use the tool made for it.',
  example: 'compress strut-spring with spring-compressor',
});
