// Torque wrenches that a guide prints though no line names them: the program picks one of the house list for each torque.
// Another range in that list is a change of the guide.
import { stageTorques } from '../checks/fastener-facts.js';
import { torqueLines } from '../names/figures.js';
import { everyLine, type Job } from '../names/job.js';
import { clausesOf, type Thing } from '../names/model.js';
import { numberOf, toSI } from '../quantity/index.js';
import { chooseWrench, type TorqueTool } from '../trade/wrench.js';

/** The wrenches for the torques of these things and of the work; one that a line names may be among them. */
export function pickedWrenches({ file, scope }: Job, things: readonly Thing[]): Thing[] {
  const house = new Map([...scope.names.values()].flatMap((thing) => wrenchEntry(thing)));
  if (house.size === 0) return [];
  const entries = things.flatMap((thing) =>
    thing.kind === 'fastener' ? torqueLines(thing).map(({ spec }) => spec) : [],
  );
  const written = everyLine(file.work).flatMap((line) =>
    'clauses' in line
      ? line.clauses.flatMap((clause) => ('spec' in clause && clause.spec ? [clause.spec] : []))
      : [],
  );
  const tools = [...house.keys()];
  const picked = [...entries, ...written].flatMap(stageTorques).flatMap(({ highNm, lowNm }) => {
    // A range is set to its middle.
    const { tool } = chooseWrench((highNm + lowNm) / 2, tools);
    return tool ? [house.get(tool)] : [];
  });
  return [...new Set(picked)].filter((thing) => thing !== undefined);
}

function wrenchEntry(thing: Thing): [TorqueTool, Thing][] {
  if (thing.kind !== 'tool') return [];
  const range = clausesOf(thing, 'torque')[0]?.clause.spec?.stages[0]?.measure.measure;
  const { low, high } = range ? toSI(range) : {};
  if (!low || !high) return [];
  return [[{ name: thing.name, lowNm: numberOf(low), highNm: numberOf(high) }, thing]];
}
