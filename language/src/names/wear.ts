// How long what wears lasts, by the figures of its limit.
import { type Measure, numberOf, toSI } from '../quantity/index.js';
import { wearToService } from '../trade/measure.js';
import { clausesOf, type Thing } from './model.js';

/** Figures of a limit that falls in service, in the SI unit of its kind. */
export interface Wear {
  /** The least reading with which it lasts to the next service. */
  readonly lasts: number;
  /** Services that a new part lasts, in whole; undefined where the figure of a new one is not written. */
  readonly servicesFromNew: number | undefined;
  /** The lower limit as written: its unit is the one to tell these in. */
  readonly limit: Measure;
}

/** Undefined where the limit has no lower bound or no wear, or they are of two kinds. */
export function wearOf(thing: Thing): Wear | undefined {
  const limit = measureOf(thing, 'at least');
  const wear = measureOf(thing, 'wear');
  const low = limit && value(limit);
  const each = wear && value(wear);
  if (!limit || !wear || low === undefined || each === undefined || wear.unit.kind !== limit.unit.kind)
    return undefined;
  if (!(each > 0)) return undefined;
  const fresh = measureOf(thing, 'new');
  const start = fresh?.unit.kind === limit.unit.kind ? value(fresh) : undefined;
  const forecast = start === undefined ? undefined : wearToService(start, low, { per: each }, 1);
  return {
    lasts: low + each,
    // A figure that comes out whole must not lose one to the last bit.
    servicesFromNew: forecast && Math.floor(forecast.left + 1e-9),
    limit,
  };
}

function measureOf(thing: Thing, word: string): Measure | undefined {
  return clausesOf(thing, word)[0]?.clause.spec?.stages[0]?.measure.measure;
}

function value(measure: Measure): number | undefined {
  const { nominal, low, high } = toSI(measure);
  const exact = nominal ?? low ?? high;
  return exact && numberOf(exact);
}
