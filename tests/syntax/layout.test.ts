// Layout: which line belongs to which, where code ends and text begins.
import { describe, expect, test } from 'vitest';
import { checkMarked } from '../suite-helper.js';
import { dumpOf, findingsOf } from './read.js';

const check = (text: string) => checkMarked(text, findingsOf);

describe('comments', () => {
  test('a hash and a blank, another hash or nothing make a comment, in text too', () => {
    expect(
      dumpOf(`# first
procedure A-1: T
#
##### rule
parts
  screw: Screws
    note:
      Take the
      # not printed
      #10 screw.`),
    ).toBe(`procedure number=A-1 text="T"
section word=parts
  entry name=screw text="Screws"
    text word=note below="Take the\\n#10 screw."`);
  });
});

describe('the colon', () => {
  test('inside quotes and between two digits it does not count', () => {
    expect(dumpOf('use "a:b.bay": seen at 7:30')).toBe('use path="a:b.bay" text="seen at 7:30"');
    expect(dumpOf('procedure A 1:2: T')).toBe('procedure number=A 1:2 text="T"');
  });

  test('a quote that is never closed does not hide it', () => {
    check(`procedure A-1: T
parts
  cap: Cap
    number "MA-3: the left one
#          ^^^^^ G205`);
  });

  test('after a digit the mark means inches', () => {
    expect(dumpOf('procedure A-1: T\nfasteners\n  bolt: Bolt\n    square 3/4": drive "deep"')).toContain(
      'clauses clauses=[(square spec=[(measure=<3/4 in>)])] text="drive \\"deep\\""',
    );
  });
});

describe('indent', () => {
  test('levels of any even or uneven width', () => {
    check(`procedure A-1: T
parts
    cap: Cap
       renew
       held by clip
    lid: Lid`);
  });

  test('one space is a slip: the line stays on its level', () => {
    check(`procedure A-1: T
 parts
# 1< G102 this line starts 1 space in, one off its level at 0
  cap: Cap
   lid: Lid
#  ^ G102 3 spaces in, one off its level at 2`);
  });

  test('of two levels one space away the first word tells', () => {
    expect(
      dumpOf(`procedure A-1: T
parts
  cap: Cap
   renew
   lid: Lid`),
    ).toBe(`procedure number=A-1 text="T"
section word=parts
  entry name=cap text="Cap"
    clauses clauses=[(renew)]
  entry name=lid text="Lid"`);
  });

  test('a step out to no open level joins the nearest one', () => {
    check(`procedure A-1: T
parts
      cap: Cap
   lid: Lid
#  ^ G103 on no open level; it is read at 6`);
  });

  test('tabs count to the next multiple of four and are reported once', () => {
    check('procedure A-1: T\nparts\n\tcap: Cap\n# < G101 tabs indent 2 lines\n\t\trenew\n');
  });

  test('one space too many does not take a line of code into the text above it', () => {
    expect(
      dumpOf(`procedure A-1: T
removal
  step: S
    caution:
      Hot.
     wait 10 min`),
    ).toContain('    message signal=caution below="Hot."\n    statement verb=wait');
  });

  test('nothing goes below a line that takes no block, and that is said once', () => {
    check(`procedure A-1: T
sides left, right
  parts
# ^^^^^ G104 nothing goes below \`sides\`
    cap Cap
  nonsense`);
  });
});

describe('a comma that ends the line', () => {
  test('carries the list to the next deeper line', () => {
    expect(
      dumpOf(`procedure A-1: T
parts
  cap: Cap
    held by clip,
      # the long ones
        screw, renew: Both.`),
    ).toContain('    clauses clauses=[(held by items=[clip, screw]), (renew)] text="Both."');
  });

  test('without one it is a comma too many', () => {
    check(`procedure A-1: T
parts
  cap: Cap
    held by clip,
#               ^ G109
  lid: Lid`);
  });
});

describe('text', () => {
  test('below a colon that ends the line, with paragraphs', () => {
    expect(
      dumpOf(`procedure A-1: T
removal
  step: S
    remove cap:
      Hold it.

      - left
      - right

    wait 1 h`),
    ).toContain(
      '    statement verb=remove items=[cap] below="Hold it.\\n\\n- left\\n- right"\n    statement verb=wait',
    );
  });

  test('under a message it may start on the line and go on below', () => {
    expect(dumpOf('procedure A-1: T\nremoval\n  step: S\n    note: One.\n      Two.')).toContain(
      'below="One.\\nTwo."',
    );
  });

  test('under a statement it may not', () => {
    check(`procedure A-1: T
removal
  step: S
    remove cap: Hold it.
      Then lift it away.
#     ^^^^^^^^^^^^^^^^^^ G110 text cannot go on below the text of \`remove\``);
  });

  test('a section takes none: its colon goes', () => {
    check(`procedure A-1: T
parts:
#    ^ G108
  cap: Cap`);
  });

  test('a colon that announces nothing', () => {
    check(`procedure A-1: T
removal
  step: S
    wait 1 h:
#   ^^^^ G107 \`wait\` has no text
    caution
#   ^^^^^^^ G107
    do: Look.`);
  });

  test('a colon that is missing', () => {
    check(`procedure A-1: T
parts
  cap Cap of the tank
#     ^^^^^^^^^^^^^^^ G106 a colon is missing after \`cap\`
removal
  step Take it off
#      ^^^^^^^^^^^ G106
    hold A second person looks.
#        ^^^^^^^^^^^^^^^^^^^^^^ G106
    warning stands-first
    warning Stand clear of it.
#           ^^^^^^^^^^^^^^^^^^ G106`);
  });

  test('a title that is missing', () => {
    check(`procedure A-1: T
parts
  cap
# ^^^ G105 \`cap\` has no title
  lid:
# ^^^ G105
    renew`);
  });
});

describe('the opening line', () => {
  test('comes first, but for comments and accept', () => {
    check('# c\naccept G201: old\ncatalogue: T');
    check('parts\n# <<<<< G113\n  cap: Cap');
  });

  test('of a file that is empty is asked for', () => {
    const [found, ...others] = findingsOf(new Map([['a.bay', '\n# nothing yet\n']]));
    expect(found).toMatchObject({ code: 'G113', severity: 'question', span: { start: 0, end: 0 } });
    expect(others).toEqual([]);
  });

  test('is the only one', () => {
    check('catalogue: T\nprocedure A-1: T\n# <<<<<<<<< G114');
  });
});

test('line ends and a byte order mark make no difference', () => {
  const text = 'procedure A-1: T\nparts\n  cap: Cap\n    note:\n      One.\n\n      Two.\n';
  for (const lineEnd of ['\r\n', '\r'])
    expect(dumpOf(`\ufeff${text.replaceAll('\n', lineEnd)}`)).toBe(dumpOf(text));
});
