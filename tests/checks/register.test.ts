// The procedure as an item of the library, and the library as a whole.
import { describe, expect, test } from 'vitest';
import { checkMarked, libraryWideFindingsOf } from '../suite-helper.js';
import { checkOnly } from './only.js';

const head = (lines: string) => `procedure A-1: Job
${lines}

places
  spot: Spot

inspection
  step: Work
    clean spot
`;

describe('one procedure', () => {
  test.each([
    [
      'revisions, newest first',
      head(
        'revision 3 on 2026-01-02: Three.\nrevision 2 on 2025-01-02: Two.\nrevision 1 on 2025-01-02: One.',
      ),
    ],
    ['revisions, oldest first', head('revision 1 on 2025-01-02: One.\nrevision 2 on 2026-01-02: Two.')],
    [
      'a number twice',
      head('revision 2 on 2026-01-02: Two.\nrevision 2 on 2025-01-02: One.\n#        ^ R107 twice'),
    ],
    [
      'one out of order',
      head(
        'revision 3 on 2026-01-02: Three.\nrevision 1 on 2025-01-02: One.\nrevision 2 on 2025-06-02: Two.\n#        ^ R107 newest goes first',
      ),
    ],
    [
      'days against numbers',
      head(
        'revision 2 on 2025-01-02: Two.\nrevision 1 on 2026-01-02: One.\n#        ^ R107 revision 2 is of 2025-01-02',
      ),
    ],
    ['a day that never was', head('revision 1 on 2025-02-29: One.\n#             ^^^^^^^^^^ R110')],
    ['a leap day', head('revision 1 on 2024-02-29: One.')],
    ['a misspelt status', head('status relased\n#      ^^^^^^^ R108 not a status')],
    ['released by two', head('status released by KM, TR on 2026-10-05')],
    ['released by nobody', head('status released\n#      ^^^^^^^^ R109 nobody')],
    ['released on no day', head('status released by KM, TR\n#      ^^^^^^^^ R109 no day')],
    [
      'one person in two spellings',
      head('status released by KM, km on 2026-10-05\n#      ^^^^^^^^ R109 alone'),
    ],
    [
      'signed before the newest revision',
      head(
        'status released by KM, TR on 2026-10-04\n#      ^^^^^^^^ R109 before revision 2 of 2026-10-05\nrevision 2 on 2026-10-05: Two.\nrevision 1 on 2026-01-05: One.',
      ),
    ],
    [
      'signed on the day of the newest revision',
      head('status released by KM, TR on 2026-10-05\nrevision 2 on 2026-10-05: Two.'),
    ],
    ['one person twice', head('status released by KM, KM on 2026-10-05\n#      ^^^^^^^^ R109 alone')],
    [
      'released with a blank',
      head('labour ?\nstatus released by KM, TR on 2026-10-05\n#      ^^^^^^^^ R105 1 question open'),
    ],
    ['proved with a blank', head('labour ?\nstatus proved by KM on 2026-10-05')],
    [
      'review passed',
      head('status released by KM, TR on 2025-10-05\nreview 2026-10-05\n#      ^^^^^^^^^^ R106'),
    ],
    ['review to come', head('status released by KM, TR on 2025-10-05\nreview 2027-10-05')],
    ['review of a draft', head('status draft\nreview 2020-10-05')],
  ])('%s', (_name, text) => {
    checkOnly(text, 'R1');
  });

  test('the house says who releases and how long it holds', () => {
    const house =
      '--- file: baywright.json\n{ "release": { "by": ["KM"], "twoInitials": false, "reviewMonths": 12 } }\n--- file: a.bay\n';
    checkOnly(`${house}${head('status released by KM on 2026-10-05')}`, 'R1');
    checkOnly(
      `${house}${head('status released by TR on 2026-10-05\n#      ^^^^^^^^ R109 none of TR may')}`,
      'R1',
    );
    checkOnly(
      `${house}${head('status released by KM on 2025-10-05\n#                        ^^^^^^^^^^ R106 2026-10-05')}`,
      'R1',
    );
  });

  test('pictures are looked for from the file that names them', () => {
    const files = (path: string) =>
      `--- file: pictures/a.svg\n<svg/>\n--- file: procedures/a.bay\n${head('')}    picture "${path}": The spot.\n`;
    checkOnly(files('../pictures/a.svg'), 'R1');
    checkOnly(`${files('../pictures/b.svg')}#           ^^^^^^^^^^^^^^^^^^^ R102 pictures/b.svg\n`, 'R1');
    checkOnly(`${files('../../a.svg')}#           ^^^^^^^^^^^^^ R102 outside the library\n`, 'R1');
  });
});

describe('the whole library', () => {
  const catalogue = (more: string) => `--- file: catalogue.bay
catalogue: Things

parts
  cover: Cover
    marked lid
${more}
--- file: a.bay
procedure A-1: Job

use "catalogue.bay"

removal
  step: Work
    remove cover
`;
  const rule = (lines: string) => catalogue(`\nrules\n  cover-rule: Covers\n${lines}`);
  test.each([
    ['an entry that nothing uses', catalogue('  plate: Plate\n# ^^^^^ R201')],
    ['an entry that another entry uses', catalogue('    behind plate\n  plate: Plate')],
    [
      'an entry that a text refers to',
      catalogue('  plate: Plate').replace('remove cover', 'remove cover: Keep {plate number} dry.'),
    ],
    [
      'a torque wrench is chosen by its range',
      catalogue('\ntools\n  wrench: Wrench\n    torque 2 to 25 N·m'),
    ],
    ['a rule on a mark', rule('    before remove any part marked lid\n    require hold')],
    [
      'a rule on a mark nothing has',
      rule(
        '    before remove any part marked lids\n#                                 ^^^^ R202 no part is marked `lids`\n    require hold',
      ),
    ],
    [
      'a rule on a name nothing has',
      rule('    before remove covers\n#                 ^^^^^^ R202 no file declares\n    require hold'),
    ],
    ['a rule on the vehicle', rule('    before raise vehicle\n    require warning')],
  ])('%s', (_name, text) => {
    checkMarked(text, (files) => libraryWideFindingsOf(files).filter((f) => f.code.startsWith('R2')));
  });

  test('a catalogue alone has no unused entries, and an accepted finding stays silent', () => {
    const alone = new Map([['a.bay', 'catalogue: Things\n\nparts\n  cover: Cover\n']]);
    expect(libraryWideFindingsOf(alone)).toEqual([]);
    const accepted = catalogue('  accept R201: Kept for the spring.\n  plate: Plate');
    checkMarked(accepted, (files) => libraryWideFindingsOf(files).filter((f) => f.code.startsWith('R')));
  });
});
