// The commands that answer at the bench: convert, torque, order, explain.
import { describe, expect, it } from 'vitest';
import { baywright } from './fake-shell.js';

describe('convert', () => {
  it.each([
    ['convert "85 in-lb" N·m', '9.6 N·m'],
    ['convert "85 in-lb" Nm', '9.6 N·m'],
    // 85 × 0.0254 × 4.4482216152605, all exact (NIST SP 811, B.8).
    ['convert "85 in-lb" Nm --exact', '9.6037104673474195 N·m'],
    ['convert "105 to 115 Nm" ft-lb', '77.5 to 84.8 ft·lbf'],
    ['convert "at least 22.0 mm" in', 'at least 0.867 in'],
    ['convert "2 US qt" L', '1.9 L'],
    ['convert "-40 degC" degF', '-40 °F'],
  ])('%s', async (line, expected) => {
    expect(await baywright(line)).toMatchObject({ code: 0, out: `${expected}\n`, err: '' });
  });

  it.each([
    ['convert "35 psi" Nm', '35 psi is a pressure; N·m measures torque'],
    ['convert "35 furlongs" m', '"furlongs" is not a unit'],
    ['convert 35 m', 'the unit is missing'],
    ['convert "" m', 'nothing is written'],
    ['convert "40 lb" Nm', 'foot-pounds, a torque (ft·lbf); inch-pounds, a torque (in·lbf)'],
    ['convert "2 gal" L', 'can mean more than one unit'],
    ['convert "2 L" ""', 'the unit is missing'],
  ])('%s is refused with the reason', async (line, reason) => {
    const { code, out, err } = await baywright(line);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain(reason);
  });
});

describe('torque', () => {
  it('judges a torque', async () => {
    const { code, out } = await baywright('torque "M12x1.75 10.9" --at "115 Nm"');
    expect(code).toBe(0);
    expect(out).toContain('Torque        115 N·m (84.8 ft·lbf)\n');
    expect(out).toContain('Preload       47.9 kN');
    // 47.9 kN against 84.3 mm² × 830 MPa and 84.3 mm² × 940 MPa (ISO 898-1).
    expect(out).toContain('Share         69 % of proof load, 60 % of yield load\n');
    expect(out).toContain('Usual torque  126 N·m (92.9 ft·lbf), at 75 % of proof load\n');
  });

  it('a torque past yield exits with 1 and says what unit was meant', async () => {
    const { code, out } = await baywright('torque "M6x1 8.8" --at "85 ft-lb"');
    expect(code).toBe(1);
    expect(out).toContain(
      'past its yield load; the same number in in·lbf is an ordinary torque for this bolt.',
    );
  });

  it('chooses among the wrenches of the shop', async () => {
    const { out } = await baywright(
      'torque "M8 8.8" --at "25 Nm" --wrench "5 to 50 Nm" --wrench "20 to 200 Nm"',
    );
    expect(out).toContain('Wrench        5 to 50 Nm\n');
  });

  it.each([
    ['torque M12', 'thread and class are both needed'],
    ['torque "M13 10.9"', 'M13 is not a diameter of ISO 261'],
    ['torque "M12 10.7"', '10.7'],
    ['torque "M12 10.9" --at "35 psi"', '35 psi is no torque'],
    ['torque "M12 10.9" --thread wet', "argument 'wet' is invalid"],
  ])('%s is refused with the reason', async (line, reason) => {
    const { code, err } = await baywright(line);
    expect(code).toBe(2);
    expect(err).toContain(reason);
  });
});

describe('order', () => {
  it('star 5 ends with the sentence that a guide prints', async () => {
    const { code, out } = await baywright('order star 5');
    expect(code).toBe(0);
    expect(out).toMatch(
      /\n\nThe numbers in the drawing are the turns\.\nTighten in a star, counted clockwise from the top: 1-3-5-2-4\.\n$/,
    );
  });

  it('a drawing stands alone', async () => {
    const { out } = await baywright('order grid 2x5 --svg');
    expect(out).toMatch(/^<svg [^>]*role="img"/);
    expect(out.match(/<text/g)).toHaveLength(10);
  });

  it('--loosen turns it round', async () => {
    const forth = await baywright('order inside-out 2x3');
    const back = await baywright('order outside-in 2x3');
    const loosened = await baywright('order inside-out 2x3 --loosen');
    expect(loosened.out).not.toBe(forth.out);
    expect(loosened.out).toContain('Loosen from the outside inward');
    expect(back.code).toBe(0);
  });

  it.each([
    ['order spiral 5', 'there is no pattern “spiral”'],
    ['order star five', '“five” is no number of fasteners'],
    ['order cross 5', 'cross needs an even number'],
    ['order star 2', 'at least three'],
  ])('%s is refused with the reason', async (line, reason) => {
    expect(await baywright(line)).toMatchObject({ code: 2, err: expect.stringContaining(reason) });
  });
});

describe('shim', () => {
  it.each([
    [
      'shim "0.30 mm" "0.15 to 0.25 mm" --fitted "2.50 mm" --at-hand "2.55 mm, 2.60 mm" --at-hand "2.65 mm"',
      0,
      'Reading   0.30 mm, above 0.15 to 0.25 mm\nWanted    2.60 mm\nFit       2.60 mm\nGap then  0.20 mm\n',
    ],
    [
      'shim "0.012 in" "0.006 to 0.010 in" --fitted "2.50 mm" --at-hand "2.60 mm"',
      0,
      'Reading   0.012 in, above 0.006 to 0.010 in\nWanted    0.102 in\nFit       0.102 in\nGap then  0.008 in\n',
    ],
    [
      'shim "0.30 mm" "0.05 to 0.15 mm" --step "0.05 mm"',
      0,
      'Reading    0.30 mm, above 0.05 to 0.15 mm\nChange     take out 0.20 mm (4 shims)\nPlay then  0.10 mm\n',
    ],
    ['shim "0.10 mm" "0.05 to 0.15 mm"', 0, 'Reading  0.10 mm, inside 0.05 to 0.15 mm\nChange   none\n'],
    [
      'shim "0.60 mm" "0.15 to 0.25 mm" --fitted "2.50 mm" --at-hand "2.60 mm"',
      1,
      'Reading   0.60 mm, above 0.15 to 0.25 mm\nWanted    2.90 mm\nFit       2.60 mm\nGap then  0.50 mm\nMind      this is still outside the limit: no shim named here is enough\n',
    ],
  ])('%s', async (line, code, out) => {
    expect(await baywright(line)).toMatchObject({ code, out, err: '' });
  });

  it.each([
    ['shim "0.30 mm" "at most 0.25 mm"', 'the limit needs both ends'],
    ['shim "0.30 Nm" "0.15 to 0.25 mm"', '0.30 Nm is no length'],
    ['shim "0.30 mm" "0.15 to 0.25 mm" --fitted "2.50 mm"', 'say which shims there are'],
  ])('%s is refused with the reason', async (line, reason) => {
    expect(await baywright(line)).toMatchObject({ code: 2, err: expect.stringContaining(reason) });
  });
});

describe('explain', () => {
  it.each(['explain R803', 'explain r803', 'explain setting-unknown'])('%s prints the page', async (line) => {
    const { code, out } = await baywright(line);
    expect(code).toBe(0);
    expect(out).toContain('R803 setting-unknown (warning)\n\nA misspelt key does nothing');
    expect(out).toContain('Wrong\n\n    --- file: baywright.json\n');
    expect(out).toContain('Right\n\n');
  });

  it('lists near names', async () => {
    expect(await baywright('explain setting')).toMatchObject({
      code: 2,
      err: expect.stringMatching(/near it: .*setting-unknown/),
    });
  });

  it('without a code lists all, each once', async () => {
    const { out } = await baywright('explain');
    const codes = out
      .split('\n')
      .filter(Boolean)
      .map((line) => line.slice(0, 4));
    expect(new Set(codes).size).toBe(codes.length);
    expect(codes).toContain('R801');
  });
});
