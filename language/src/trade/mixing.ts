/** What may mix with what, and whether a fluid suits a system that names another. */

import type { GradeReading } from './grade-reading.js';
import { BRAKE_FLUIDS } from './grade-tables.js';
import { type SourceKey, sourceTitle } from './sources.js';

/** An answer: `no` is an error, `ask` a question, `yes` silent. */
export interface Mixing {
  readonly answer: 'yes' | 'ask' | 'no';
  readonly reason: string;
  readonly source: string;
}

/**
 * May two fluids meet in one system? Same family and grade: yes. Silicone with glycol brake fluid, two
 * refrigerants, fluids of two families: no. Two oil grades or coolant specifications of one family: ask.
 */
export function mayMix(a: GradeReading, b: GradeReading): Mixing {
  if (a.family === undefined || b.family === undefined)
    return answer('ask', `it is not known what ${a.printed} and ${b.printed} are made of`, 'PRACTICE');
  if (a.family !== b.family) {
    const brake = a.family.endsWith('brake fluid') && b.family.endsWith('brake fluid');
    return brake
      ? answer(
          'no',
          `${a.printed} and ${b.printed} must not mix: one is silicone, the other glycol`,
          'FMVSS116',
        )
      : answer('no', `${a.printed} is ${a.family}, ${b.printed} is ${b.family}`, 'PRACTICE');
  }
  // `SAE 75W-90` and `API GL-5` may be one oil: two standards say nothing against each other.
  if (a.standard !== b.standard) return answer('yes', 'named by two standards', 'PRACTICE');
  if (a.printed === b.printed) return answer('yes', 'the same fluid', 'PRACTICE');
  if (a.family === 'glycol brake fluid')
    return answer('yes', 'both are glycol based; the mixture is only as good as the lower grade', 'FMVSS116');
  if (a.family === 'refrigerant')
    return answer(
      'no',
      `${a.printed} and ${b.printed} are different refrigerants; recover and charge with one`,
      'CFR82',
    );
  if (a.family === 'coolant')
    return answer('ask', 'mixed coolant types shorten the life of both; colour proves nothing', 'PRACTICE');
  return answer('ask', `${a.printed} and ${b.printed} differ; use one`, 'PRACTICE');
}

/**
 * Does a fluid suit a system specified for another? As {@link mayMix}, and a brake fluid with lower boiling points than the system
 * asks for does not: DOT 3 into DOT 4.
 */
export function suits(system: GradeReading, fluid: GradeReading): Mixing {
  const mixing = mayMix(system, fluid);
  const [wanted, given] = [system, fluid].map((g) =>
    BRAKE_FLUIDS.find((r) => g.printed.split(' ', 2).join(' ') === r.code),
  );
  if (mixing.answer === 'yes' && wanted && given && given.wetC < wanted.wetC) {
    return answer(
      'no',
      `${fluid.printed} boils at ${given.wetC} °C wet, ${system.printed} asks for ${wanted.wetC} °C`,
      'FMVSS116',
    );
  }
  const [a, b] = [system.printed, fluid.printed];
  if (/GL-4/.test(a) && !/GL-5/.test(a) && /GL-5/.test(b) && !/GL-4/.test(b)) {
    return answer(
      'ask',
      'GL-5 additives can attack copper alloy synchronisers; use it in a GL-4 gearbox only with approval',
      'API1560',
    );
  }
  return mixing;
}

function answer(kind: Mixing['answer'], reason: string, source: SourceKey): Mixing {
  return { answer: kind, reason, source: sourceTitle(source) };
}
