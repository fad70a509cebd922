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

function told({ text, path, say }: Snapshot, setting: DialSetting): string {
  const { thing, torque, prevailingNm, adapter, lowNm, highNm } = setting;
  const shown = (newtonMetres: number): string =>
    String(Number((newtonMetres / numberOf(torque.unit.factor)).toPrecision(3)));
  const range = lowNm === highNm ? shown(highNm) : say.fromTo(shown(lowNm), shown(highNm));
  const written = thing.file === path ? text.slice(torque.at.start, torque.at.end) : shown(torque.highNm);
  const why = [
    thing.file === path ? written : `${written} ${torque.unit.symbol}`,
    prevailingNm > 0 ? say.ofDrag(`${shown(prevailingNm)} ${torque.unit.symbol}`) : undefined,
    adapter &&
      say.adapterOn(
        adapter.tool.name,
        Math.round(adapter.offsetMm),
        adapter.wrench.name,
        Math.round(adapter.leverMm),
      ),
  ];
  return `${say.setOnWrench(`${range} ${torque.unit.symbol}`, thing.name)}: ${why.filter((w) => w !== undefined).join(', ')}`;
}
