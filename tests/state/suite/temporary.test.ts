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
