// `baywright order`: the turn in which fasteners are tightened.
import { trade } from '@baywright/language';
import { choice, defineCommand, flag } from '../command.js';
import { CannotRun } from '../shell.js';

const PATTERNS = trade.ORDER_PATTERNS;

export default defineCommand({
  name: 'order',
  summary: 'draw the order in which fasteners are tightened',
  docs: `Numbers fasteners in the turn in which they are tightened: on a circle (star, cross) or in rows and columns (grid is inside-out over them).

As text for the terminal, or as the drawing that the guides print.`,
  takes: [
    {
      name: 'pattern',
      docs: 'star, cross, inside-out, outside-in or grid',
      values: [...PATTERNS, 'grid'],
    },
    { name: 'count', docs: 'how many fasteners, or rows and columns such as 2x5' },
  ],
  options: {
    svg: flag('--svg', 'write the drawing as SVG'),
    loosen: flag('--loosen', 'the other way round'),
    language: choice('--language <code>', 'language of the sentence', ['en', 'es', 'fr', 'de'], 'en'),
  },
  examples: [
    ['baywright order star 5', 'five wheel nuts'],
    ['baywright order grid 2x5', 'ten head bolts in two rows'],
    ['baywright order grid 2x5 --svg > order.svg', 'the drawing'],
  ],
  run({ shell }, [name = '', size = ''], { svg, loosen, language }) {
    const pattern = name === 'grid' ? 'inside-out' : PATTERNS.find((one) => one === name);
    if (pattern === undefined)
      throw new CannotRun(`there is no pattern “${name}”; the patterns are ${PATTERNS.join(', ')} and grid`);
    const made = trade.tighteningOrder({ pattern, ...layout(size) });
    if (!trade.isOrder(made)) throw new CannotRun(made.problem);
    const order = loosen ? trade.reverseOrder(made) : made;
    if (svg) shell.out.write(`${trade.orderSvg(order, { language })}\n`);
    else {
      const words = [trade.orderCaption(language), trade.orderSentence(order, language, { loosen })];
      shell.out.write(`${trade.orderText(order)}\n\n${words.join('\n')}\n`);
    }
    return 0;
  },
});

/** Reads `5` or `2x5`. */
function layout(size: string): { count: number; layout?: { rows: number; columns: number } } {
  const match = /^(\d{1,3})(?:[x×](\d{1,3}))?$/i.exec(size.trim());
  if (match === null)
    throw new CannotRun(`“${size}” is no number of fasteners; write 5, or 2x5 for two rows of five`);
  const rows = Number(match[1]);
  if (match[2] === undefined) return { count: rows };
  const columns = Number(match[2]);
  return { count: rows * columns, layout: { rows, columns } };
}
