// How much goes in: from the line, or from the entry of the fluid.
import { describe, expect, it } from 'vitest';
import { plain } from '../../compiler/src/document/inline.js';
import { HEAD, lower, spaced } from './lower-helper.js';

describe('what goes in', () => {
  const filled = (entry: string, line: string, more = {}) =>
    lower(
      `${HEAD}
fluids
  oil: Engine oil
    SAE 5W-30
    ${entry.replaceAll('\n', '\n    ')}

places
  mark: MAX mark

installation
  step: Fill
    ${line}
`,
      more,
    );
  const row = (guide: ReturnType<typeof lower>): string => {
    const { body, notes } = guide.block('row');
    return [body, ...notes].map((words) => spaced(plain(words))).join(' / ');
  };

  it('is that of the entry, with its mark and its source', () => {
    const guide = filled('fill 2.4 L, until level at mark, per "T-1"', 'fill oil');
    expect(row(guide)).toBe(
      'Fill with engine oil, 2.4 L (2.5 US qt), until level at the MAX mark. / Per T-1',
    );
    expect(guide.block('sources').rows).toHaveLength(1);
    expect(row(filled('fill 2.4 L\nuntil level at mark', 'fill oil', { language: 'de' }))).toBe(
      'Engine oil, 2,4 L (2,5 US qt), einfüllen, Füllhöhe: MAX mark.',
    );
    expect(row(filled('mass 530 ±15 g', 'charge oil'))).toBe(
      'Charge engine oil, 530 ±15 g (18.70 ±0.52 oz).',
    );
  });

  it('is told for each vehicle', () => {
    const entry = 'fill 2.4 L, per "T-1"\nfill 3.1 L, per "T-1", when axle heavy';
    expect(row(filled(entry, 'fill oil'))).toBe(
      'Fill with engine oil. / Axle light: 2.4 L (2.5 US qt) / Axle heavy: 3.1 L (3.3 US qt) / Per T-1',
    );
    expect(row(filled(entry, 'fill oil', { option: { axle: 'heavy' } }))).toBe(
      'Fill with engine oil, 3.1 L (3.3 US qt). / Per T-1',
    );
  });

  it('is what the line says, where it says so', () => {
    const entry = 'fill 2.4 L, until level at mark';
    expect(row(filled(entry, 'fill oil, 2 L'))).toBe('Fill with engine oil, 2 L (2.1 US qt).');
    expect(row(filled(entry, 'fill oil, until level at mark'))).toBe(
      'Fill with engine oil until level at the MAX mark.',
    );
  });
});
