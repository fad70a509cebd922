// Grades, mixing, amounts, sealants and seals.
import { describe, expect, test } from 'vitest';
import { afterFix, findingsOf } from '../suite-helper.js';
import { checkOnly } from './only.js';

const fluid = (clauses: string) => `catalogue: Fluids

fluids
  some-fluid: Some fluid
    ${clauses}
`;

describe('grades', () => {
  test.each([
    ['gear oil', fluid('SAE 85W-140, API GL-5')],
    ['engine oil with two specifications', fluid('SAE 5W-30, ACEA C3, API SP')],
    ['brake fluid', fluid('DOT 5.1')],
    ['hydraulic oil', fluid('ISO VG 46')],
    ['refrigerant', fluid('refrigerant R-1234yf, mass 540 ±15 g')],
    ['not known yet', fluid('SAE ?')],
    ['no engine oil has 35', fluid('SAE 10W-35\n#       ^^^^^^ L101')],
    ['turned round', fluid('SAE 90-75W\n#       ^^^^^^ L101 wrong way round')],
    ['no DOT 6', fluid('DOT 6\n#       ^ L101 no DOT 6')],
    ['brake fluid that is gear oil', fluid('DOT 4, API GL-5\n#          ^^^^^^^^ L102')],
    [
      'two grades on two variants',
      'catalogue: Van\n\nvehicles\n  van: Van\n    option axle light, heavy\n\nfluids\n  axle-oil: Axle oil\n    SAE 75W-90, when axle light\n    DOT 4, when axle heavy\n',
    ],
  ])('%s', (_name, text) => {
    checkOnly(text, 'L');
  });
});

test('an amount that is left out takes its commas along', () => {
  const filled = (line: string): Map<string, string> =>
    new Map([
      [
        'a.bay',
        `procedure A-1: Oil\n\nfluids\n  oil: Oil\n    fill 2 L\n\ntools\n  funnel: Funnel\n\ninstallation\n  step: Fill\n    fill oil, 1 L${line}\n`,
      ],
    ]);
  const after = (line: string): string | undefined => {
    const [found] = findingsOf(filled(line)).filter(({ code }) => code === 'Q118');
    const fix = found?.fixes.find(({ title }) => title.startsWith('Leave'));
    return afterFix(filled(line), fix?.edits ?? [])
      .get('a.bay')
      ?.trimEnd()
      .split('\n')
      .at(-1);
  };
  expect(after('')).toBe('    fill oil');
  expect(after(', with funnel')).toBe('    fill oil with funnel');
});

test('a split pin that goes back is asked about', () => {
  checkOnly(
    `procedure A-1: Pin

parts
  rod: Rod
    held by rod-pin

fasteners
  rod-pin: Pin of the rod
# ^^^^^^^ L402
    1 of split-pin

removal
  step: Off
    remove rod-pin, rod

installation
  step: On
    install rod, rod-pin
`,
    'L',
  );
});

const job = (system: string, can: string, fill: string) => `procedure A-1: Fill

fluids
  brake-fluid: Brake fluid
    ${system}

supplies
  fluid-can: Fluid can
    ${can}

installation
  step: Fill
    ${fill}
`;

describe('what is poured in', () => {
  test.each([
    ['the same grade', job('DOT 4, fill 0.5 L', 'DOT 4', 'fill brake-fluid from fluid-can')],
    ['a better glycol fluid', job('DOT 4, fill 0.5 L', 'DOT 5.1', 'fill brake-fluid from fluid-can')],
    [
      'silicone into glycol',
      job(
        'DOT 4, fill 0.5 L',
        'DOT 5',
        'fill brake-fluid from fluid-can\n#                         ^^^^^^^^^ L201 silicone',
      ),
    ],
    [
      'a lower boiling point',
      job(
        'DOT 4, fill 0.5 L',
        'DOT 3',
        'top-up brake-fluid from fluid-can\n#                           ^^^^^^^^^ L201 boils at 140 °C wet',
      ),
    ],
    [
      'GL-5 where GL-4 is asked for',
      job(
        'API GL-4, fill 2 L',
        'API GL-5',
        'fill brake-fluid from fluid-can\n#                         ^^^^^^^^^ L202 copper',
      ),
    ],
    ['no grade on the can', job('DOT 4, fill 0.5 L', 'number "X"', 'fill brake-fluid from fluid-can')],
  ])('%s', (_name, text) => {
    checkOnly(text, 'L');
  });
});

const work = (clauses: string, lines: string) => `procedure A-1: Oil

applies to van

vehicles
  van: Van
    option axle light, heavy

fluids
  axle-oil: Axle oil
    ${clauses}

parts
  cover: Cover
    held by cover-clip
    closes axle-oil

fasteners
  cover-clip: Cover clips
    2 of clip

places
  mark: MAX mark

removal
  step: Work
    ${lines}
`;

describe('drains and fills', () => {
  test.each([
    [
      'flushed: out, in, out, in',
      work('fill 2 L', 'drain axle-oil\n    fill axle-oil\n    drain axle-oil\n    fill axle-oil'),
    ],
    [
      'made up when it is low',
      work(
        'fill 2 L, until level at mark',
        'fill axle-oil\n    check-level axle-oil\n      if below limit\n        fill axle-oil until level at mark',
      ),
    ],
    ['a part let out, then all', work('fill 2 L', 'drain axle-oil, 0.5 L\n    drain axle-oil')],
    ['opened in between', work('fill 2 L', 'fill axle-oil\n    remove cover-clip, cover\n    fill axle-oil')],
    [
      'on two variants',
      work('fill 2 L', 'when axle light\n      fill axle-oil\n    when axle heavy\n      fill axle-oil'),
    ],
    [
      'the variant that takes more',
      work(
        'fill 2 L\n    fill 3 L, when axle heavy',
        'when axle heavy\n      fill axle-oil, 3 L, until level at mark',
      ),
    ],
    [
      'too much for the light axle',
      work(
        'fill 2 L\n    fill 3 L, when axle heavy',
        'fill axle-oil, 3 L, until level at mark\n#                  ^^^ L302 more than its fill of 2 L',
      ),
    ],
    ['in another unit, rounded', work('fill 1.9 L', 'fill axle-oil, 2 US qt, until level at mark')],
    ['twice', work('fill 2 L', 'fill axle-oil\n    fill axle-oil\n#        ^^^^^^^^ L304')],
    ['drained twice', work('fill 2 L', 'drain axle-oil\n    drain axle-oil\n#         ^^^^^^^^ L303')],
    ['neither amount nor mark', work('SAE 75W-90', 'fill axle-oil\n#        ^^^^^^^^ L301')],
    ['a mark on the line', work('SAE 75W-90', 'fill axle-oil until level at mark')],
  ])('%s', (_name, text) => {
    checkOnly(text, 'L');
  });
});

describe('seals', () => {
  const cover = (gasket: string, more = '') => `procedure A-1: Cover

parts
  cover: Cover
  ${gasket}
    in cover

removal
  step: Off
    remove cover
${more}`;
  test.each([
    ['a gasket that rides along', cover('cover-gasket: Gasket\n# ^^^^^^^^^^^^ L402')],
    ['marked as a one-time part', cover('retainer: Retainer\n# ^^^^^^^^ L402\n    marked one-time')],
    ['renewed in its entry', cover('cover-gasket: Gasket\n    renew')],
    ['renewed in the work', cover('cover-gasket: Gasket', '    renew cover-gasket\n')],
    ['only a name that begins so', cover('seal-carrier: Carrier of the seal')],
  ])('%s', (_name, text) => {
    checkOnly(text, 'L');
  });
});

describe('a charge of refrigerant against its plate', () => {
  const charge = (work: string): string => `procedure A-1: Air conditioning

applies to van

vehicles
  van: Van
    option axle light, heavy

fluids
  gas: Refrigerant
    refrigerant R-1234yf
    mass 530 ±15 g, per ?
    mass 610 ±15 g, per ?, when axle heavy

installation
  step: Charge
    recover gas
${work}
`;
  const both = (light: string, heavy: string): string =>
    charge(`    when axle light\n      ${light}\n    when axle heavy\n      ${heavy}`);
  test.each([
    ['what is declared, for each vehicle', both('charge gas, 530 g', 'charge gas, 610 g')],
    ['all that the plate allows', both('charge gas, 515 to 545 g', 'charge gas, 21.2 oz')],
    ['no figure of its own', charge('    charge gas')],
    [
      'that of another vehicle',
      both(
        'charge gas, 530 g',
        'charge gas, 530 g\n#                 ^^^^^ L307 530 g of `gas` is not within the 610 ±15 g',
      ),
    ],
    ['one figure for both', charge('    charge gas, 530 g\n#               ^^^^^ L307')],
    [
      'an exchanged figure',
      both('charge gas, 350 g\n#                 ^^^^^ L307 530 ±15 g', 'charge gas, 610 g'),
    ],
  ])('%s', (_name, text) => {
    checkOnly(text, 'L3');
  });
  test('may leave the figure to the plate', () => {
    const files = new Map([['a.bay', charge('    charge gas, 650 g')]]);
    const found = findingsOf(files).find(({ code }) => code === 'L307');
    const mended = afterFix(files, found?.fixes[0]?.edits ?? []);
    expect(mended.get('a.bay')).toContain('    charge gas\n');
    expect(findingsOf(mended).map(({ code }) => code)).not.toContain('L307');
  });
});
