// V107, V108: the range of identification numbers of a vehicle.
import { type Finding, type Fix, finding } from '../diagnostics/define.js';
import { vinUnreadable } from '../diagnostics/v107-vin-unreadable.js';
import { vinRange } from '../diagnostics/v108-vin-range.js';
import { clausesOf } from '../names/model.js';
import type { Raw } from '../syntax/tree.js';
import type { Span } from '../text/span.js';
import { vinCheck, vinMeant, vinRangeFault } from '../trade/vin.js';
import type { Check } from './check.js';

export const vin: Check = ({ job: { file } }) =>
  file.things.flatMap((thing) =>
    clausesOf(thing, 'vin').flatMap(({ clause: { raw }, line }) =>
      line.broken || !raw || raw.hole ? [] : rangeFindings(file.path, raw),
    ),
  );

function rangeFindings(file: string, raw: Raw): Finding[] {
  const [from, to] = endsOf(raw);
  if (!from) return [];
  const misread = [from, ...(to ? [to] : [])].flatMap((end) => numberFindings(file, end));
  const fault = to && misread.length === 0 ? vinRangeFault(from.text, to.text) : undefined;
  if (!to || fault === undefined) return misread;
  const span = { start: from.start, end: to.end };
  const swap: Fix = {
    title: 'Put the earlier number first',
    edits: [{ file, span, text: `${to.text} to ${from.text}` }],
    preferred: true,
  };
  return [finding(vinRange, { file, span, fixes: fault === 'reversed' ? [swap] : [] }, { fault })];
}

interface End extends Span {
  readonly text: string;
}

/** The numbers that stand there: one, or two with `to` between them. */
function endsOf(raw: Raw): End[] {
  const base = raw.start + (raw.quoted ? 1 : 0);
  const ends = [...raw.text.matchAll(/\S+/g)]
    .filter(([word]) => word !== 'to')
    .map((match) => ({
      text: match[0],
      start: base + match.index,
      end: base + match.index + match[0].length,
    }));
  return ends.length <= 2 ? ends : [{ text: raw.text, start: base, end: base + raw.text.length }];
}

function numberFindings(file: string, end: End): Finding[] {
  const { ok, problem } = vinCheck(end.text);
  if (ok || problem === undefined) return [];
  const meant = vinMeant(end.text);
  const fixes =
    meant !== end.text && vinCheck(meant).ok
      ? [
          {
            title: `Write \`${meant}\``,
            edits: [{ file, span: { start: end.start, end: end.end }, text: meant }],
          },
        ]
      : [];
  return [finding(vinUnreadable, { file, span: end, fixes }, { vin: end.text, problem })];
}
