// L401 to L403: sealants with their times, seals that go back, part numbers of what is renewed.
import { type Finding, finding } from '../diagnostics/define.js';
import { sealantWithoutTimes } from '../diagnostics/l401-sealant-without-times.js';
import { sealNotRenewed } from '../diagnostics/l402-seal-not-renewed.js';
import { partNumberMissing } from '../diagnostics/l403-part-number-missing.js';
import { threadText } from '../names/figures.js';
import type { Job } from '../names/job.js';
import { hasClause, nameSpan, type Thing } from '../names/model.js';
import type { Check } from './check.js';
import { insertClause, workStatements } from './own-lines.js';

const CLOCKS = ['fit within', 'torque after', 'fill after', 'run after'];

/** Last words of names, and marks, of what seldom seals twice; common practice. */
const ONE_TIME = new Set([
  'gasket',
  'seal',
  'o-ring',
  'oring',
  'ring-seal',
  'sealing-ring',
  'crush-washer',
  'sealing-washer',
  'copper-washer',
  'one-time',
  'single-use',
]);

/** A name that is one of the words or ends with it. */
const ONE_TIME_NAME = new RegExp(`(?:^|-)(?:${[...ONE_TIME].join('|')})$`);

export const sealsAndSupplies: Check = ({ job, library }) => [
  ...job.file.things
    .filter((t) => t.kind === 'supply' && hasClause(t, 'sealant'))
    .flatMap((t) => clockFindings(job, t)),
  ...sealFindings(job),
  ...(library.settings.release.partNumbers ? numberFindings(job) : []),
];

function clockFindings(job: Job, supply: Thing): Finding[] {
  const span = nameSpan(supply);
  return span && !CLOCKS.some((word) => hasClause(supply, word))
    ? [finding(sealantWithoutTimes, { file: job.file.path, span }, { name: supply.name })]
    : [];
}

/** Retainers that are bent or broken when they come off; common practice. */
const BENT_ONCE = /(?:^|-)(?:split-pin|cotter|rivet)$/;

/** Seals and split pins whose own removal, or that of the part they ride in, is in this job, and that are never new. */
function sealFindings(job: Job): Finding[] {
  const seals = job.file.things.filter(
    (t) =>
      (t.kind === 'part' && isOneTime(t)) ||
      (t.kind === 'fastener' && BENT_ONCE.test(threadText(t)?.text ?? '')),
  );
  if (seals.length === 0) return [];
  const removed = new Map<string, { readonly start: number; readonly end: number }>();
  const renewed = new Set<string>();
  for (const { statement } of workStatements(job)) {
    for (const { thing } of statement.objects) {
      const makes = (thing && statement.verb.on[thing.kind]?.makes) ?? [];
      const takesOff = makes.includes('taken off') || makes.includes('out');
      if (takesOff && thing && !removed.has(thing.id)) removed.set(thing.id, statement.line.code);
      if (makes.includes('renewed') && thing) renewed.add(thing.id);
    }
  }
  const { path: file } = job.file;
  return seals.flatMap((thing) => {
    const host = job.relations(thing, 'in').find((r) => removed.has(r.target.id))?.target;
    const at = removed.get(thing.id) ?? (host && removed.get(host.id));
    const span = nameSpan(thing);
    if (!at || !span || !thing.line || hasClause(thing, 'renew') || renewed.has(thing.id)) return [];
    const related = [{ file, span: at, message: 'taken off here' }];
    const fixes = [
      { title: `Add \`renew\` to \`${thing.name}\``, edits: [insertClause(job, thing.line, 'renew')] },
    ];
    return [finding(sealNotRenewed, { file, span, related, fixes }, { name: thing.name })];
  });
}

function isOneTime({ name, marks }: Thing): boolean {
  return marks.some((m) => ONE_TIME.has(m)) || ONE_TIME_NAME.test(name);
}

function numberFindings(job: Job): Finding[] {
  const { path: file } = job.file;
  return job.file.things
    .filter(
      (t) =>
        (t.kind === 'part' || t.kind === 'connection') && hasClause(t, 'renew') && !hasClause(t, 'number'),
    )
    .flatMap((thing) => {
      const span = nameSpan(thing);
      if (!span || !thing.line) return [];
      const fixes = [
        {
          title: `Add \`number ?\` to \`${thing.name}\``,
          edits: [insertClause(job, thing.line, 'number ?')],
        },
      ];
      return [finding(partNumberMissing, { file, span, fixes }, { name: thing.name })];
    });
}
