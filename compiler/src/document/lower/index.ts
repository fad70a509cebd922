// From a checked procedure to the document of one of its sheets. Pure: the same analysis, choice and files give the
// same document.
import { type Analysis, phrase } from '@baywright/language';
import type { Block, BlockOf } from '../blocks.js';
import type { Ban, GuideDocument, OutputFinding } from '../document.js';
import { wordsOf } from '../words-of.js';
import { withBans } from './bans.js';
import { changedBlocks, earlierEdition, withBars } from './change-bars.js';
import { backBlocks, frontBlocks } from './front.js';
import { identityOf } from './identity.js';
import { offNowBlocks } from './off-now.js';
import { type GuideChoice, type GuideShelf, type Print, printOf } from './print.js';
import { cardBlocks, pullBlocks, recordBlock } from './sheets.js';
import { lowerSteps } from './steps.js';
import { newWalk, type Walk } from './walk.js';
import { withWays } from './ways.js';

export type { GuideChoice, GuideShelf } from './print.js';

export interface LoweredGuide {
  readonly document: GuideDocument;
  readonly findings: readonly OutputFinding[];
  /** Texts that have no translation into the language of the print, by file. */
  readonly untranslated: ReadonlyMap<string, ReadonlySet<string>>;
}

export function lowerGuide(analysis: Analysis, choice: GuideChoice, shelf: GuideShelf): LoweredGuide {
  const made = lowered(analysis, choice, shelf);
  const earlier = earlierEdition(analysis, shelf);
  if (!earlier) return made;
  // In the writer's language where the translations of the time were not kept.
  const isKept = earlier.asIssued?.languages.includes(choice.language) ?? false;
  const source = { ...choice, language: (!isKept && shelf.settings.languages[0]) || choice.language };
  const now = source.language === choice.language ? made : lowered(analysis, source, shelf);
  const was = lowered(earlier.analysis, source, earlier.asIssued?.shelf ?? shelf);
  return { ...made, document: withBars(made.document, changedBlocks(was.document, now.document), earlier) };
}

function lowered(analysis: Analysis, choice: GuideChoice, shelf: GuideShelf): LoweredGuide {
  const print = printOf(analysis, choice, shelf);
  const walk = newWalk(print);
  const { steps, bans } = withBans(walk, withWays(walk, lowerSteps(walk)));
  const standing = [phrase('standing-statement', print.language), shelf.settings.shop.name]
    .filter((part) => part !== '')
    .join(' ');
  const document: GuideDocument = {
    sheet: choice.sheet,
    language: choice.language,
    identity: identityOf(print),
    words: wordsOf(choice.language),
    standing,
    things: Object.fromEntries(walk.things),
    bans,
    blocks: BLOCKS[choice.sheet](walk, print, steps, bans),
  };
  return { document, findings: print.findings, untranslated: print.untranslated };
}

const BLOCKS: Readonly<
  Record<
    GuideChoice['sheet'],
    (walk: Walk, print: Print, steps: readonly BlockOf<'step'>[], bans: readonly Ban[]) => readonly Block[]
  >
> = {
  guide: (_walk, print, steps) => [...frontBlocks(print), ...steps, ...backBlocks(print), recordBlock(print)],
  'torque-card': (_walk, print) => cardBlocks(print),
  'pull-sheet': (_walk, print) => pullBlocks(print),
  record: (_walk, print) => [recordBlock(print)],
  'off-now': (walk, _print, steps, bans) => offNowBlocks(walk, steps, bans),
};
