// Signal words where they stand and what they say, and the usual cautions, each with the case that must stay silent.
import { describe, expect, test } from 'vitest';
import { HARM_WORDS, hasWord } from '../../language/src/vocabulary/hazard-words.js';
import { HAZARDS } from '../../language/src/vocabulary/hazards.js';
import { LANGUAGES } from '../../language/src/vocabulary/kinds.js';
import { afterFix, findingsOf, readMarked } from '../suite-helper.js';
import { checkOnly } from './only.js';

const step = (lines: string) => `procedure A-1: Job

places
  spot: Spot

removal
  step: Work
${lines}
`;

describe('messages', () => {
  test.each([
    ['before the action', step('    caution: The edge is sharp.\n    clean spot')],
    ['between two actions', step('    clean spot\n    caution: The edge is sharp.\n    inspect spot')],
    [
      'before a plain instruction',
      step('    clean spot\n    caution: The edge is sharp.\n    do: Wipe it dry.'),
    ],
    [
      'below its action',
      step('    clean spot\n      caution: The edge is sharp.\n#     ^^^^^^^ H101 below the action'),
    ],
    [
      'last in the step',
      step(
        '    clean spot\n    caution: The edge is sharp.\n#   ^^^^^^^ H101 after the last action\n  step: Go on\n    clean spot',
      ),
    ],
    [
      'last in a draft, which goes on with what it protects',
      step('    clean spot\n    caution: The edge is sharp.'),
    ],
    [
      'last in a proved one',
      step('    clean spot\n    caution: The edge is sharp.\n#   ^^^^^^^ H101 after the last action').replace(
        '\n\n',
        '\n\nstatus proved by KM\n\n',
      ),
    ],
    [
      'last of a preparing step',
      `procedure A-1: Job\n\nplaces\n  spot: Spot\n\npreparation\n  step: Ready\n    clean spot\n    caution: The edge is sharp.\n\nremoval\n  step: Work\n    inspect spot\n`,
    ],
    ['damage under notice', step('    notice: Sealant in a bolt hole cracks the housing.\n    clean spot')],
    ['injury under notice', step('    notice: The edge cuts fingers.\n#   ^^^^^^ H102\n    clean spot')],
    ['damage under caution', step('    caution: The solvent lifts paint.\n#   ^^^^^^^ H103\n    clean spot')],
    ['damage under danger', step('    danger: The solvent lifts paint.\n#   ^^^^^^ H104\n    clean spot')],
    [
      'death under caution',
      step('    caution: A mast that drops can kill.\n#   ^^^^^^^ H105\n    clean spot'),
    ],
    [
      'damage and injury under caution',
      step('    caution: The solvent lifts paint and hurts eyes.\n    clean spot'),
    ],
    [
      'nothing said of either',
      step('    caution: Do not let the caliper hang from its hose.\n    clean spot'),
    ],
    [
      'pressure is no damage',
      step('    warning: The fuel rail stays under pressure. Open only the leak-off rail.\n    clean spot'),
    ],
    [
      'said twice',
      step(
        '    caution: The edge is sharp.\n    clean spot\n    caution: The edge is  sharp!\n#   ^^^^^^^ H106\n    clean spot',
      ),
    ],
    [
      'said in two operations',
      `procedure A-1: Job\n\nplaces\n  spot: Spot\n\nremoval\n  operation one: One\n    step: Work\n      caution: Sharp.\n      clean spot\n  operation two: Two\n    step: Work\n      caution: Sharp.\n      clean spot\n`,
    ],
    [
      'a shared message counts by its text',
      'procedure A-1: Job\n\nmessages\n  sharp-edge: The edge cuts fingers.\n\nplaces\n  spot: Spot\n\nremoval\n  step: Work\n    notice sharp-edge\n#   ^^^^^^ H102\n    clean spot\n',
    ],
  ])('%s', (_name, text) => {
    checkOnly(text, 'H1');
  });

  test('the fix moves the message before the action', () => {
    const text = step('    clean spot\n      caution: The edge is sharp.\n#     ^^^^^^^ H101');
    const [found] = checkOnly(text, 'H1');
    const mended = afterFix(readMarked(text).files, found?.fixes[0]?.edits ?? []);
    expect([...mended.values()][0]).toContain('    caution: The edge is sharp.\n    clean spot\n');
    expect(findingsOf(mended).filter((f) => f.code.startsWith('H'))).toEqual([]);
  });
});

const job = (declared: string, lines: string, prerequisites = '') => `procedure A-1: Job
${prerequisites}
${declared}
removal
  step: Work
    ${lines}
`;

describe('usual cautions', () => {
  const brakes =
    'fluids\n  brake-fluid: Fluid\n    DOT 4\n\ncircuits\n  brake-circuit: Brakes\n    uses brake-fluid\n\nconnections\n  brake-pipe: Pipe\n    in brake-circuit\n';
  const coolant =
    'fluids\n  coolant: Coolant\n    ASTM D3306, fill at coolant-cap\n\nparts\n  coolant-cap: Cap\n';
  test.each([
    ['lifting', job('', 'raise vehicle\n#   ^^^^^^^^^^^^^ H201 lifting a vehicle')],
    ['lifting, said', job('', 'warning: Use rated stands.\n    raise vehicle')],
    [
      'lifting twice is one finding',
      job('', 'raise vehicle\n#   ^^^^^^^^^^^^^ H201\n    lower vehicle\n    raise vehicle'),
    ],
    [
      'said too late',
      job('', 'raise vehicle\n#   ^^^^^^^^^^^^^ H201\n    warning: Use rated stands.\n    lower vehicle'),
    ],
    [
      'a brake line',
      job(brakes, 'disconnect brake-pipe\n#   ^^^^^^^^^^^^^^^^^^^^^ H201 brake or clutch line'),
    ],
    [
      'a brake line, said',
      job(brakes, 'caution: Brake fluid hurts eyes. Wear goggles.\n    disconnect brake-pipe'),
    ],
    [
      'a hose that holds no fluid of note',
      job('connections\n  breather-hose: Hose\n', 'disconnect breather-hose'),
    ],
    [
      'a spring compressed',
      job(
        'parts\n  coil-spring: Spring\n',
        'compress coil-spring\n#   ^^^^^^^^^^^^^^^^^^^^ H201 loaded spring',
      ),
    ],
    ['a piston compressed', job('parts\n  piston: Piston\n', 'compress piston')],
    [
      'fuel',
      job(
        'connections\n  feed-pipe: Pipe\n    marked fuel\n',
        'disconnect feed-pipe\n#   ^^^^^^^^^^^^^^^^^^^^ H201 fuel',
      ),
    ],
    [
      'a restraint',
      job(
        'connections\n  bag-plug: Plug\n    marked restraint\n',
        'disconnect bag-plug\n#   ^^^^^^^^^^^^^^^^^^^ H201 airbag',
      ),
    ],
    [
      'high voltage',
      job(
        'connections\n  hv-plug: Plug\n    marked high-voltage\n',
        'disconnect hv-plug\n#   ^^^^^^^^^^^^^^^^^^ H201 high voltage',
      ),
    ],
    [
      'a battery',
      job(
        'connections\n  battery-negative: Lead\n',
        'disconnect battery-negative\n#   ^^^^^^^^^^^^^^^^^^^^^^^^^^^ H202 battery',
      ),
    ],
    [
      'hot oil',
      job('fluids\n  sump-oil: Oil\n    SAE 5W-30\n', 'drain sump-oil\n#   ^^^^^^^^^^^^^^ H202 hot fluid'),
    ],
    [
      'hot oil, cold by prerequisite',
      job(
        'fluids\n  sump-oil: Oil\n    SAE 5W-30\n',
        'drain sump-oil',
        '\nprerequisites\n  item: The engine is cold.\n',
      ),
    ],
    ['a coolant cap', job(coolant, 'remove coolant-cap\n#   ^^^^^^^^^^^^^^^^^^ H202 hot fluid')],
    [
      'refrigerant',
      job(
        'fluids\n  cab-gas: Gas\n    refrigerant R-134a\n',
        'recover cab-gas\n#   ^^^^^^^^^^^^^^^ H202 refrigerant',
      ),
    ],
    [
      'lining dust',
      job('parts\n  shoe: Shoe\n    marked friction\n', 'clean shoe\n#   ^^^^^^^^^^ H202 lining dust'),
    ],
    [
      'a belt beside a running engine',
      job(
        'parts\n  alternator-belt: Belt\n    marked belt\n',
        'run engine\n    inspect alternator-belt\n#   ^^^^^^^^^^^^^^^^^^^^^^^ H202 running engine',
      ),
    ],
    [
      'a belt with the engine off',
      job('parts\n  alternator-belt: Belt\n    marked belt\n', 'inspect alternator-belt'),
    ],
    [
      'a solvent',
      job(
        'supplies\n  thinner: Thinner\n    marked solvent\n\nplaces\n  spot: Spot\n',
        'clean spot with thinner\n#   ^^^^^^^^^^^^^^^^^^^^^^^ H202 solvent',
      ),
    ],
  ])('%s', (_name, text) => {
    checkOnly(text, 'H2');
  });

  test('every usual text answers its own hazard, in every language, and its signal word fits it', () => {
    for (const hazard of HAZARDS) {
      for (const language of LANGUAGES) {
        const text = hazard.text[language];
        expect(hasWord(text, hazard.answered), `${hazard.id} ${language}: ${text}`).toBe(true);
        if (hazard.signal === 'caution')
          expect(hasWord(text, HARM_WORDS[language].grave), `${hazard.id} ${language}`).toBe(false);
      }
    }
  });

  test('the fix silences the finding', () => {
    const text = job('', 'raise vehicle\n#   ^^^^^^^^^^^^^ H201');
    const [found] = checkOnly(text, 'H2');
    const mended = afterFix(readMarked(text).files, found?.fixes[0]?.edits ?? []);
    expect(findingsOf(mended).filter((f) => f.code.startsWith('H'))).toEqual([]);
  });
});
