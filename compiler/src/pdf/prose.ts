// Running text and figures as typesetter calls.
import type { Language } from '@baywright/language';
import {
  type Figure,
  type Inline,
  type InlineRenderers,
  type Prose,
  type Quantity,
  renderInline,
} from '../document/inline.js';
import { type Run, runsOf } from '../keep-together.js';
import { type Argument, call, type Raw, raw, sequence, stringLiteral } from './typst-code.js';

export function proseCode(prose: Prose): Raw {
  return sequence(prose.map((inline) => renderInline(INLINE, inline)));
}

/** Nothing for a prose without words. */
export const optional = (prose: Prose | undefined): Argument =>
  prose && prose.length > 0 ? proseCode(prose) : undefined;

/** A text as it is: where it is joined with others, a string does as well as an element, and costs less. */
export function textCode(value: string): Raw {
  return raw(stringLiteral(value));
}

/** `fig-lines` sets the unit below the value. */
export function figureCode(figure: Figure, name: 'fig' | 'fig-lines' = 'fig'): Raw {
  return call(name, [figure.value, figure.unit], { loud: figure.loud });
}

function quantityCode(quantity: Quantity): Raw {
  return call(
    'quantity',
    [figureCode(quantity.primary)],
    quantity.secondary ? { b: figureCode(quantity.secondary) } : {},
  );
}

const bold = (children: readonly Inline[]) => call('strong', [proseCode(children)]);

/** With the mark that running text has, too, where a translation is missing. */
export const markedTitle = (title: string, language: Language | undefined): string =>
  language === undefined ? title : `${title}\u00A0[${language}]`;

/** A title of its own; `language` of one that has no translation. */
export const titleCode = (title: string, language: Language | undefined): Raw =>
  language === undefined ? textCode(title) : inLanguage(language, textCode(title));

/** What a reader aloud is to say in another language than the rest. */
const inLanguage = (language: Language, code: Raw): Raw => call('text', [code], { lang: language });

/** A space that does not part serves where there is no hyphen, which would part all the same. */
function runCode({ text, whole }: Run): Raw {
  if (!whole) return textCode(text);
  return text.includes('-') ? call('box', [textCode(text)]) : textCode(text.replaceAll(' ', '\u00A0'));
}

const INLINE: InlineRenderers<Raw> = {
  text: (inline) => sequence(runsOf(inline.text).map(runCode)),
  strong: (inline) => bold(inline.children),
  emphasis: (inline) => call('emph', [proseCode(inline.children)]),
  // The shipped family has no fixed pitch; quotation by weight keeps codes apart from the sentence.
  code: (inline) => call('strong', [textCode(inline.text)]),
  thing: (inline) => {
    const strong = call('strong', [textCode(inline.text)]);
    return inline.language === undefined ? strong : inLanguage(inline.language, strong);
  },
  quantity: (inline) => quantityCode(inline.quantity),
  line: (inline) => textCode(inline.text),
  link: (inline) => call('link', [inline.href, proseCode(inline.children)]),
  foreign: (inline) => inLanguage(inline.language, proseCode(inline.children)),
};
