// Writers' prose: inline Markdown with references in braces, turned into running text. Raw HTML is off: what looks
// like a tag comes out as the characters that were typed.
import MarkdownIt from 'markdown-it';
import type { Inline, Prose } from './inline.js';

/** Gives the text for what stands between braces, or nothing when it names nothing: the braces then stay. */
export type ResolveReference = (reference: string) => Prose | undefined;

const ALLOWED_LINK = /^(?:https?:|mailto:)/i;

const markdown = new MarkdownIt('commonmark', { html: false });
// Other addresses (scripts, files, data) stay as typed text.
markdown.validateLink = (address) => ALLOWED_LINK.test(address.trim());

/** Reads inline Markdown: emphasis, strong, code, links. Blocks, pictures and HTML are plain text here. */
export function readProse(source: string, resolve: ResolveReference = () => undefined): Prose {
  const [inline] = markdown.parseInline(source, {});
  const stack: Open[] = [{ close: plainly, children: [] }];
  for (const token of inline?.children ?? []) {
    const open = openers[token.type];
    const isTooDeep = stack.length > DEEPEST;
    if (open) {
      const close = isTooDeep ? plainly : open(String(token.attrGet('href') ?? ''));
      stack.push({ close, children: [] });
    } else if (token.nesting === -1) closeLast(stack);
    else stack.at(-1)?.children.push(...leaf(token.type, token.content, resolve));
  }
  while (stack.length > 1) closeLast(stack);
  return stack[0]?.children ?? [];
}

/** Emphasis in emphasis so deep says no more, and the typesetter refuses it at some sixty. */
const DEEPEST = 8;

const plainly = (children: readonly Inline[]): readonly Inline[] => children;

interface Open {
  readonly close: (children: readonly Inline[]) => readonly Inline[];
  readonly children: Inline[];
}

const openers: Readonly<Record<string, (href: string) => Open['close']>> = {
  strong_open: () => (children) => [{ kind: 'strong', children }],
  em_open: () => (children) => [{ kind: 'emphasis', children }],
  link_open: (href) => (children) => [{ kind: 'link', href, children }],
};

function closeLast(stack: Open[]): void {
  const last = stack.pop();
  if (last) stack.at(-1)?.children.push(...last.close(last.children));
}

function leaf(type: string, content: string, resolve: ResolveReference): readonly Inline[] {
  if (type === 'code_inline') return [{ kind: 'code', text: content }];
  if (type === 'softbreak' || type === 'hardbreak') return [{ kind: 'text', text: ' ' }];
  return splitReferences(content, resolve);
}

function splitReferences(content: string, resolve: ResolveReference): readonly Inline[] {
  return content
    .split(/(\{[^{}]+\})/)
    .filter((part) => part !== '')
    .flatMap((part): Prose => {
      const resolved =
        part.startsWith('{') && part.endsWith('}') ? resolve(part.slice(1, -1).trim()) : undefined;
      return resolved ?? [{ kind: 'text', text: part }];
    });
}
