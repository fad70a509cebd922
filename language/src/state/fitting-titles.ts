// Titles of the steps of a proposed fitting half, as a technician writes them: `Fit the brake disc`.
import { inSentence } from '../names/in-sentence.js';
import type { Thing } from '../names/model.js';
import type { Joined } from './fitting-steps.js';

export function fittingTitle(lines: readonly Joined[], completes: boolean): string {
  if (completes)
    return `${sentence([...CLOSING].flatMap(([verb, said]) => (has(lines, verb) ? [said] : [])))}`;
  for (const [verb, said] of NAMED_BY) {
    const things = lines.filter((line) => line.verb === verb).flatMap((line) => line.things);
    const parts = things.filter(({ kind }) => kind !== 'fastener');
    // The bolt of a pipe is no title of its own.
    if (verb === 'install' && parts.length === 0 && has(lines, 'connect')) continue;
    if (things.length > 0) return `${said} ${listed(verb, parts.length > 0 ? parts : things)}`;
  }
  return 'Wait';
}

const has = (lines: readonly Joined[], verb: string): boolean => lines.some((line) => line.verb === verb);

/** What a step is named by, the weightiest verb first. */
const NAMED_BY: readonly (readonly [string, string])[] = [
  ['fill', 'Fill'],
  ['install', 'Fit'],
  ['connect', 'Connect'],
  ['torque', 'Torque'],
  ['tighten', 'Tighten'],
  ['snug', 'Snug'],
  ['untie', 'Untie'],
  ['check-level', 'Check the level of'],
  ['remove', 'Take away'],
  ['move', 'Move back'],
  ['unload', 'Unload'],
  ['clean', 'Clean'],
];

/** What the end of a job does besides handing back. */
const CLOSING: ReadonlyMap<string, string> = new Map([
  ['bleed', 'bleed'],
  ['adjust', 'adjust'],
  ['lower', 'lower'],
]);

function sentence(said: readonly string[]): string {
  const text = andList([...said, 'hand back']);
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Names of a title in columns of text: a longer one is not read as a title, and the lines below name the rest. */
const LONGEST = 56;

function listed(verb: string, things: readonly Thing[]): string {
  const names = [...new Set(things.map(inSentence))];
  const all = andList(names);
  return all.length <= LONGEST || names.length === 1
    ? all
    : `${names[0]} and ${verb === 'install' ? 'what goes with it' : 'the rest'}`;
}

function andList(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}
