// Where a thing is used over a whole library: a part or tool by name, title or part number, a fastener by its thread, a
// fluid by its grade, a mark, a block by its name or file, a hazard by what calls for its caution.
import { calledFor } from '../checks/usual-cautions.js';
import type { Library } from '../library.js';
import { everyLine, jobOf } from '../names/job.js';
import { type MentionWay, mentionsIn } from '../names/mentions.js';
import { clausesOf, type FileModel, nameSpan, type Thing } from '../names/model.js';
import { resolvePath, scopeOf } from '../names/scope.js';
import type { Line } from '../syntax/tree.js';
import { HAZARDS, type Hazard } from '../vocabulary/hazards.js';

export interface Use {
  readonly file: string;
  /** The number of the procedure, undefined in a catalogue. */
  readonly number: string | undefined;
  readonly title: string;
  readonly way: MentionWay | 'takes in' | 'calls for';
  /** Line from 0, and the line as written. */
  readonly line: number;
  readonly text: string;
}

/** One thing that the name may mean, with all its uses. */
export interface Used {
  readonly name: string;
  /** `fastener`, `file`, `hazard`. */
  readonly kind: string;
  readonly title: string;
  /** Where it is declared; undefined for a hazard. */
  readonly file: string | undefined;
  readonly line: number | undefined;
  readonly uses: readonly Use[];
}

/** Everything the query may mean, each with its uses in the files named. Case and blanks do not count. */
export function whereUsed(library: Library, paths: readonly string[], query: string): Used[] {
  const wanted = plain(query);
  const files = paths.flatMap((path) => library.model(path) ?? []);
  const things = files
    .flatMap((file) => [...file.things, ...file.operations])
    .filter((thing) => namesOf(thing).some((name) => plain(name) === wanted));
  const uses = new Map<string, Use[]>(things.map((thing) => [thing.id, []]));
  for (const file of files) {
    const scope = scopeOf(file, library);
    for (const { name, way, line, operation } of mentionsIn(file.tree)) {
      const thing = operation
        ? operationOf(library, file, name.text, operation.from)
        : scope.resolve(name.text);
      // A procedure that performs from another names things of that one only through its operations.
      if (thing === undefined || way === 'declares') continue;
      uses.get(thing.id)?.push(use(file, way, line));
    }
  }
  return [
    ...things.map((thing) => usedThing(thing, library, uses.get(thing.id) ?? [])),
    ...files.filter((file) => isFile(file, wanted)).map((file) => usedFile(file, files)),
    ...HAZARDS.filter((hazard) => [hazard.id, hazard.title].some((name) => plain(name) === wanted)).map(
      (hazard) => usedHazard(hazard, files, library),
    ),
  ];
}

const plain = (text: string): string => text.toLowerCase().replace(/[\s"]+/g, '');

/** Everything a thing goes by: name, title, part number, thread, grade, mark. */
function namesOf(thing: Thing): string[] {
  const raws = IDENTITIES.flatMap((word) =>
    clausesOf(thing, word).flatMap(({ clause }) =>
      clause.raw && !clause.raw.hole ? [clause.raw.text, `${word} ${clause.raw.text}`] : [],
    ),
  );
  return [thing.name, thing.title, ...raws, ...thing.marks];
}

const IDENTITIES = ['number', 'of', 'grade', 'SAE', 'API', 'DOT', 'refrigerant', 'specification', 'per'];

function operationOf(
  library: Library,
  file: FileModel,
  name: string,
  from: string | undefined,
): Thing | undefined {
  const owner = from === undefined ? file : library.numbered(from);
  return owner?.operations.find((operation) => operation.name === name);
}

function usedThing(thing: Thing, library: Library, uses: readonly Use[]): Used {
  const { kind, name, title, file } = thing;
  const at = nameSpan(thing);
  const line = library.model(file) && at ? thing.line?.firstLine : undefined;
  return { kind, name, title, file, line, uses };
}

function isFile(file: FileModel, wanted: string): boolean {
  const base = file.path.split('/').at(-1) ?? '';
  return [file.path, base, file.number ?? ''].some((name) => name !== '' && plain(name) === wanted);
}

/** Files that take a file in, or perform from it. */
function usedFile(file: FileModel, files: readonly FileModel[]): Used {
  const uses = files.flatMap((other) =>
    [...everyLine(other.lines)].flatMap((line): Use[] => {
      if (line.kind === 'use' && line.path && resolvePath(other.path, line.path.text) === file.path)
        return [use(other, 'takes in', line)];
      const isFrom =
        line.kind === 'perform' && line.from && file.number !== undefined && line.from.text === file.number;
      return isFrom ? [use(other, 'names', line)] : [];
    }),
  );
  return {
    name: file.number ?? file.path,
    kind: file.kind === 'other' ? 'file' : file.kind,
    title: file.title,
    file: file.path,
    line: file.head?.firstLine,
    uses,
  };
}

function usedHazard(hazard: Hazard, files: readonly FileModel[], library: Library): Used {
  const uses = files
    .filter((file) => file.kind === 'procedure')
    .flatMap((file) =>
      calledFor(jobOf(file, library), hazard).map(({ line }) => use(file, 'calls for', line)),
    );
  return { name: hazard.id, kind: 'hazard', title: hazard.title, file: undefined, line: undefined, uses };
}

function use(file: FileModel, way: Use['way'], line: Line): Use {
  const text = file.tree.text.slice(line.code.start, line.code.end).replace(/\s+/g, ' ');
  return { file: file.path, number: file.number, title: file.title, way, line: line.firstLine, text };
}
