// What comes out of the vehicle and is collected: each fluid by the waste it goes to, so that trays and tanks stand ready.
import { clausesOf, phrase, type Thing, trade } from '@baywright/language';
import type { NeedRow } from '../blocks.js';
import { text } from '../inline.js';
import { capitalFirst, smallFirst } from './names.js';
import { rowsProse, strong } from './need-words.js';
import { amountProse, amountsOf } from './needs-amounts.js';
import type { Print } from './print.js';
import { titleOf } from './texts.js';

/** Waste of one kind stands together, in the order met; as much as goes in is taken to come out. */
export function wasteRows(print: Print): NeedRow[] {
  const things = [...new Set(print.uses.drained.map(({ thing }) => thing))];
  const streams = things.map((thing) => ({ thing, stream: streamOf(thing) }));
  const order = [...new Set(streams.map(({ stream }) => stream))];
  return streams
    .sort((a, b) => order.indexOf(a.stream) - order.indexOf(b.stream))
    .map(({ thing, stream }) => {
      const own = print.uses.drained.filter((use) => use.thing === thing);
      const amounts = amountsOf(print, thing, own);
      const title = capitalFirst(titleOf(print, thing));
      const waste = stream === undefined ? title : capitalFirst(phrase(stream, print.language));
      return {
        what: [
          strong(waste),
          ...(waste === title ? [] : [text(`, ${print.language === 'de' ? title : smallFirst(title)}`)]),
        ],
        for: rowsProse(own),
        ...(amounts.length === 0 ? {} : { amount: amountProse(print, amounts) }),
      };
    });
}

/** By the grade of the fluid; undefined where it has none that tells. */
function streamOf(fluid: Thing): (typeof trade.WASTE_STREAMS)[trade.FluidFamily] | undefined {
  const families = trade.GRADE_STANDARDS.flatMap((standard) =>
    clausesOf(fluid, standard).flatMap(({ clause: { raw } }) =>
      raw && !raw.hole ? [trade.readGrade(standard, raw.text).family] : [],
    ),
  );
  const family = families.find((one) => one !== undefined);
  return family && trade.WASTE_STREAMS[family];
}
