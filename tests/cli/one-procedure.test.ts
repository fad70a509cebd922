// Commands about one procedure: how long it takes, how the vehicle stands at a line, its fitting half.
import { describe, expect, it } from 'vitest';
import { baywright } from './fake-shell.js';

const MIRROR = `procedure MR-1: Mirror, take off and fit
labour 10 min

parts
  cover: Mirror cover
  mirror: Mirror
    held by mirror-bolt
    behind cover

fasteners
  mirror-bolt: Mirror bolts
    3 of M6x1.0, class 8.8, hex 10 mm
    torque 8 N·m, per "BD-1"

removal
  step: Take it off
    remove cover
    wait 10 min
    remove mirror-bolt, mirror
`;
const files = { 'MR-1.bay': MIRROR };
const json = (out: string): unknown => JSON.parse(out);

describe('time', () => {
  it('tells hands on, waiting and the line that waits', async () => {
    const { code, out, err } = await baywright('time MR-1.bay', { files });
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toBe(
      [
        'Declared  10 min',
        'Hands on  3 min, the bare work',
        'Waiting   10 min',
        'In all    13 min',
        'Waits     10 min at line 18: wait 10 min',
        '',
      ].join('\n'),
    );
  });

  it('counts a wait that work goes on beside from where it began', async () => {
    const beside = MIRROR.replace('    wait 10 min\n', '    wait 3 min since remove cover\n').replace(
      'remove cover\n',
      'remove cover\n    clean mirror\n    wear gloves\n',
    );
    const { out } = await baywright('time MR-1.bay --format json', { files: { 'MR-1.bay': beside } });
    expect(json(out)).toMatchObject({ times: [{ waitingMin: 0, overlappedMin: 3, waits: [] }] });
  });

  it('a figure far too long is an exit code of 1', async () => {
    const long = { 'MR-1.bay': MIRROR.replace('labour 10 min', 'labour 20 h') };
    const { code, out } = await baywright('time MR-1.bay', { files: long });
    expect(code).toBe(1);
    expect(out).toContain('Declared  20 h, far too long for these steps');
  });

  it('each labour line is told on its own combinations', async () => {
    const two = MIRROR.replace(
      'labour 10 min',
      'applies to van\nlabour 10 min\nlabour 25 min, when axle heavy',
    )
      .replace('\nparts\n', '\nvehicles\n  van: Van\n    option axle light, heavy\n\nparts\n')
      .replace('    remove cover\n', '    remove cover\n    clean cover, when axle heavy\n');
    const { out } = await baywright('time MR-1.bay --format json', { files: { 'MR-1.bay': two } });
    expect(json(out)).toMatchObject({
      times: [
        { variants: 'axle light', declaredMin: 10, handsOnMin: 3 },
        { variants: 'axle heavy', declaredMin: 25, handsOnMin: 6 },
      ],
    });
  });
});

describe('check --state-at', () => {
  it('tells what is off just before a line', async () => {
    const { code, out } = await baywright('check --state-at MR-1.bay:19', { files });
    expect(code).toBe(0);
    expect(out).toBe('Off the vehicle\n  Mirror cover (cover), since line 17\n');
  });

  it('as data, with the step', async () => {
    const { out } = await baywright('check --state-at MR-1.bay:20 --format json', { files });
    expect(json(out)).toMatchObject({
      file: 'MR-1.bay',
      line: 20,
      groups: [
        {
          group: 'off',
          things: [
            { name: 'cover', since: { line: 17, step: 'Take it off' } },
            { name: 'mirror-bolt', detail: 'all 3' },
            { name: 'mirror' },
          ],
        },
      ],
    });
  });

  it('before the first line of work all is as it came in', async () => {
    expect((await baywright('check --state-at MR-1.bay:17', { files })).out).toBe('All is as it came in.\n');
  });

  it.each([
    ['MR-1.bay', 'MR-1.bay has no line; write it as FH-12.bay:40'],
    ['MR-1.bay:99', 'MR-1.bay has 20 lines, no line 99'],
    ['MR-2.bay:1', 'MR-2.bay does not exist'],
    ['MR-1.bay:1 --format sarif', '--state-at is written as text or json, not as sarif'],
  ])('%s', async (place, message) => {
    const { code, err } = await baywright(`check --state-at ${place}`, { files });
    expect(code).toBe(2);
    expect(err).toContain(message);
  });
});

describe('fitting-half', () => {
  it('prints the lines that put it back together', async () => {
    const { code, out, err } = await baywright('fitting-half MR-1.bay', { files });
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toBe(`installation
  step: Fit the mirror
    install mirror, mirror-bolt
    torque mirror-bolt
  step: Fit the mirror cover
    install cover
`);
  });

  it('writes them, and then nothing is left', async () => {
    const ran = await baywright('fitting-half MR-1.bay --write', { files });
    expect(ran.err).toBe('2 steps written to MR-1.bay.\n');
    const written = String(ran.files.get('MR-1.bay'));
    expect(written.startsWith(MIRROR)).toBe(true);
    const again = await baywright('fitting-half MR-1.bay', { files: { 'MR-1.bay': written } });
    expect(again).toMatchObject({ code: 0, out: '', err: 'Nothing is left to put back.\n' });
  });

  it('a file without work is told so', async () => {
    const { code, err } = await baywright('fitting-half cat.bay', {
      files: { 'cat.bay': 'catalogue: Parts\n' },
    });
    expect(code).toBe(2);
    expect(err).toContain('cat.bay has no steps');
  });
});
