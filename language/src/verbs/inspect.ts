// inspect: look at something against a criterion.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, measured, named, RESULT, SPOTS } from '../vocabulary/verb-shorthand.js';

export const inspect = defineVerb({
  word: 'inspect',
  on: {
    part: RESULT,
    fastener: RESULT,
    connection: RESULT,
    circuit: RESULT,
    fluid: RESULT,
    adjustment: RESULT,
    condition: RESULT,
    limit: RESULT,
    supply: RESULT,
    temporary: RESULT,
    place: RESULT,
    tool: RESULT,
    machine: { needs: [], makes: ['outcome'] },
  },
  machines: ['vehicle', 'engine', 'suspension'],
  object: 'one or more',
  clauses: {
    at: { names: SPOTS, quantity: ['count'], docs: 'Where, or at how many places.' },
    for: measured(['time'], 'How long to watch.'),
    with: named(AIDS, 'The lamp, mirror or borescope.'),
  },
  minutes: 1,
  judges: 'by looking',
  phrase: {
    en: 'Inspect {object}[ at {at}][ for {for}][ with {with}]',
    es: 'Inspeccionar {object}[ en {at}][ durante {for}][ con {with}]',
    fr: 'Contrôler {object}[ ({at})][ pendant {for}][ avec {with}]',
    de: '{object}[ {for} lang][ mit {with}] sichtprüfen[ ({at})]',
  },
  done: 'inspected',
  docs: 'Looks at something. Say below it what is not accepted, `reject: cracks, scoring`; `if rejected` says what follows.',
  example: 'inspect knuckle-bore',
});
