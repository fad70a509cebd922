// The boxes at the right of a line, on the page. They are ordinary form controls: without script they can still be
// filled in and printed.
import {
  type Beside,
  type BesideKinds,
  type BesideRenderers,
  blanksOf,
  renderBeside,
  type TorqueStage,
} from '../document/beside.js';
import type { BlockOf } from '../document/blocks.js';
import { plain, type Quantity } from '../document/inline.js';
import type { Picture } from '../document/picture.js';
import { say, type Words } from '../document/words.js';
import type { PageContext } from './context.js';
import { drawnHead, headWithSize } from './drawn.js';
import { el, join, type Markup } from './markup.js';
import { figureMarkup, nameMarkup, proseMarkup, unitMarkup } from './prose.js';

export interface BesideContext extends PageContext {
  /** What the boxes are about, for their names. */
  readonly about: string;
  /** Names the controls of the box. */
  readonly row: string;
}

export function besideMarkup(beside: Beside, context: BesideContext): Markup {
  return renderBeside(BESIDE, beside, context);
}

export function pictureMarkup(picture: Picture): Markup {
  const type = picture.type === 'svg' ? 'svg+xml' : picture.type;
  return el(
    'figure',
    {},
    el('img', {
      src: `data:image/${type};base64,${base64(picture.data)}`,
      alt: picture.alt,
      width: Math.round(picture.width),
      height: Math.round(picture.height),
    }),
    picture.caption && el('figcaption', {}, picture.caption),
  );
}

/** A film plays from the page itself, from the place that is meant; without it, its words stand alone. */
export function clipMarkup({ body, film }: BlockOf<'clip'>): Markup {
  if (!film) return el('p', {}, proseMarkup(body));
  return el(
    'figure',
    { class: 'film' },
    el('video', {
      controls: true,
      preload: 'metadata',
      playsinline: true,
      'aria-label': plain(body),
      src: `data:video/${film.type};base64,${base64(film.data)}#t=${film.start}`,
    }),
    el('figcaption', {}, proseMarkup(body)),
  );
}

/** One stage of a torque: the value as loud as anything on the page, the other system beneath. */
export function stageMarkup(stage: TorqueStage, key: string, name: string): Markup {
  const { figure, set } = stage;
  const label = stage.label ?? set?.joint;
  const said = el(
    'p',
    {},
    label && el('small', {}, label, ' '),
    figure
      ? loudMarkup(figure)
      : [
          el('input', { type: 'text', id: key, 'aria-label': name, autocomplete: 'off' }),
          ' ? ',
          el('span', { class: 'unit whole' }, stage.unit ?? ''),
        ],
  );
  return set
    ? join(said, el('p', { class: 'set' }, el('small', {}, set.label, ' '), loudMarkup(set.figure)))
    : said;
}

function loudMarkup({ primary, secondary }: Quantity): Markup {
  return join(
    el('strong', { class: sizeOf(primary.value) }, primary.value),
    '\u00A0',
    el('span', { class: 'unit' }, unitMarkup(primary)),
    secondary && el('span', { class: 'other' }, figureMarkup(secondary)),
  );
}

/** The longer a value, the smaller its figures: its frame is as wide as a telephone leaves room for. */
function sizeOf({ length }: string): string | undefined {
  if (length > 13) return 'range long';
  return length > 6 ? 'range' : undefined;
}

const field = (label: string | Markup, attributes: Record<string, string | undefined>): Markup =>
  el(
    'label',
    { class: 'field' },
    el('span', {}, label),
    el('input', { type: 'text', autocomplete: 'off', ...attributes }),
  );

/** One blank, or one for each place, each with its own answer; the unit is chosen once. */
function readingBlanks(reading: BesideKinds['reading'], words: Words): Markup {
  const blank = (id: string, name: string): Markup =>
    el('input', {
      type: 'text',
      id,
      inputmode: 'decimal',
      autocomplete: 'off',
      'aria-label': name,
      'aria-describedby': `limit-${reading.id}`,
    });
  const unit =
    reading.units.length > 1
      ? el(
          'select',
          { id: `unit-${reading.id}`, 'aria-label': words.unit },
          reading.units.map(({ label }) => el('option', { value: label }, label)),
        )
      : el('span', { class: 'unit' }, reading.units[0]?.label ?? '');
  if (reading.places === 1) return el('div', { class: 'in' }, blank(reading.id, reading.name), unit);
  return join(
    el('div', { class: 'in' }, unit),
    el(
      'ol',
      { class: 'places' },
      blanksOf(reading).map((id, i) =>
        el('li', {}, blank(id, `${reading.name}, ${i + 1}`), el('output', { for: id, 'data-live': true })),
      ),
    ),
  );
}

const choice = (name: string, value: string, label: Markup): Markup =>
  el(
    'label',
    { class: 'choice' },
    el('input', { type: 'radio', name, id: `${name}-${value}`, value }),
    el('span', {}, label),
  );

const BESIDE: BesideRenderers<Markup, BesideContext> = {
  socket: ({ head }) => el('span', { class: 'sock' }, drawnHead(head, 'head', ''), head.label),
  torque: ({ head, count, stages, conditions }, { row, words }) =>
    el(
      'div',
      { class: 'torque' },
      el('div', { class: 'drive' }, head && headWithSize(head), el('span', {}, `${count} ×`)),
      el(
        'div',
        { class: 'val' },
        stages.map((stage, i) =>
          stageMarkup(stage, `torque-${row}-${i}`, `${words.torque} ${stage.label ?? ''}`),
        ),
      ),
      conditions.length > 0 &&
        el(
          'div',
          { class: 'how' },
          conditions.map((condition) => el('p', {}, proseMarkup(condition))),
        ),
    ),
  reading: (reading, { words }) =>
    el(
      'fieldset',
      { class: 'reading', 'data-reading': reading.id },
      el('legend', {}, nameMarkup(reading.name)),
      readingBlanks(reading, words),
      el(
        'p',
        { id: `limit-${reading.id}` },
        el('strong', {}, reading.limit.length > 0 ? proseMarkup(reading.limit) : words.limitOpen),
        reading.fresh && [', ', el('span', { class: 'whole' }, proseMarkup(reading.fresh))],
        reading.other && [el('br', {}), proseMarkup(reading.other)],
      ),
      el(
        'p',
        { class: 'ways' },
        reading.ways.map((way, i) => [i > 0 && el('br', {}), proseMarkup(way)]),
      ),
      reading.places === 1 && el('output', { for: reading.id, 'data-live': true }, words.noReading),
    ),
  inspection: (inspection, { about }) =>
    el(
      'fieldset',
      { class: 'inspection', 'data-inspection': inspection.id },
      el('legend', { class: 'unseen' }, about),
      choice(inspection.id, 'good', proseMarkup(inspection.good)),
      choice(inspection.id, 'bad', proseMarkup(inspection.bad)),
    ),
  hold: ({ id }, { words }) =>
    el(
      'div',
      { class: 'holdbox' },
      field(words.initials, { id, maxlength: '12' }),
      field(words.time, { id: `time-${id}` }),
    ),
  clock: (clock, { words }) =>
    el(
      'div',
      { class: 'clock', 'data-clock': clock.id },
      el('p', { class: 'length' }, figureMarkup(clock.length), ', ', clock.name),
      el(
        'div',
        { class: 'blanks' },
        field(say(words.clockSince, { line: clock.from?.number ?? '' }).trim(), { id: `since-${clock.id}` }),
        field(clock.sense === 'at least' ? words.clockNotBefore : words.clockNotAfter, {
          id: `edge-${clock.id}`,
        }),
      ),
      el(
        'div',
        { class: 'live', 'data-live': true },
        el('output', { role: 'timer' }),
        el('button', { type: 'button', 'data-start': clock.id }, words.clockStart),
      ),
    ),
  picture: ({ picture }) => pictureMarkup(picture),
};

/** Base64 without the host's helpers: this code also runs in a browser. */
function base64(data: Uint8Array): string {
  let binary = '';
  for (let i = 0; i < data.length; i += 0x8000)
    binary += String.fromCharCode(...data.subarray(i, i + 0x8000));
  return btoa(binary);
}
