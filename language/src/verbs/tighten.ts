// tighten: close fasteners that have no torque figure.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, named, worded } from '../vocabulary/verb-shorthand.js';

export const tighten = defineVerb({
  word: 'tighten',
  on: {
    fastener: {
      needs: ['hand tight', 'none out', 'held thing in', 'reachable', 'posture', 'torque clock', 'not spent'],
      makes: ['tight'],
    },
  },
  object: 'one or more',
  clauses: {
    order: worded('Order for this line.'),
    with: named(AIDS, 'The tool, when it is worth naming.'),
  },
  minutes: 0.2,
  turns: true,
  phrase: {
    en: 'Tighten {object}[ in the order {order}][ with {with}]',
    es: 'Apretar {object}[ en el orden {order}][ con {with}]',
    fr: 'Serrer {object}[ dans l’ordre {order}][ avec {with}]',
    de: '{object}[ in der Reihenfolge {order}][ mit {with}] festziehen',
  },
  done: 'tightened',
  docs: 'Closes clips, clamps and what is rightly tightened by hand. A fastener with a torque figure takes `torque`.',
  example: 'tighten hose-clamp',
});
