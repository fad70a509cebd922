// What to set on the wrench for a line that torques, where that is not the torque itself.
import { bindStatement, type DialSetting, dialSettings, type Line, numberOf } from '@baywright/language';
import type { Snapshot } from '../../snapshot.js';

/** One line for each torque; empty where the torque itself is set. */
export function dialLines(snapshot: Snapshot, line: Line): string {
  if (line.kind !== 'statement') return '';
  const job = snapshot.job();
  const statement = bindStatement(line, snapshot.path, job.scope);
  return (statement ? dialSettings(job, statement) : [])
    .flatMap((setting) => ('torque' in setting ? [told(snapshot, setting)] : []))
    .join('  \n');
}

function told({ text, path }: Snapshot, setting: DialSetting): string {
  const { thing, torque, prevailingNm, adapter, lowNm, highNm } = setting;
  const shown = (newtonMetres: number): string =>
    String(Number((newtonMetres / numberOf(torque.unit.factor)).toPrecision(3)));
  const range = lowNm === highNm ? shown(highNm) : `${shown(lowNm)} to ${shown(highNm)}`;
  const written = thing.file === path ? text.slice(torque.at.start, torque.at.end) : shown(torque.highNm);
  const why = [
    thing.file === path ? written : `${written} ${torque.unit.symbol}`,
    prevailingNm > 0 ? `${shown(prevailingNm)} ${torque.unit.symbol} of drag` : undefined,
    adapter &&
      `${adapter.tool.name} of ${Math.round(adapter.offsetMm)} mm on ${adapter.wrench.name} of ${Math.round(adapter.leverMm)} mm`,
  ];
  return `Set **${range} ${torque.unit.symbol}** on the wrench for ${thing.name}: ${why.filter((w) => w !== undefined).join(', ')}`;
}
