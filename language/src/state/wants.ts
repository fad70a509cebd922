// The states that needs ask for, one row each: which way they go, how to assume them, and what it means when they never come.
import type { Thing } from '../names/model.js';
import type { Condition } from '../variants/diagrams.js';
import type { Make } from '../vocabulary/needs.js';
import { allTorqued, wordLoosened, wordSnugged, wordStarted, wordTakenOut } from './counts.js';
import type { Machine } from './machine.js';

/**
 * `apart`: a state of taking apart; its lack is told at the act that needed it. `together`: a state of putting back;
 * its lack is told at the line that took the thing out of it. `here`: a state that only this act asks for.
 */
export type Direction = 'apart' | 'together' | 'here';

const WANTS = {
  off: 'apart',
  slack: 'apart',
  drained: 'apart',
  disconnected: 'apart',
  hung: 'apart',
  mounted: 'here',
  tight: 'here',
  stage: 'here',
  placed: 'here',
  up: 'here',
  supported: 'here',
  capped: 'here',
  chocked: 'here',
  tagged: 'here',
  tied: 'here',
  clean: 'here',
  wet: 'here',
  'within time': 'here',
  cured: 'here',
  settled: 'here',
  'ride height': 'here',
  'suspension free': 'here',
  'suspension loaded': 'here',
  fluid: 'together',
  unspent: 'here',
  'back on ground': 'together',
  in: 'together',
  started: 'together',
  snug: 'together',
  torqued: 'together',
  connected: 'together',
  set: 'together',
  position: 'together',
  adjusted: 'together',
  gone: 'together',
  unchocked: 'together',
  untagged: 'together',
  untied: 'together',
  levelled: 'together',
  bled: 'together',
} as const satisfies Record<string, Direction>;
export type Want = keyof typeof WANTS;

export function directionOf(want: Want): Direction {
  return WANTS[want];
}

/** Sets the thing to the wanted state where it is wanted. */
export function assumeState(
  m: Machine,
  thing: Thing,
  want: Want,
  when: Condition,
  value: string | undefined,
  by: number,
): void {
  const put = (aspect: Parameters<Machine['put']>[1], to: string): void =>
    m.change(thing, aspect, when, () => to, by);
  const n = m.job.count(thing);
  const tight = (change: (word: string) => string): void =>
    m.change(thing, 'tight', when, (v) => change(String(v)), by);
  switch (want) {
    case 'off':
    case 'disconnected':
      if (thing.kind === 'fastener') tight((w) => wordTakenOut(w, n));
      else if (thing.kind === 'connection') put('link', 'disconnected');
      else if (thing.kind === 'temporary') put('put', 'away');
      else if (thing.kind === 'part') put('place', 'out');
      break;
    case 'hung':
      put('place', 'hung');
      break;
    case 'slack':
      tight((w) => wordLoosened(w, n));
      break;
    case 'drained':
      put('level', 'drained');
      break;
    case 'fluid':
      put('level', 'full');
      break;
    case 'levelled':
      put('level', 'full');
      break;
    case 'mounted':
    case 'in':
      if (thing.kind === 'fastener') {
        tight(() => allTorqued(n));
        m.change(thing, 'spent', when, () => 'no', by);
      } else if (thing.kind === 'connection') put('link', 'connected');
      else put('place', 'in');
      if (thing.kind === 'part') m.change(thing, 'joint', when, (v) => (v === 'made' ? v : 'made'), by);
      break;
    case 'started':
      tight((w) => wordStarted(w, n));
      break;
    case 'snug':
      tight((w) => wordSnugged(wordStarted(w, n)));
      break;
    case 'tight':
    case 'torqued':
      tight(() => allTorqued(n));
      m.change(thing, 'spent', when, () => 'no', by);
      break;
    case 'connected':
      put('link', 'connected');
      break;
    case 'capped':
      put('link', 'capped');
      break;
    case 'set':
      put('value', value ?? thing.values[0]?.text ?? '');
      break;
    case 'position':
      put('position', value ?? thing.values[0]?.text ?? '');
      break;
    case 'adjusted':
      put('setting', 'set');
      break;
    case 'gone':
      put('put', 'away');
      break;
    case 'placed':
      put('put', 'placed');
      break;
    case 'unchocked':
      put('chock', 'no');
      break;
    case 'chocked':
      put('chock', 'yes');
      break;
    case 'untagged':
      put('tag', 'no');
      break;
    case 'tagged':
      put('tag', 'yes');
      break;
    case 'untied':
      put('tie', 'no');
      break;
    case 'tied':
      put('tie', 'yes');
      break;
    case 'bled':
      put('air', 'bled');
      break;
    case 'clean':
      put('clean', 'clean');
      break;
    case 'wet':
      put('joint', 'wet');
      break;
    case 'up':
      put('posture', 'raised');
      break;
    case 'supported':
      put('posture', 'supported');
      break;
    case 'back on ground':
      put('posture', 'ground');
      break;
    case 'suspension free':
      put('suspension', 'free');
      break;
    case 'suspension loaded':
      put('suspension', 'loaded');
      break;
    case 'unspent':
      put('spent', 'no');
      break;
    case 'cured':
    case 'settled':
      // The wait that lacked lets all clocks go on.
      m.clocks.advance(Number(value) || 0, 0, when);
      break;
    case 'stage':
    case 'within time':
    case 'ride height':
      break;
  }
}

/** The way a make goes: taking apart, putting back, or neither. */
export function directionOfMake(make: Make): Direction {
  const want = MAKES_WANT[make]?.[0];
  return want === undefined ? 'here' : directionOf(want);
}

/** What was assumed and is undone by a make that is no taking apart: chocks put back after the drive they were away for. */
export const UNDOES: Readonly<Partial<Record<Make, Want>>> = {
  chocked: 'unchocked',
  tagged: 'untagged',
  tied: 'untied',
  placed: 'gone',
  raised: 'back on ground',
};

/** Which makes bring a thing into a wanted state, so that a later act of that kind came late. */
export const MAKES_WANT: Readonly<Partial<Record<Make, readonly Want[]>>> = {
  out: ['off', 'slack'],
  loose: ['slack'],
  'taken off': ['off', 'hung'],
  hung: ['off', 'hung'],
  disconnected: ['disconnected', 'off'],
  drained: ['drained'],
  started: ['in', 'started'],
  snug: ['snug'],
  torqued: ['torqued', 'snug'],
  tight: ['torqued', 'snug'],
  fitted: ['in'],
  connected: ['connected', 'in'],
  capped: ['capped'],
  set: ['set'],
  moved: ['position'],
  adjusted: ['adjusted'],
  removed: ['gone', 'off'],
  placed: ['placed'],
  unchocked: ['unchocked'],
  chocked: ['chocked'],
  untagged: ['untagged'],
  tagged: ['tagged'],
  untied: ['untied'],
  tied: ['tied'],
  bled: ['bled'],
  filled: ['fluid', 'levelled'],
  topped: ['fluid', 'levelled'],
  levelled: ['levelled'],
  cleaned: ['clean'],
  coated: ['wet'],
  raised: ['up'],
  supported: ['supported', 'up'],
  lowered: ['back on ground'],
  loaded: ['suspension loaded'],
  unloaded: ['suspension free'],
};
