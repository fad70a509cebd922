// Cleans a drawing that a writer brings along: what draws stays, what runs, loads or reaches outside goes. An allow
// list, because a list of known dangers is never complete.
import sax from 'sax';
import { partCount } from './drawing-parts.js';
import { pixelProblem, rasterSize } from './raster-size.js';

export interface CleanSvg {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
  /** What was left out, each once, for a finding. */
  readonly removed: readonly string[];
}

const ELEMENTS = new Set([
  'svg',
  'g',
  'defs',
  'symbol',
  'use',
  'title',
  'desc',
  'path',
  'rect',
  'circle',
  'ellipse',
  'line',
  'polyline',
  'polygon',
  'text',
  'tspan',
  'textPath',
  'linearGradient',
  'radialGradient',
  'stop',
  'clipPath',
  'mask',
  'pattern',
  'marker',
  'image',
]);

/** Attributes of SVG 1.1 that place and paint. */
const ATTRIBUTES = new Set([
  'id',
  'class',
  'x',
  'y',
  'x1',
  'y1',
  'x2',
  'y2',
  'cx',
  'cy',
  'r',
  'rx',
  'ry',
  'fx',
  'fy',
  'dx',
  'dy',
  'd',
  'points',
  'width',
  'height',
  'viewBox',
  'preserveAspectRatio',
  'transform',
  'gradientTransform',
  'gradientUnits',
  'patternUnits',
  'patternTransform',
  'patternContentUnits',
  'spreadMethod',
  'offset',
  'clipPathUnits',
  'maskUnits',
  'maskContentUnits',
  'markerWidth',
  'markerHeight',
  'markerUnits',
  'refX',
  'refY',
  'orient',
  'startOffset',
  'textLength',
  'lengthAdjust',
  'rotate',
  'xml:space',
  'version',
  'fill',
  'fill-opacity',
  'fill-rule',
  'clip-rule',
  'stroke',
  'stroke-width',
  'stroke-opacity',
  'stroke-linecap',
  'stroke-linejoin',
  'stroke-miterlimit',
  'stroke-dasharray',
  'stroke-dashoffset',
  'opacity',
  'stop-color',
  'stop-opacity',
  'color',
  'display',
  'visibility',
  'font-family',
  'font-size',
  'font-weight',
  'font-style',
  'text-anchor',
  'dominant-baseline',
  'letter-spacing',
  'word-spacing',
  'text-decoration',
  'clip-path',
  'mask',
  'marker-start',
  'marker-mid',
  'marker-end',
  'vector-effect',
  'href',
  'xlink:href',
  'style',
  'paint-order',
]);

/** Frames deeper than this are not drawings. */
const DEEPEST = 200;

/**
 * Reads and cleans an SVG. Gives a message for the writer when it is not a readable drawing: no XML, no `svg` at its
 * root, or no size.
 */
export function cleanSvg(source: string): CleanSvg | { readonly problem: string } {
  const removed = new Set<string>();
  let out = '';
  let depth = 0;
  let skipping = 0;
  let size: { width: number; height: number } | undefined;
  let problem: string | undefined;
  const parts = partCount();
  const parser = sax.parser(true);
  parser.onopentag = ({ name, attributes }) => {
    depth++;
    if (depth === 1 && name !== 'svg') problem = 'is not an SVG drawing';
    if (depth > DEEPEST) problem = 'is nested too deeply';
    if (skipping > 0 || !ELEMENTS.has(name)) {
      if (skipping === 0) removed.add(`<${name}>`);
      skipping++;
      return;
    }
    const kept = Object.entries(attributes)
      .map(([key, value]) => [key, String(value)] as const)
      .filter(([key, value]) => keeps(name, key, value, removed));
    const attribute = (key: string): string | undefined => kept.find(([name]) => name === key)?.[1];
    parts.open(attribute('id'), name === 'use' ? (attribute('href') ?? attribute('xlink:href')) : undefined);
    if (name === 'image') problem ??= embeddedProblem(attribute('href') ?? attribute('xlink:href'));
    if (depth === 1) size = sizeOf(attributes as Readonly<Record<string, string>>);
    const names =
      depth === 1 ? ' xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink"' : '';
    out += `<${name}${names}${kept.map(([key, value]) => ` ${key}="${escapeXml(value)}"`).join('')}>`;
  };
  parser.onclosetag = (name) => {
    depth--;
    if (skipping > 0) {
      skipping--;
      return;
    }
    parts.close();
    out += `</${name}>`;
  };
  const text = (value: string) => {
    if (skipping === 0) out += escapeXml(value);
  };
  parser.ontext = text;
  parser.oncdata = text;
  parser.onerror = (error) => {
    problem ??= `is not well-formed XML: ${error.message.split('\n')[0]}`;
    parser.resume();
  };
  parser.write(source.replace(/^\uFEFF/, '')).close();
  problem ??= parts.problem();
  if (problem) return { problem };
  if (!size) return { problem: 'has no size that can be used: give it a viewBox, or a width and a height' };
  return { svg: out, ...size, removed: [...removed] };
}

function keeps(element: string, name: string, value: string, removed: Set<string>): boolean {
  if (name === 'xmlns' || name.startsWith('xmlns:')) return false;
  if (!ATTRIBUTES.has(name)) {
    // Editors leave their own attributes behind; only what could act is worth telling.
    if (name.toLowerCase().startsWith('on')) removed.add(name);
    return false;
  }
  const isReference = name === 'href' || name === 'xlink:href';
  const fine = isReference ? isInside(element, value) : !reachesOut(value);
  if (!fine) removed.add(`${name}="${value.slice(0, 40)}"`);
  return fine;
}

/** References stay inside the drawing; an image may carry its own pixels. */
function isInside(element: string, value: string): boolean {
  const address = value.trim();
  return (
    address.startsWith('#') ||
    (element === 'image' && /^data:image\/(?:png|jpeg|webp);base64,[\w+/=\s]*$/.test(address))
  );
}

/** What is wrong with the pixels that a drawing carries in itself. */
function embeddedProblem(address: string | undefined): string | undefined {
  const [, base64] = /^\s*data:[^,]*,([\w+/=\s]*)$/.exec(address ?? '') ?? [];
  if (base64 === undefined) return undefined;
  const size = rasterSize(Uint8Array.from(atob(base64), (character) => character.charCodeAt(0)));
  const found = size ? pixelProblem(size) : 'is damaged';
  return found && `holds a picture that ${found}`;
}

/** Styles and paints that load something: `url(` to anything but a part of the drawing, imports, old script forms. */
function reachesOut(value: string): boolean {
  const plain = value.replace(/\/\*[\s\S]*?\*\//g, '').replaceAll(/\\/g, '');
  return (
    /url\(\s*['"]?\s*(?!#|['"])/i.test(plain) ||
    /@import|expression\s*\(|javascript:|-moz-binding/i.test(plain)
  );
}

function sizeOf(attributes: Readonly<Record<string, string>>): { width: number; height: number } | undefined {
  const box = (attributes.viewBox ?? '')
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  const [, , boxWidth = 0, boxHeight = 0] = box;
  if (isSize(boxWidth) && isSize(boxHeight)) return { width: boxWidth, height: boxHeight };
  if (attributes.viewBox !== undefined) return undefined;
  const [width, height] = [
    Number.parseFloat(attributes.width ?? ''),
    Number.parseFloat(attributes.height ?? ''),
  ];
  return isSize(width) && isSize(height) ? { width, height } : undefined;
}

/** Beyond these ends a renderer counts wrongly; no drawing is that small or large. */
const isSize = (units: number): boolean => units >= 1e-3 && units <= 1e7;

function escapeXml(value: string): string {
  return value
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}
