// What an operation needs and makes, as the hover of `perform` shows it.
import { describe, expect, test } from 'vitest';
import { createLibrary } from '../../language/src/analysis.js';
import { DEFAULT_SETTINGS } from '../../language/src/settings/index.js';
import { operationSummary, type ThingState } from '../../language/src/state/operation-summary.js';

const TEXT = `procedure WH-1: Wheel

applies to van

vehicles
  van: Van
    option axle light, heavy

parts
  wheel: Wheel
    held by wheel-nut
    marked wheel
  spacer: Spacer
    behind wheel
    only when axle heavy

fasteners
  wheel-nut: Nuts
    5 of M14x1.5
    torque 160 N·m, on ground, per ?

removal
  operation wheel-off: Wheel off
    step: Off
      loosen wheel-nut
      raise vehicle
      support vehicle
      remove wheel-nut, wheel
      remove spacer, when axle heavy

installation
  operation wheel-on: Wheel on
    step: On
      install spacer, when axle heavy
      install wheel, wheel-nut
      snug wheel-nut
      lower vehicle
      torque wheel-nut
  operation look: Look at the wheel
    step: Look
      remove wheel-nut, wheel
      install wheel, wheel-nut
      torque wheel-nut
`;

function summaryOf(name: string): { needs: string[]; makes: string[] } {
  const library = createLibrary({ read: () => TEXT, list: () => ['a.bay'] }, DEFAULT_SETTINGS);
  const model = library.model('a.bay');
  const operation = model?.operations.find((o) => o.name === name);
  if (!model || !operation) throw new Error(`no operation ${name}`);
  const { needs, makes } = operationSummary(model, operation, library);
  const words = (s: ThingState): string =>
    `${s.thing.name} ${s.state}${s.variants ? ` on ${s.variants}` : ''}`;
  return { needs: needs.map(words), makes: makes.map(words).sort() };
}

describe('an operation', () => {
  test('that takes off needs nothing and leaves things off', () => {
    expect(summaryOf('wheel-off')).toEqual({
      needs: [],
      makes: ['spacer off on axle heavy', 'vehicle supported', 'wheel off', 'wheel-nut off'],
    });
  });

  test('that puts on needs them off, and the vehicle up', () => {
    expect(summaryOf('wheel-on')).toEqual({
      needs: ['spacer off on axle heavy', 'wheel off', 'wheel-nut off', 'vehicle raised'],
      makes: ['spacer on on axle heavy', 'vehicle on the ground', 'wheel on', 'wheel-nut torqued'],
    });
  });

  test('that brings back what it took apart makes nothing', () => {
    expect(summaryOf('look')).toEqual({ needs: [], makes: [] });
  });
});
