// The fitting half proposed for the sample procedures brings the vehicle back together: what it writes is checked by
// the same checker, after everything the sample itself puts back has been cut away.
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  createLibrary,
  DEFAULT_SETTINGS,
  fittingEdits,
  fittingHalf,
  fittingText,
  format,
  stateAt,
  VERBS,
} from '../../language/src/index.js';
import { afterFix } from '../suite-helper.js';

const ROOT = new URL('../fixtures/design/', import.meta.url);
const files = new Map<string, string>();
for (const folder of ['catalogue', 'house', 'procedures'])
  for (const name of readdirSync(new URL(`${folder}/`, ROOT)))
    files.set(`${folder}/${name}`, readFileSync(new URL(`${folder}/${name}`, ROOT), 'utf8'));

const analyse = (path: string, text: string) => {
  const library = createLibrary(
    { read: (p) => (p === path ? text : files.get(p)), list: () => [...files.keys()] },
    DEFAULT_SETTINGS,
  );
  const analysis = library.analyse(path);
  if (!analysis?.run) throw new Error(`${path} has no work`);
  return { ...analysis, run: analysis.run };
};

const procedures = [...files.keys()].filter((p) => p.startsWith('procedures/') && !p.includes('WH-01'));

/** The lines proposed for a piece of work, its things declared. */
function proposedFor(work: string): string[] {
  const text = `procedure X-1: Hose, renew

parts
  hose: Hose
    held by hose-clamp
    once

fasteners
  hose-clamp: Hose clamp
    1 of clamp, hex 7 mm
    torque 3 N·m, per "S-1"
    once

sources
  S-1: Sheet

temporary
  dust-cap: Dust cap

tools
  strap: Strap

removal
  step: Take it off
${work}`;
  const { installation, completion } = fittingHalf(analyse('procedures/X-1.bay', text).run);
  return [...installation, ...completion].flatMap((step) => step.lines);
}

const PUMP = `procedure X-2: Pump, renew

parts
  pump: Feed pump, with strainer
    held by pump-bolt
  cover: Pump cover
    held by cover-clip
    behind tray
  tray: Undertray
    held by tray-screw

connections
  feed-hose: Feed hose
    on pump, held by hose-clamp
  battery-negative: Battery negative lead
    marked battery-negative

fasteners
  pump-bolt: Pump bolts
    2 of M6x1.0, class 8.8, hex 10 mm
    torque 10 N·m, per "S-1"
  hose-clamp: Hose clamp
    1 of clamp, hex 7 mm
    torque 3 N·m, per "S-1"
    behind cover
  cover-clip: Cover clips
    3 of clip
    no torque
  tray-screw: Tray screws
    4 of M6x1.0, class 8.8, hex 10 mm
    torque 8 N·m, per "S-1"

sources
  S-1: Sheet

temporary
  rag: Clean rag
    behind cover
  block: Timber block

removal
  step: Take it off
    place block on tray
    remove tray-screw, tray
    disconnect battery-negative
    remove cover-clip, cover
    loosen hose-clamp
    disconnect feed-hose
    cap feed-hose
    remove pump-bolt, pump
    place rag on pump
`;
/** The cover waits for the clamp behind it, the battery for all else; the cap comes off when the hose goes on. */
const PUMP_BACK = `installation
  step: Fit the feed pump
    remove rag
    install pump, pump-bolt
    torque pump-bolt
  step: Connect the feed hose
    uncap feed-hose
    connect feed-hose
    install hose-clamp
    torque hose-clamp
  step: Fit the pump cover and the undertray
    install cover, cover-clip, tray, tray-screw
    torque tray-screw
  step: Connect the battery negative lead
    remove block
    connect battery-negative
`;

describe('the fitting half', () => {
  test('takes away what was put on for the job, tags and ties too', () => {
    expect(proposedFor('    tag vehicle\n    tie hose with strap\n    place dust-cap on hose\n')).toEqual(
      expect.arrayContaining(['untag vehicle', 'untie hose', 'remove dust-cap']),
    );
  });
  test('ends, whatever was left undone', () => {
    for (const verb of VERBS)
      for (const thing of ['vehicle', 'suspension', 'hose', 'hose-clamp', 'dust-cap'])
        expect(proposedFor(`    ${verb.word} ${thing}\n`).length, verb.word).toBeLessThan(10);
  });
  test('names its steps as a technician does, and puts each thing back when its turn comes', () => {
    const half = fittingHalf(analyse('procedures/X-2.bay', PUMP).run);
    expect(fittingText(half)).toBe(PUMP_BACK);
    expect(half.left).toEqual([]);
  });
  test('what an operation took off is put back by the one beside it', () => {
    const text = files.get('procedures/FH-12-front-hub.bay') ?? '';
    const half = `${text.slice(0, text.indexOf('\npreparation'))}\nremoval\n  perform wheel-off from WH-01\n`;
    expect(fittingText(fittingHalf(analyse('procedures/FH-12-front-hub.bay', half).run))).toContain(
      'installation\n  perform wheel-on from WH-01\n',
    );
  });
  for (const path of procedures) {
    test(`of ${path}`, () => {
      const whole = files.get(path) ?? '';
      const half = whole.slice(0, whole.indexOf('\ninstallation') + 1);
      const { run } = analyse(path, half);
      const before = stateAt(run, half.length)
        .filter((f) => f.group === 'off' || f.group === 'disconnected')
        .map((f) => f.thing.name);
      const proposed = fittingHalf(run);
      const written = fittingText(proposed);
      const after = analyse(path, `${half}${written}`);
      const left = new Set(proposed.left.map((t) => t.name));
      const still = stateAt(after.run, Number.MAX_SAFE_INTEGER).filter(
        (f) =>
          ['off', 'hung', 'disconnected', 'capped', 'untorqued', 'raised', 'placed'].includes(f.group) &&
          !left.has(f.thing.name),
      );
      expect(before.length).toBeGreaterThan(0);
      expect(still.map((f) => `${f.thing.name} ${f.group}`)).toEqual([]);
      const order = after.findings.filter(
        (f) => f.severity === 'error' && f.span.start >= half.length && /^S[12]/.test(f.code),
      );
      expect(order.map((f) => `${f.code} ${f.message}`)).toEqual([]);
    });
  }
});

/** A sample without what it puts back itself. */
const withoutHalf = (text: string): string =>
  `${text.replace(/^(?:installation|completion)\n(?:(?: .*)?\n)*/gm, '').trimEnd()}\n`;

describe('what is proposed for the samples leaves nothing off, open, out of order or up', () => {
  const samples = new URL('../../samples/', import.meta.url);
  const library = new Map<string, string>();
  for (const folder of ['catalogue', 'house', 'procedures'])
    for (const name of readdirSync(new URL(`${folder}/`, samples)))
      if (name.endsWith('.bay'))
        library.set(`${folder}/${name}`, readFileSync(new URL(`${folder}/${name}`, samples), 'utf8'));
  const open = (path: string, text: string) =>
    createLibrary(
      { read: (p) => (p === path ? text : library.get(p)), list: () => [...library.keys()] },
      DEFAULT_SETTINGS,
    ).analyse(path);
  for (const [path, text] of library) {
    const half = withoutHalf(text);
    const analysis = path.startsWith('procedures/') ? open(path, half) : undefined;
    if (!analysis?.run) continue;
    test(path, () => {
      const edits = analysis.run ? fittingEdits(analysis.model, fittingHalf(analysis.run)) : [];
      const whole = afterFix(new Map([[path, half]]), edits).get(path) ?? '';
      const found = open(path, whole)?.findings.filter(({ code }) => /^(?:G|S[123])/.test(code));
      expect(found?.map(({ code, message }) => `${code} ${message}`)).toEqual([]);
      expect(format(half, path).text === half && format(whole, path).text).toBe(whole);
    });
  }
});
