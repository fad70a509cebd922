// The frame of a report: a page without script and without anything from outside, for the screen and for paper.
import { pageAssets } from './assets.js';
import { el, type Markup, trusted } from './markup.js';

const STYLES = `:root{--paper:#fff;--ink:#111;--soft:#4a4a4a;--tint:#e9e2eb}
@media (prefers-color-scheme:dark){:root{--paper:#17141a;--ink:#f2eef4;--soft:#bdb5c2;--tint:#3a2c40}}
*{box-sizing:border-box}body{margin:0 auto;max-width:60rem;padding:1rem;background:var(--paper);color:var(--ink);font:17px/1.45 system-ui,sans-serif;overflow-wrap:anywhere}
h1{margin:.5rem 0 0}h2{margin:2rem 0 .5rem;border-bottom:2px solid}h2 small,.more,.applies{color:var(--soft);font-weight:400}
dl{display:flex;flex-wrap:wrap;gap:.5rem 2rem}dt{color:var(--soft)}dd{margin:0;font-size:1.6rem;font-weight:800}
ol{list-style:none;margin:0;padding:0}li{margin:0 0 1rem;padding-left:.75rem;border-left:3px dotted var(--soft);break-inside:avoid}
li.error{border-left:8px solid var(--ink)}li.warning{border-left:3px solid var(--ink)}
.said,.more{margin:0}pre{margin:.25rem 0;white-space:pre-wrap;background:var(--tint);padding:.4rem .6rem;font-size:.9rem}
mark{background:none;color:inherit;font-weight:800;border-bottom:3px solid}
@media print{body{font-size:11pt;max-width:none;padding:0}}`;

export function reportFrame(title: string, main: Markup): string {
  const { hash } = pageAssets();
  const policy = `default-src 'none'; style-src 'sha256-${hash(STYLES)}'; base-uri 'none'; form-action 'none'`;
  const page = el(
    'html',
    { lang: 'en' },
    el(
      'head',
      {},
      el('meta', { charset: 'utf-8' }),
      el('meta', { 'http-equiv': 'Content-Security-Policy', content: policy }),
      el('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
      el('meta', { name: 'color-scheme', content: 'light dark' }),
      el('title', {}, title),
      el('style', {}, trusted(STYLES)),
    ),
    el('body', {}, main),
  );
  return `<!DOCTYPE html>\n${page.markup}\n`;
}
