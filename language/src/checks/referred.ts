// N307, N308, N309: sheets that figures are taken from, and references in the text.
import { type Finding, type Fix, finding } from '../diagnostics/define.js';
import { unknownAttribute, unknownReference, unknownSource } from '../diagnostics/names.js';
import { everyLine, type Job } from '../names/job.js';
import type { Thing } from '../names/model.js';
import type { Line, ProseReference, Raw } from '../syntax/tree.js';
import { once } from '../text/once.js';
import { nearestName, nearestWord } from '../vocabulary/near.js';
import type { Check } from './check.js';
import { declareFix } from './declare.js';
import { nearFixes, nearNameFixes } from './near-fixes.js';

export const referred: Check = ({ job }) => [...sources(job), ...references(job)];

function sources(job: Job): Finding[] {
  const known = [...job.scope.names.values()]
    .filter((thing) => thing.kind === 'source')
    .map((thing) => thing.name);
  // A shop that keeps no list of sheets writes them as they come.
  if (known.length === 0) return [];
  const asked = new Map<string, Raw[]>();
  for (const raw of job.file.lines.flatMap(sourcesBelow))
    if (!known.includes(raw.text)) asked.set(raw.text, [...(asked.get(raw.text) ?? []), raw]);
  return [...asked].map(([source, places]) => unknown(job, source, places, known));
}

/** The sheets named on a line of the left edge and below it: the same until something in it is edited. */
const sourcesBelow = once((top: Line): readonly Raw[] => {
  const found: Raw[] = [];
  for (const line of everyLine([top])) {
    if (line.broken || (line.kind !== 'clauses' && line.kind !== 'statement')) continue;
    for (const { word, raw } of line.clauses) if (word === 'per' && raw && !raw.hole) found.push(raw);
  }
  return found;
});

function unknown({ file }: Job, source: string, places: readonly Raw[], known: readonly string[]): Finding {
  const [first, ...rest] = places.map(({ start, end }) => ({ start, end }));
  const fixes: Fix[] = nearestName(source, known).map((text) => ({
    title: `Write "${text}"`,
    edits: places.map(({ start, end }) => ({ file: file.path, span: { start, end }, text: `"${text}"` })),
  }));
  if (/^[\p{L}][\p{L}\p{N}.-]*$/u.test(source))
    fixes.push(
      declareFix(
        file,
        [{ name: source, kind: 'source', places: [], values: [] }],
        `Declare ${source} as a source`,
        false,
      ),
    );
  const related = rest.map((span) => ({ file: file.path, span, message: 'named here too' }));
  return finding(
    unknownSource,
    { file: file.path, span: first ?? { start: 0, end: 0 }, related, fixes },
    { source },
  );
}

function references(job: Job): Finding[] {
  const { file, scope } = job;
  const found: Finding[] = [];
  for (const reference of file.lines.flatMap(referencesBelow)) {
    const thing = scope.resolve(reference.name.text);
    const fault = thing
      ? attributeFault(file.path, reference, thing)
      : scope.missing.length > 0
        ? undefined
        : nameFault(job, reference);
    if (fault) found.push(fault);
  }
  return found;
}

const referencesBelow = once((top: Line): readonly ProseReference[] =>
  everyLine([top]).flatMap(({ prose }) => prose?.references ?? []),
);

function nameFault({ file, scope }: Job, { name }: ProseReference): Finding {
  const near = nearestName(name.text, scope.names.keys());
  const span = { start: name.start, end: name.end };
  return finding(
    unknownReference,
    { file: file.path, span, fixes: nearNameFixes(file.path, [span], near) },
    { name: name.text, near },
  );
}

function attributeFault(file: string, { attribute }: ProseReference, thing: Thing): Finding | undefined {
  if (!attribute) return undefined;
  const known = [...new Set([...thing.clauses.keys()].filter((word) => word !== 'bare').map(attributeOf))];
  if (known.includes(attribute.text)) return undefined;
  const span = { start: attribute.start, end: attribute.end };
  const near = nearestWord(attribute.text, known);
  return finding(
    unknownAttribute,
    { file, span, fixes: nearFixes(file, [span], near) },
    { name: thing.name, attribute: attribute.text, known, near },
  );
}

/** The word of a clause as a reference says it: `number and thread` of fasteners is `count` and `thread`. */
function attributeOf(word: string): string {
  return word === 'of' ? 'count' : word.replaceAll(' ', '-');
}
