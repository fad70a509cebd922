// Lines of work that come in groups: a reading with what follows from it, a look with what makes unfit, a lift with its
// warning. What the library tells is filled in: its limits, the jack and stands that this shop lifts with.
import { type Thing, VERB_BY_WORD } from '@baywright/language';
import type { Snapshot } from '../../snapshot.js';
import type { Offer } from './answer.js';
import type { Cursor } from './cursor.js';
import { choice, snippet, stop } from './snippet-text.js';
import { statementOffers } from './statement.js';

export function workSnippets(snapshot: Snapshot, cursor: Cursor): Offer[] {
  const { say } = snapshot;
  return [
    snippet('measure … if', say.measureSnippet, measuring(snapshot)),
    snippet(
      'inspect … reject',
      say.inspectSnippet,
      `inspect ${stop(1, 'part')}\n  reject: ${stop(2, 'cracks, scoring, rust pits')}$0`,
    ),
    snippet('raise … support', say.liftSnippet, lifting(snapshot, cursor), LIFTING.slice(1)),
  ];
}

function measuring(snapshot: Snapshot): string {
  const job = snapshot.job();
  const limits = [...job.scope.names.values()].filter(({ kind }) => kind === 'limit');
  const own = limits.filter(({ file }) => file === job.file.path);
  const [first] = own.length > 0 ? own : limits;
  const name = first
    ? choice(1, [...new Set([first, ...own, ...limits])].map((thing) => thing.name).slice(0, MOST))
    : stop(1, 'limit');
  return `measure ${name}\n  if ${choice(2, sides(first))} limit\n    note: ${stop(3, 'What is done then.')}$0`;
}

/** The side on which a reading of this limit fails stands first. */
function sides(limit: Thing | undefined): string[] {
  const bound = limit?.clauses.get('bare')?.[0]?.clause.spec?.stages[0]?.measure.measure;
  const fails =
    bound?.form === 'bound' ? (bound.side === 'least' ? 'below' : 'above') : bound ? 'outside' : 'below';
  return [fails, ...['below', 'above', 'outside'].filter((side) => side !== fails)];
}

function lifting(snapshot: Snapshot, cursor: Cursor): string {
  // What the shop lifts with is asked of the whole library, which takes its time: only where a lift is being typed.
  const isAsked = cursor.word !== '' && LIFTING.some((word) => word.startsWith(cursor.word));
  const usual = (verb: string, rest: string, otherwise: string): string => {
    const def = isAsked ? VERB_BY_WORD.get(verb) : undefined;
    return (def && statementOffers(snapshot, cursor, def, rest)[0]?.label) ?? otherwise;
  };
  const at = usual('raise', ' vehicle at ', 'sill-points');
  return [
    // A file's own texts are in English, whatever the editor speaks.
    'warning: Support the vehicle on rated stands before anyone reaches under it.',
    `chock ${stop(1, 'rear-wheels')}`,
    `raise vehicle with ${stop(2, usual('raise', ' vehicle with ', 'trolley-jack'))} at ${stop(3, at)}`,
    `support vehicle with ${stop(4, usual('support', ' vehicle with ', 'axle-stands'))} at ${stop(3, at)}$0`,
  ].join('\n');
}

const LIFTING = ['raise', 'lift', 'jack-up', 'hoist'];

/** A longer list is no choice. */
const MOST = 20;
