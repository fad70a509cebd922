// What is hung on or tied for the job and comes off again: tags on the vehicle, straps.
import { describe } from 'vitest';
import { example } from './job.js';

const VAN = `
connections
  lead: Lamp lead

places
  tower: Strut tower

tools
  strap: Soft strap

supplies
  cable-tie: Cable ties
`;

const USED = `
    clean tower with strap, cable-tie
    inspect lead`;

describe('tags', () => {
  example(
    'left on the vehicle',
    VAN,
    `${USED}
    tag vehicle
#   ^^^^^^^^^^^ S314`,
  );
  example(
    'taken off again',
    VAN,
    `${USED}
    tag vehicle
    untag vehicle`,
  );
  example(
    'on a lead, to know it by: it may stay',
    VAN,
    `${USED}
    tag lead`,
  );
  example(
    'taken off twice',
    VAN,
    `${USED}
    tag vehicle
    untag vehicle
    untag vehicle
#   ^^^^^^^^^^^^^ S117`,
  );
});

describe('ties', () => {
  example(
    'a strap is lent and comes back',
    VAN,
    `${USED}
    tie lead to tower with strap
#   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^ S315`,
  );
  example(
    'a strap that is undone',
    VAN,
    `${USED}
    tie lead to tower with strap
    untie lead`,
  );
  example(
    'a cable tie stays',
    VAN,
    `${USED}
    tie lead to tower with cable-tie`,
  );
  example(
    'tied in its place, by hand',
    VAN,
    `${USED}
    tie lead to tower`,
  );
  example(
    'undone without having been tied',
    VAN,
    `${USED}
    untie lead
#   ^^^^^^^^^^ S118`,
  );
});
