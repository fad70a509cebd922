// The blocks of a document dealt out to kinds of page: what stands before the steps, the steps, what follows them, and
// the record. What stands where on them is decided when it is set, in flow.typ.
import type { Block, BlockOf } from '../document/blocks.js';
import { blockCode } from './blocks.js';
import type { PrintContext } from './context.js';
import { type Argument, call, type Raw, raw, sequence } from './typst-code.js';

/** The calls of a document's main file, in order. */
export function pageCalls(blocks: readonly Block[], context: PrintContext): readonly Raw[] {
  const records = blocks.filter((block) => block.kind === 'record');
  const others = blocks.filter((block) => block.kind !== 'record');
  const code = (some: readonly Block[]): Raw => sequence(some.flatMap((block) => blockCode(block, context)));
  const firstStep = others.findIndex(isStep);
  const before = firstStep < 0 ? plainPages(others, code) : [guide(others, firstStep, context, code)];
  return [...before, ...records.map((record) => call('record-page', [code([record])]))];
}

type Code = (blocks: readonly Block[]) => Raw;

function plainPages(blocks: readonly Block[], code: Code): readonly Raw[] {
  return blocks.length === 0
    ? []
    : [call('plain-page', [raw(`{ let row-inset = 1.35mm; ${code(blocks).raw} }`)])];
}

/** The legend and the rest of the end are given apart: each goes where there is room for it. */
function guide(blocks: readonly Block[], firstStep: number, context: PrintContext, code: Code): Raw {
  const afterSteps = blocks.findLastIndex(isStep) + 1;
  const legend = blocks.filter(isLegend);
  const steps = blocks
    .slice(firstStep, afterSteps)
    .flatMap((block): readonly Argument[] => blockCode(block, context));
  const end = blocks.slice(afterSteps).filter((block) => !isLegend(block));
  return call('guide', [
    raw(`row-inset => ${code(blocks.slice(0, firstStep).filter((block) => !isLegend(block))).raw}`),
    legend.length === 0 ? undefined : code(legend),
    steps,
    end.map((block) => code([block])),
  ]);
}

const isStep = (block: Block): block is BlockOf<'step'> => block.kind === 'step';
const isLegend = (block: Block): boolean => block.kind === 'key' || block.kind === 'statement';
