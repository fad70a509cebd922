// What a draft leaves off is a question until somebody begins to put it back: a first draft is no wall of errors.
import { expect, test } from 'vitest';
import { findingsOf } from '../../suite-helper.js';

const draft = (status: string, more: string): string => `procedure A-1: Mirror, renew
${status}
parts
  mirror: Door mirror
    held by mirror-screw

fasteners
  mirror-screw: Mirror screws
    3 of M6x1.0
    no torque

removal
  step: Take it off
    remove mirror-screw, mirror
${more}`;

const INSPECTION = '\ninspection\n  step: Look\n    clean mirror\n';
const INSTALLATION = '\ninstallation\n  step: Look\n    clean mirror\n';

test.each([
  ['a draft of the taking-off half', '', '', 'question'],
  ['with a look at what came off', 'status draft\n', INSPECTION, 'question'],
  ['with its second half begun', 'status draft\n', INSTALLATION, 'error'],
  ['a proved one', 'status proved by KM\n', '', 'error'],
])('%s', (_name, status, more, severity) => {
  const found = findingsOf(new Map([['a.bay', draft(status, more)]])).filter(({ code }) => code === 'S301');
  expect(found.map((f) => f.severity)).toEqual([severity]);
});

const PARTS = ['mirror', 'trim', 'cover', 'bracket', 'cap', 'plate'];
const large = (status: string, back: readonly string[]): string => `procedure A-1: Door, strip
${status}
parts
${PARTS.map((name) => `  ${name}: The ${name}`).join('\n')}

removal
  step: Take all off
${PARTS.map((name) => `    remove ${name}`).join('\n')}

installation
  step: Put it back
${back.map((name) => `    install ${name}`).join('\n')}
`;

test.each([
  ['more off than back', '', ['plate'], 'question'],
  ['more back than off', '', ['plate', 'cap', 'bracket', 'cover'], 'error'],
  ['a few off, which may be forgotten', '', ['plate', 'cap', 'bracket'], 'error'],
  ['a proved one', 'status proved by KM\n', ['plate'], 'error'],
])('a second half that is being written: %s', (_name, status, back, severity) => {
  const found = findingsOf(new Map([['a.bay', large(status, back)]])).filter(({ code }) => code === 'S301');
  expect([...new Set(found.map((f) => f.severity))]).toEqual([severity]);
});

const LONG = [...PARTS, 'seal', 'lining', 'frame', 'glass', 'strip', 'tray'];
const long = (end: string, back: readonly string[]): string =>
  large('', back)
    .replace(
      PARTS.map((name) => `  ${name}: The ${name}`).join('\n'),
      LONG.map((name) => `  ${name}: The ${name}`).join('\n'),
    )
    .replace(
      PARTS.map((name) => `    remove ${name}`).join('\n'),
      LONG.map((name) => `    remove ${name}`).join('\n'),
    ) + end;

test.each([
  [
    'what came off last is back',
    ['tray', 'strip', 'glass', 'frame', 'lining', 'seal', 'plate'],
    '',
    'question',
  ],
  ['one of those is left out', ['tray', 'strip', 'glass', 'lining', 'seal', 'plate', 'cap'], '', 'error'],
  [
    'the completion is begun',
    ['tray', 'strip', 'glass', 'frame', 'lining', 'seal', 'plate'],
    '\ncompletion\n  step: Hand back\n    do: Sign.\n',
    'error',
  ],
])('of much that is put back in turn, %s', (_name, back, end, severity) => {
  const found = findingsOf(new Map([['a.bay', long(end, back)]])).filter(({ code }) => code === 'S301');
  expect([...new Set(found.map((f) => f.severity))]).toEqual([severity]);
});

const END = `
completion
  step: Hand back
    do: Sign.
`;
const chocked = (end: string): string => `procedure A-1: Wheel, look at
${end.startsWith('status') ? end : ''}
parts
  cap: Cap
    held by cap-screw

fasteners
  cap-screw: Cap screws
    3 of M6x1.0
    torque 9 N·m, per ?

places
  wheels: Rear wheels

rules
  sign: The check list is signed.
    after install any part
    require inspect list

places
  list: Check list

preparation
  step: Ready
    chock wheels

removal
  step: Off
    remove cap-screw, cap

installation
  step: On
    install cap, cap-screw
    torque cap-screw
${end.startsWith('status') ? '' : end}`;

test.each([
  ['while its completion is not begun', '', 'question'],
  ['with its completion begun', END, 'error'],
  ['proved without one', 'status proved by KM\n', 'error'],
])('a draft leaves for the end what is seen to last: %s', (_name, end, severity) => {
  const found = findingsOf(new Map([['a.bay', chocked(end)]])).filter(({ code }) => /^S/.test(code));
  expect(found.map(({ code, severity: told }) => [code, told])).toEqual([
    ['S312', severity],
    ['S403', severity],
  ]);
});
