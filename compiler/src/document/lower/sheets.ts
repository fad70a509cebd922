// The sheets beside the guide: torque card, pull sheet, record, what is off now.
import { clausesOf, type Language, phrase, phraseText } from '@baywright/language';
import type { TorqueStage } from '../beside.js';
import type { Block, BlockOf, Field, TorqueRow } from '../blocks.js';
import { type Prose, plainFigure, text } from '../inline.js';
import { appliesText } from './applies.js';
import { identityOf } from './identity.js';
import { lineProse } from './line-words.js';
import { threadWords } from './need-words.js';
import { stockGroups } from './needs.js';
import type { Print } from './print.js';
import { titleOf } from './texts.js';
import { stageFor } from './torque-box.js';
import type { UsedTorque } from './uses.js';

/** The vehicle, side and options that a sheet is for. */
export const leadOf = (print: Print): Prose => {
  const { side, options } = identityOf(print);
  return [text([appliesText(print), ...(side === undefined ? [] : [side]), ...options].join(', '))];
};

/** Every torque in the order met, with its sheet; stages are rows of their own. A list of sheets would take a page. */
export function cardBlocks(print: Print): Block[] {
  const rows = print.uses.torques.flatMap((torque): TorqueRow[] =>
    torque.stages.map((stage, i) => ({
      row: torque.row,
      number: torque.number,
      joint: torque.joint,
      detail: i === 0 ? detailOf(print, torque) : [text(phrase('same-joint', print.language))],
      ...(torque.head ? { head: torque.head } : {}),
      count: torque.count,
      stage: stageFor(torque.variant, stage),
      how: torque.how,
      ...(torque.order && i === 0 ? { order: torque.order } : {}),
      ...(torque.of ? { of: torque.of } : {}),
      ...(torque.source ? { source: torque.source } : {}),
    })),
  );
  return [
    { kind: 'heading', title: phrase('torque-card', print.language), lead: leadOf(print) },
    { kind: 'torque-table', rows },
  ];
}

/** `M12 × 1.5, class 10.9, new, per HL-114`. */
function detailOf(print: Print, { thing, pers }: UsedTorque): Prose {
  const thread = threadWords(print, thing);
  const strengths = (['class', 'grade'] as const).flatMap((word) => {
    const raw = clausesOf(thing, word)[0]?.clause.raw;
    return raw && !raw.hole ? [phraseText(`strength-${word}`, print.language, { value: raw.text })] : [];
  });
  const { diagrams } = print.job.universe;
  const isNew = clausesOf(thing, 'renew').some(({ guard }) =>
    diagrams.implies(print.when, print.job.where(guard)),
  );
  const parts = [
    // A clamp or clip has no thread: its kind is in its name.
    ...(thread === undefined ? [] : [thread]),
    ...strengths.slice(0, 1),
    ...(isNew ? [phrase('new', print.language)] : []),
    ...[...new Set(pers)]
      .filter((source) => source !== '?')
      .map((source) => phraseText('per-source', print.language, { source }).replaceAll(' ', '\u00a0')),
  ];
  return [text(parts.join(', '))];
}

export function pullBlocks(print: Print): Block[] {
  const title = phrase('pull-sheet', print.language);
  return [
    { kind: 'heading', title, lead: leadOf(print) },
    { kind: 'needs', title, layout: 'pull', groups: stockGroups(print) },
  ];
}

export function recordBlock(print: Print): BlockOf<'record'> {
  const { language, uses } = print;
  const field = (
    key: string,
    label: string,
    input: Field['input'] = 'text',
    lines: Field['lines'] = 2,
  ): Field => ({
    key,
    label: [text(label)],
    lines,
    input,
  });
  // What is fitted only if a line asks for it is written in by hand.
  const always = uses.fresh.filter(({ maybe }) => !maybe);
  const fresh = [...new Set(always.map(({ thing }) => thing))]
    .map((thing) => titleOf(print, thing))
    .join(', ');
  const signs = [
    ...uses.fields,
    field('odometer-out', phrase('odometer-out', language), 'number'),
    field('done-by', phrase('work-done-by', language), 'sign'),
    field('released-by', phrase('released-to-driver', language), 'sign'),
  ];
  const items: Block[] = [
    {
      kind: 'fields',
      columns: 4,
      fields: [
        field('registration', phrase('registration', language), 'text', 1),
        field('odometer-in', phrase('odometer', language), 'number', 1),
        field('date', phrase('date', language), 'date', 1),
        field('technician', phrase('technician', language), 'text', 1),
      ],
    },
    ...(uses.readings.length > 0 ? [{ kind: 'record-readings', rows: uses.readings } as const] : []),
    ...(uses.torques.length > 0
      ? [
          {
            kind: 'record-torques',
            rows: uses.torques.map(({ row, number, joint, count, stages, variant, of }) => ({
              row,
              number,
              joint,
              count,
              torque: [
                ...(variant === undefined ? [] : [text(`${variant}${phrase('colon', language)} `)]),
                ...stagesProse(stages, print),
              ],
              ...(of ? { of } : {}),
            })),
          } as const,
        ]
      : []),
    ...(uses.holds.length > 0 ? [{ kind: 'record-holds', rows: uses.holds } as const] : []),
    {
      kind: 'fields',
      title: phrase('fitted-and-other', language),
      columns: 2,
      fields: [
        field(
          'fitted-new',
          fresh === ''
            ? phrase('fitted-new', language)
            : `${phrase('fitted-new', language)}${phrase('colon', language)} ${fresh}`,
        ),
        field('other-way', phrase('done-another-way', language)),
      ],
    },
    // Four beside each other; one in a row of its own would take another page.
    {
      kind: 'fields',
      title: phrase('sign-off', language),
      columns: signs.length === 4 ? 4 : 3,
      fields: signs,
    },
  ];
  return { kind: 'record', title: phrase('record-title', language), items };
}

const stagesProse = (stages: readonly TorqueStage[], { language }: Print): Prose =>
  stages.flatMap(({ label, figure, unit, set }, i): Prose => {
    const torque: Prose = [
      { kind: 'strong', children: [text(figure ? plainFigure(figure.primary) : `? ${unit ?? ''}`)] },
    ];
    return [
      text(`${i === 0 ? '' : ', '}${label === undefined ? '' : `${label} `}`),
      ...(set ? setProse(language, torque, plainFigure(set.figure.primary)) : torque),
    ];
  });

/** `90 N·m (set 102 N·m)`: no line parts what stands in brackets. */
const setProse = (language: Language, torque: Prose, set: string): Prose =>
  lineProse('torque-set', language, { torque, set }).map((one) =>
    one.kind === 'text' ? text(one.text.replace(/(?<=\(.*) /g, '\u00a0')) : one,
  );
