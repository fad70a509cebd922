// Running text as runs of one face, for measuring. What the typesetter is given is made of the same pieces, in prose.ts.
import { type Figure, type InlineRenderers, type Prose, renderInline } from '../../document/inline.js';
import { runsOf } from '../../keep-together.js';
import { type FaceName, faceOf } from './faces.js';

/** A run of one face and size. */
export interface Run {
  readonly text: string;
  readonly face: FaceName;
  /** Points. */
  readonly size: number;
  /** Figures of one width. */
  readonly tabular: boolean;
  /** No line may end in it. */
  readonly whole: boolean;
}

/** What a text is set in: points, and a weight from 400 to 800. */
export interface Style {
  readonly size: number;
  readonly weight?: number;
  readonly italic?: boolean;
  readonly tabular?: boolean;
}

export function proseRuns(prose: Prose, style: Style): readonly Run[] {
  return prose.flatMap((inline) => renderInline(INLINE, inline)(style));
}

export function textRuns(text: string, style: Style, whole = false): readonly Run[] {
  const { size, weight = 400, italic = false, tabular = false } = style;
  return [{ text, face: faceOf(weight, italic), size, tabular, whole }];
}

export function figureRuns({ value, unit, loud }: Figure, style: Style): readonly Run[] {
  const whole = (text: string, more: Partial<Style> = {}) => textRuns(text, { ...style, ...more }, true);
  if (unit === '') return whole(value, { tabular: true });
  const at = loud === undefined ? -1 : unit.indexOf(loud);
  const runs = [...whole(value, { tabular: true }), ...whole('\u00A0')];
  if (loud === undefined || at < 0) return [...runs, ...whole(unit)];
  return [
    ...runs,
    ...whole(unit.slice(0, at)),
    ...whole(loud, { weight: 800 }),
    ...whole(unit.slice(at + loud.length)),
  ];
}

const heavier = (style: Style): Style => ({ ...style, weight: (style.weight ?? 400) + 300 });

const INLINE: InlineRenderers<(style: Style) => readonly Run[]> = {
  text: (inline) => (style) => runsOf(inline.text).flatMap(({ text, whole }) => textRuns(text, style, whole)),
  strong: (inline) => (style) => proseRuns(inline.children, heavier(style)),
  emphasis: (inline) => (style) => proseRuns(inline.children, { ...style, italic: true }),
  code: (inline) => (style) => textRuns(inline.text, heavier(style)),
  thing: (inline) => (style) => textRuns(inline.text, heavier(style)),
  quantity:
    ({ quantity }) =>
    (style) => [
      ...figureRuns(quantity.primary, { ...style, weight: 700 }),
      ...(quantity.secondary
        ? [...textRuns(' (', style), ...figureRuns(quantity.secondary, style), ...textRuns(')', style)]
        : []),
    ],
  line: (inline) => (style) => textRuns(inline.text, style),
  link: (inline) => (style) => proseRuns(inline.children, style),
  foreign: (inline) => (style) => proseRuns(inline.children, style),
};
