// What the steps come to, beside a declared labour.
import { declaredLabour, type Line, trade } from '@baywright/language';
import type { Snapshot } from '../../snapshot.js';
import type { View } from '../../view.js';

/** Hands-on, waiting and elapsed time on the combinations of a labour line; undefined for other lines. */
export async function timeLine(snapshot: Snapshot, line: Line, view: View): Promise<string | undefined> {
  if (line.kind !== 'labour') return undefined;
  const { run } = await view.analysed(snapshot);
  if (!run) return undefined;
  const found = declaredLabour(run).find((one) => one.line === line);
  if (!found) return undefined;
  const { timeText } = trade;
  const { handsOnMin, waitingMin, elapsedMin, variants } = found.time;
  const only = variants === undefined ? '' : ` (${snapshot.say.when(variants)})`;
  const waiting = waitingMin > 0 ? timeText(waitingMin) : undefined;
  return `${snapshot.say.stepsComeTo(timeText(handsOnMin), waiting, timeText(elapsedMin))}${only}`;
}
