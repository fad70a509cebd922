// Things placed for the job: rags, pans, caps.
import { describe } from 'vitest';
import { example } from './job.js';

const RAG = `
parts
  cover: Cover
temporary
  rag: Rag in the opening
    behind cover
  pan: Pan
`;

describe('a rag behind a cover', () => {
  example(
    'comes out before the cover goes on',
    RAG,
    `
    remove cover
    place rag
    remove rag
    install cover`,
  );
  example(
    'is placed with the cover on',
    RAG,
    `
    place rag
#   ^^^^^^^^^ S104 \`cover\`
    remove cover
    remove rag
    install cover`,
  );
  example(
    'is shut in, and the cover comes off again for it',
    RAG,
    `
    remove cover
    place rag
    install cover
#   ^^^^^^^^^^^^^ S202 \`rag\`
    remove cover
    remove rag
    install cover`,
  );
  example(
    'is shut in for good: told where it was placed',
    RAG,
    `
    remove cover
    place rag
#   ^^^^^^^^^ S305
    install cover`,
  );
});

describe('a pan', () => {
  example(
    'left under',
    RAG,
    `
    place pan
#   ^^^^^^^^^ S305`,
  );
  example(
    'placed twice',
    RAG,
    `
    place pan
    place pan
#   ^^^^^^^^^ S107
    remove pan`,
  );
  example(
    'taken away without having been there',
    RAG,
    `
    remove pan
#   ^^^^^^^^^^ S108`,
  );
  example(
    'declared and never placed is no matter of state',
    RAG,
    `
    remove cover
    install cover`,
  );
});

describe('a name of two words without its hyphen', () => {
  example(
    'is not also a thing that was forgotten',
    `
fluids
  oil: Oil
    drain at drain-plug
    fill at fill-plug
fasteners
  drain-plug: Drain plug
    1 of M18x1.5
    torque 40 N·m, per ?
  fill-plug: Fill plug
    1 of M18x1.5
    torque 40 N·m, per ?
temporary
  drain-pan: Drain pan
`,
    `
    place drain pan
    remove fill-plug, drain-plug
    drain oil into drain-pan
    install drain-plug
    torque drain-plug
    fill oil
    install fill-plug
    torque fill-plug
    remove drain-pan`,
  );
});
