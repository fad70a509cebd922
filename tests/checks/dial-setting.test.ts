// What is set on the wrench: drag of self-locking nuts, crowfoots, both; and the question where it cannot be told.
import { describe, expect, test } from 'vitest';
import { createLibrary } from '../../language/src/analysis.js';
import { dialSettings } from '../../language/src/checks/dial-setting.js';
import { workStatements } from '../../language/src/checks/own-lines.js';
import { DEFAULT_SETTINGS } from '../../language/src/settings/index.js';
import { checkOnly } from './only.js';

const job = (nut: string, line: string, wrench = 'length 400 mm') => `procedure A-1: T

fasteners
  nut: Nut
    1 of M12x1.5
    ${nut}

tools
  wrench: Wrench
    torque 20 to 200 N·m
    ${wrench}
  crowfoot: Crowfoot
    offset 50 mm
  bar: Extension bar
    length 150 mm

installation
  step: Tighten
    ${line}
`;

/** The settings of the one line, N·m, rounded to tenths. */
function settings(text: string): (string | number)[] {
  const library = createLibrary({ read: () => text, list: () => ['a.bay'] }, DEFAULT_SETTINGS);
  const found = library.analyse('a.bay')?.job;
  return (found ? workStatements(found) : []).flatMap(({ statement }) =>
    found
      ? dialSettings(found, statement).map((s) =>
          'torque' in s ? Math.round(s.highNm * 10) / 10 : `no length of ${s.wrench?.name}`,
        )
      : [],
  );
}

describe('what is set', () => {
  test.each<[string, string, string, (string | number)[]]>([
    ['the torque itself: nothing to tell', 'torque 100 N·m', 'torque nut with wrench', []],
    ['an extension straight down changes nothing', 'torque 100 N·m', 'torque nut with wrench, bar', []],
    ['drag is added (AC 43.13-1B)', 'torque 100 N·m, prevailing 8 N·m', 'torque nut', [108]],
    [
      'a crowfoot, 50 mm on 400 mm (NAVEDTRA 14315)',
      'torque 100 N·m',
      'torque nut with wrench, crowfoot',
      [88.9],
    ],
    ['the wrench of the house', 'torque 100 N·m', 'torque nut with crowfoot', [88.9]],
    ['both', 'torque 100 N·m, prevailing 8 N·m', 'torque nut with wrench, crowfoot', [96]],
    [
      'every stage, angles apart',
      'torque 45 then 90 N·m then 90°',
      'torque nut with wrench, crowfoot',
      [40, 80],
    ],
    ['one stage', 'torque 45 then 90 N·m', 'torque nut, stage 2, with wrench, crowfoot', [80]],
    ['the torque of the line', 'torque 45 N·m', 'torque nut, 90 N·m, with wrench, crowfoot', [80]],
    ['taking off', 'torque 45 N·m', 'remove nut with crowfoot', []],
  ])('%s', (_, nut, line, expected) => {
    expect(settings(job(nut, line))).toEqual(expected);
  });

  test('without the length of the wrench', () => {
    const text = job('torque 100 N·m', 'torque nut with wrench, crowfoot', 'number "W-1"');
    expect(settings(text)).toEqual(['no length of wrench']);
    checkOnly(
      `${text}#                           ^^^^^^^^ F214 with \`crowfoot\` less is set on the wrench, but the length of \`wrench\` is not known\n`,
      'F214',
    );
  });
});
