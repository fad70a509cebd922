// Snippets for what is written most: a step, an entry of each kind, a procedure.
import type { LineContext, ThingKind } from '@baywright/language';
import type { Snapshot } from '../../snapshot.js';
import type { Texts } from '../../texts/index.js';
import type { Offer } from './answer.js';
import { procedureOffers } from './new-procedure.js';
import { snippet, stop } from './snippet-text.js';

/** `kind` is what entries declare at the place, in a section of declarations. */
export function snippetOffers(
  snapshot: Snapshot,
  context: LineContext,
  kind: ThingKind | undefined,
): Offer[] {
  const { say } = snapshot;
  if (context === 'work' || context === 'operation')
    return [snippet('step …', say.stepSnippet, `step: ${stop(1, 'Title')}\n  $0`)];
  if (context === 'file')
    return [...procedureOffers(snapshot), snippet('catalogue …', say.catalogueSnippet, CATALOGUE)];
  if (context !== 'declarations' || kind === undefined) return [];
  const docs =
    kind === 'part' ? say.partSnippet : kind === 'fastener' ? say.fastenerSnippet : say.entrySnippet;
  const name = kind === 'source' ? 'HL-1' : 'name';
  const below = BELOW[kind];
  const opening = `${stop(1, name)}: ${stop(2, 'Title')}`;
  return [snippet(`${kind} …`, docs, below === undefined ? `${opening}$0` : `${opening}\n  ${below}$0`)];
}

/** How many fasteners a set has, of which thread. */
export function setOffer(say: Texts): Offer {
  return snippet(
    '4 of …',
    say.setSnippet,
    `${stop(1, '4')} of ${stop(2, 'M8x1.25')}, hex ${stop(3, '13 mm')}$0`,
  );
}

/** What an entry of a kind says next. */
const BELOW: Readonly<Partial<Record<ThingKind, string>>> = {
  part: `held by ${stop(3, 'fastener')}`,
  fastener: `${stop(3, '4')} of ${stop(4, 'M8x1.25')}, hex ${stop(5, '13 mm')}\n  torque ${stop(6, '?')}`,
  connection: `on ${stop(3, 'part')}`,
  fluid: `in ${stop(3, 'place')}\n  fill ${stop(4, '?')}`,
  limit: `at least ${stop(3, '?')}`,
  condition: `${stop(3, 'off')}, ${stop(4, 'on')}`,
  rule: `before ${stop(3, 'raise vehicle')}\n  require ${stop(4, 'warning')}`,
  vehicle: `years ${stop(3, '2018 to 2025')}`,
};

const CATALOGUE = `catalogue: ${stop(1, 'Title')}

sources
  ${stop(2, 'HL-1')}: ${stop(3, 'Sheet, issue 1')}

vehicles
  ${stop(4, 'name')}: ${stop(5, 'Title')}
    years ${stop(6, '2018 to 2025')}
$0`;
