// Rules that ask nothing: a part is missing, or they name what is not there.
import { describe, expect, test } from 'vitest';
import { checkMarked, findingsOf } from '../suite-helper.js';

const job = (rule: string): string => `procedure A-1: Hub, clean

parts
  hub: Hub

conditions
  selector: Gear selector
    park, neutral

rules
${rule}

removal
  step: Clean the hub
    set selector park
    clean hub
`;

describe('a rule that is not whole', () => {
  test.each([
    ['no requirement', `  r: Rule.\n# ^ S405 no \`require\`\n    after clean hub`],
    ['no state', `  r: Rule.\n# ^ S405 no \`while\`\n    never clean hub`],
    ['neither needs nor once', `  r: Rule.\n# ^ S405 neither\n    every clean hub`],
    ['no time', `  r: Rule.\n# ^ S405 how long\n    before clean hub\n    require wait`],
    ['a title alone', `  r: Rule.\n# ^ S405 nothing stands below`],
    ['no head', `  r: Rule.\n# ^ S405 does not begin\n    require clean hub`],
  ])('%s', (_name, rule) => {
    checkMarked(job(rule));
  });

  test.each([
    ['begun, in a draft', '    after clean hub', '', 'question'],
    ['a title alone, in a draft', '', '', 'question'],
    ['begun wrongly', '    require clean hub', '', 'error'],
    [
      'begun, in a procedure that was proved',
      '    after clean hub',
      'status proved by TK on 2026-10-05\n',
      'error',
    ],
  ])('is open while it is written, and wrong behind that: %s', (_name, clauses, status, severity) => {
    const text = job(`  r: Rule.\n${clauses}`).replace('\n\n', `\n\n${status}\n`);
    const found = findingsOf(new Map([['a.bay', text]])).filter(({ code }) => code === 'S405');
    expect(found.map((each) => each.severity)).toEqual([severity]);
  });
});

describe('a rule that names what is not there', () => {
  test('a thing, with the near name as fix', () => {
    const [found] = checkMarked(
      job(`  r: Rule.
    before clean hubb
#                ^^^^ S405 no thing is called \`hubb\`
    require hold`),
    );
    expect(found?.fixes.map((f) => f.title)).toEqual(['Write `hub`']);
  });

  test('a state the thing never has', () => {
    const [found] = checkMarked(
      job(`  r: Rule.
    never clean hub
    while selector nuetral
#                  ^^^^^^^ S405 \`selector\` is never \`nuetral\``),
    );
    expect(found?.fixes.map((f) => f.title)).toEqual(['Write `neutral`']);
  });

  test('a catalogue may name what only procedures declare', () => {
    checkMarked(`--- file: house/rules.bay
catalogue: House rules

rules
  nut-first: The nut is torqued before the vehicle comes down.
    never lower vehicle
    while axle-nut loose
--- file: procedures/a.bay
procedure A-1: Hub, clean

use "../house/rules.bay"

parts
  hub: Hub

removal
  step: Clean the hub
    clean hub
`);
  });
});
