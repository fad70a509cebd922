// Reads the tags of a PDF as a screen reader finds them: the tree, and what of each page is in it. Needs Debian's qpdf.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export type Value = string | number | boolean | null | readonly Value[] | { readonly [key: string]: Value };
type Dictionary = Readonly<Record<string, Value>>;

export interface Tag {
  /** `H1`, `TD`. */
  readonly type: string;
  readonly alt: string | undefined;
  readonly language: string | undefined;
  readonly id: string | undefined;
  /** All its attributes, whoever owns them. */
  readonly attributes: Dictionary;
  readonly children: readonly Tag[];
  /** Places of its own content: `3:17` is piece 17 of page 3, counted from 0. */
  readonly content: readonly string[];
}

/** A piece of a page between marks, or text outside any. */
interface Piece {
  readonly page: number;
  /** Missing of an artifact, and of what is not marked at all. */
  readonly id: number | undefined;
  readonly isArtifact: boolean;
}

export interface TaggedPdf {
  readonly catalog: Dictionary;
  readonly pages: readonly Dictionary[];
  readonly metadata: string;
  /** The children of the root of the tree. */
  readonly roots: readonly Tag[];
  readonly pieces: readonly Piece[];
  /** Follows references. */
  readonly at: (value: Value | undefined) => Value | undefined;
  readonly dictionary: (value: Value | undefined) => Dictionary;
}

export function readTags(pdf: Uint8Array): TaggedPdf {
  const objects = objectsOf(pdf);
  const at = (value: Value | undefined): Value | undefined =>
    typeof value === 'string' && /^\d+ \d+ R$/.test(value) ? at(objects.get(value)?.value) : value;
  const dictionary = (value: Value | undefined): Dictionary => {
    const found = at(value);
    return found !== null && typeof found === 'object' && !Array.isArray(found) ? (found as Dictionary) : {};
  };
  const trailer = dictionary(objects.get('trailer')?.value);
  const catalog = dictionary(trailer['/Root']);
  const pageRefs: string[] = [];
  const collect = (ref: Value | undefined): void => {
    const node = dictionary(ref);
    if (node['/Type'] === '/Page' && typeof ref === 'string') pageRefs.push(ref);
    for (const kid of listOf(at(node['/Kids']))) collect(kid);
  };
  collect(catalog['/Pages']);
  const pages = pageRefs.map((ref) => dictionary(ref));
  const streamOf = (ref: Value | undefined): string =>
    listOf(Array.isArray(at(ref)) ? at(ref) : [ref ?? null])
      .map((one) => (typeof one === 'string' ? (objects.get(one)?.data ?? '') : ''))
      .join('\n');
  const tagOf = (ref: Value, page: number): Tag | undefined => {
    const node = dictionary(ref);
    if (node['/S'] === undefined) return undefined;
    const own = typeof node['/Pg'] === 'string' ? pageRefs.indexOf(node['/Pg']) : page;
    const kids = listOf(Array.isArray(at(node['/K'])) ? at(node['/K']) : [node['/K'] ?? null]);
    const attributes = listOf(Array.isArray(at(node['/A'])) ? at(node['/A']) : [node['/A'] ?? null]);
    return {
      type: String(node['/S']).slice(1),
      alt: text(node['/Alt']),
      language: text(node['/Lang']),
      id: text(node['/ID']),
      attributes: Object.assign({}, ...attributes.map(dictionary)),
      children: kids.flatMap((kid) => (typeof kid === 'number' ? [] : (tagOf(kid, own) ?? []))),
      content: kids.flatMap((kid) => {
        if (typeof kid === 'number') return [`${own}:${kid}`];
        const mark = dictionary(kid);
        const on = typeof mark['/Pg'] === 'string' ? pageRefs.indexOf(mark['/Pg']) : own;
        return mark['/Type'] === '/MCR' ? [`${on}:${mark['/MCID']}`] : [];
      }),
    };
  };
  const top = at(dictionary(catalog['/StructTreeRoot'])['/K']);
  return {
    catalog,
    pages,
    metadata: streamOf(catalog['/Metadata']),
    roots: listOf(Array.isArray(top) ? top : [top ?? null]).flatMap((kid) => tagOf(kid, -1) ?? []),
    pieces: pages.flatMap((page, i) => piecesOf(streamOf(page['/Contents']), i)),
    at,
    dictionary,
  };
}

/** Every tag, parents before children. */
export function walkTags(tags: readonly Tag[]): Tag[] {
  return tags.flatMap((tag) => [tag, ...walkTags(tag.children)]);
}

const listOf = (value: Value | undefined): readonly Value[] => (Array.isArray(value) ? value : []);

/** A string of the file without its mark. */
const text = (value: Value | undefined): string | undefined =>
  typeof value === 'string' ? value.replace(/^[ub]:/, '') : undefined;

/** The marked pieces of a page's content, and one for text and drawing that no mark is around. */
function piecesOf(content: string, page: number): Piece[] {
  const pieces: Piece[] = [];
  const open: boolean[] = [];
  const plain = content.replace(/\((?:\\.|[^\\()])*\)/gs, '()');
  const token =
    /\/(\w+)\s*(<<(?:[^<>]|<[\dA-Fa-f\s]*>)*>>|\/\w+)?\s*\b(BDC|BMC)\b|\bEMC\b|\b(?:Tj|TJ|Do|f\*?|S|B\*?|sh)(?=\s|$)/gs;
  for (const [all, name, properties = '', begins] of plain.matchAll(token)) {
    if (begins) {
      open.push(true);
      const id = /\/MCID\s+(\d+)/.exec(properties)?.[1];
      pieces.push({ page, id: id === undefined ? undefined : Number(id), isArtifact: name === 'Artifact' });
    } else if (all === 'EMC') open.pop();
    else if (open.length === 0) pieces.push({ page, id: undefined, isArtifact: false });
  }
  return pieces;
}

interface StoredObject {
  readonly value: Value;
  readonly data: string;
}

function objectsOf(pdf: Uint8Array): ReadonlyMap<string, StoredObject> {
  const folder = mkdtempSync(join(tmpdir(), 'baywright-'));
  try {
    const path = join(folder, 'guide.pdf');
    writeFileSync(path, pdf);
    const options = [
      '--json=2',
      '--json-key=qpdf',
      '--json-stream-data=inline',
      '--decode-level=generalized',
    ];
    const json = execFileSync('qpdf', [...options, path], { encoding: 'utf8', maxBuffer: 1 << 28 });
    const [, objects] = (JSON.parse(json) as { qpdf: [unknown, Record<string, StoredJson>] }).qpdf;
    return new Map(
      Object.entries(objects).map(([key, { value = null, stream }]) => [
        key.replace(/^obj:/, ''),
        {
          value: stream?.dict ?? value,
          data: stream?.data === undefined ? '' : Buffer.from(stream.data, 'base64').toString('latin1'),
        },
      ]),
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

interface StoredJson {
  readonly value?: Value;
  readonly stream?: { readonly dict: Value; readonly data?: string };
}
