// The first edits of a session would be slow: the engine compiles what runs often, and only once it has run often. So,
// while the writer still reads, edits of a copy of the opened procedure are checked for nothing, in slices.
import { createLibrary, type Library } from '@baywright/language';
import { type Later, politely, SLICE } from './manners.js';
import type { Snapshot } from './snapshot.js';

/** Edits after which a check takes no less time any more. */
const ROUNDS = 24;
/** Characters, some four thousand lines. Opening a longer text runs as much as it needs, and a copy of it takes memory. */
const LONGEST_TEXT = 200_000;
/** What all of it may take: of a text that takes longer, fewer edits do as well. Milliseconds of work. */
const LONGEST = 1500;

export class Rehearsal {
  readonly #later: Later;
  readonly #now: () => number;
  readonly #path: string;
  /** Forgotten when it has done its work. */
  #library: Library | undefined;
  #round = 0;
  #spent = 0;
  #cancel: (() => void) | undefined;

  constructor({ path, text, library }: Snapshot, host: { readonly later: Later; now(): number }) {
    this.#later = host.later;
    this.#now = host.now;
    this.#path = path;
    const texts = [withSlip(text), text];
    const read = (other: string): string | undefined =>
      other === path ? texts[this.#round % texts.length] : library.host.read(other);
    if (text.length <= LONGEST_TEXT)
      this.#library = createLibrary({ ...library.host, read }, library.settings);
  }

  /** Goes on where it was stopped. */
  goOn(): void {
    this.stop();
    if (this.#library) this.#cancel = politely(this.#later, () => this.#slice());
  }

  stop(): void {
    this.#cancel?.();
  }

  /** One step at least, however slow the machine is just now: else it would never end. */
  #slice(): void {
    const begin = this.#now();
    do this.#step();
    while (this.#library && this.#now() - begin <= SLICE);
    this.#spent += this.#now() - begin;
    if (this.#spent > LONGEST) this.#library = undefined;
    this.goOn();
  }

  #step(): void {
    if (!this.#library?.advance(this.#path)) return;
    this.#round += 1;
    this.#library.changed(this.#path);
    if (this.#round >= ROUNDS) this.#library = undefined;
  }
}

/** With a letter too many in the middle, as while a word is written. */
function withSlip(text: string): string {
  const end = text.indexOf('\n', text.length / 2);
  return end < 0 ? `${text}x` : `${text.slice(0, end)}x${text.slice(end)}`;
}
