// What only the whole of a library can tell (entries that nothing uses, rules that bind to nothing, things declared
// twice), kept up as its files are checked. A file is read for it once; then the parts are looked at together.
import { type FileModel, type Finding, findingsOfParts, type LibraryPart, partOf } from '@baywright/language';
import type { Shelf } from './shelf.js';
import { movedFindings } from './standing.js';

interface Noted {
  readonly text: string;
  readonly part: LibraryPart;
  /** What the file says now, where its part has not been taken from it yet. */
  readonly edited?: FileModel;
}

/** A table of fewer words is not worth looking through. */
const FEW = 10_000;

export class LibraryWide {
  readonly #noted = new Map<string, Noted>();
  /** Findings of each file, with the text that their places are of. */
  #found = new Map<string, { readonly text: string; readonly findings: readonly Finding[] }>();
  readonly #words = new Map<string, string>();
  /** How many words the table had when all of them were in use. */
  #inUse = FEW;
  #isStale = false;

  /** A file was read; its text is what it says now. Of one that is edited, the part is taken when all is quiet. */
  note(model: FileModel, text: string): void {
    const before = this.#noted.get(model.path);
    if (before?.text === text) return;
    this.#noted.set(
      model.path,
      before ? { text, part: before.part, edited: model } : { text, part: this.#sparing(partOf(model)) },
    );
    this.#isStale = true;
  }

  /** Takes the parts of what was edited, and forgets words that no file says any more. */
  #catchUp(): void {
    for (const [path, { text, edited }] of this.#noted)
      if (edited) this.#noted.set(path, { text, part: this.#sparing(partOf(edited)) });
    if (this.#words.size <= 2 * this.#inUse) return;
    this.#words.clear();
    for (const [path, { text, part }] of this.#noted)
      this.#noted.set(path, { text, part: this.#sparing(part) });
    this.#inUse = Math.max(FEW, this.#words.size);
  }

  /** Most words of a library stand in many of its files: each is kept once. */
  #sparing(part: LibraryPart): LibraryPart {
    const once = (word: string): string => {
      const known = this.#words.get(word);
      if (known !== undefined) return known;
      this.#words.set(word, word);
      return word;
    };
    const things = part.things.map((thing) => ({
      ...thing,
      name: once(thing.name),
      marks: thing.marks.map(once),
    }));
    return { ...part, words: part.words.map(once), things };
  }

  /** Findings of a file at their places in its text as it is now. */
  findingsOf(path: string, text: string): readonly Finding[] {
    const found = this.#found.get(path);
    if (!found) return [];
    return found.text === text ? found.findings : movedFindings(found.findings, path, found.text, text);
  }

  /** Looks at the parts together; gives the files whose findings are others now. Nothing while some are not read yet. */
  refresh({ paths, settings }: Pick<Shelf, 'paths' | 'settings'>): string[] {
    const live = new Set(paths());
    for (const path of [...this.#noted.keys()])
      if (!live.has(path)) {
        this.#noted.delete(path);
        this.#isStale = true;
      }
    if (!this.#isStale || this.#noted.size < live.size) return [];
    this.#isStale = false;
    this.#catchUp();
    const before = this.#found;
    this.#found = new Map();
    const parts = [...live].flatMap((path) => this.#noted.get(path)?.part ?? []);
    const byFile = new Map<string, Finding[]>();
    for (const finding of findingsOfParts(parts, settings))
      byFile.set(finding.file, [...(byFile.get(finding.file) ?? []), finding]);
    for (const [path, findings] of byFile)
      this.#found.set(path, { text: this.#noted.get(path)?.text ?? '', findings });
    const said = (path: string, found: typeof before): string =>
      JSON.stringify(found.get(path)?.findings ?? []);
    return [...new Set([...before.keys(), ...this.#found.keys()])].filter(
      (path) => said(path, before) !== said(path, this.#found),
    );
  }
}
