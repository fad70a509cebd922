// A checked file as data: entries with their quantities in SI, the work in its one form, what was found.
import {
  type Analysis,
  type Clause,
  clauseWritten,
  everyLine,
  formatMeasure,
  guardWritten,
  numberOf,
  type SpecNode,
  shopFacts,
  type Thing,
  toSI,
  VERSION,
} from '@baywright/language';
import type { CheckedModel, ModelClause, ModelThing } from './model-schema.js';

export function checkedModel(analysis: Analysis): CheckedModel {
  const { model, job, findings } = analysis;
  const { status } = model;
  const review = model.lines.find((line) => line.kind === 'review');
  const count = (severity: string): number =>
    findings.filter((one) => one.file === analysis.path && one.severity === severity).length;
  const imported = [...job.scope.names.values()].filter((thing) => thing.line !== undefined);
  const things = [...new Map([...model.things, ...imported].map((thing) => [thing.id, thing])).values()];
  return {
    format: 1,
    program: VERSION,
    file: model.path,
    kind: model.kind,
    number: model.number ?? null,
    title: model.title,
    status: {
      word: status?.status?.text ?? 'draft',
      by: (status?.by ?? []).map((name) => name.text),
      day: status?.day?.text ?? null,
      note: oneLine(status?.prose?.text),
    },
    review: review?.day?.text ?? null,
    revisions: model.revisions.flatMap((line) =>
      line.number?.value === undefined
        ? []
        : [
            {
              number: numberOf(line.number.value),
              day: line.day?.text ?? null,
              change: oneLine(line.prose?.text),
            },
          ],
    ),
    appliesTo: model.applies.flatMap(({ vehicle, from, to }) =>
      vehicle === undefined
        ? []
        : [
            {
              vehicle: vehicle.text,
              title: job.scope.resolve(vehicle.text)?.title ?? '',
              from: from?.value === undefined ? null : numberOf(from.value),
              to: to?.value === undefined ? null : numberOf(to.value),
            },
          ],
    ),
    sides: [...model.sides],
    uses: job.scope.files.slice(1).map((file) => file.path),
    performs: [...everyLine(model.work)].flatMap((line) =>
      line.kind === 'perform' && line.operation
        ? [{ number: line.from && !line.from.hole ? line.from.text : null, operation: line.operation.text }]
        : [],
    ),
    things: things.filter(({ kind }) => kind !== 'operation').map((thing) => thingData(thing, analysis)),
    work: shopFacts(job).work.map((line) => ({ ...line, line: line.line + 1 })),
    findings: {
      errors: count('error'),
      warnings: count('warning'),
      questions: count('question'),
      hints: count('hint'),
    },
  };
}

const oneLine = (text: string | undefined): string => text?.trim().replace(/\s+/g, ' ') ?? '';

function thingData(thing: Thing, { job }: Analysis): ModelThing {
  const file = job.scope.files.find(({ path }) => path === thing.file) ?? job.file;
  const source = file.tree.text;
  const clauses = [...thing.clauses.values()].flat().map(({ clause, guard }): ModelClause => {
    const quantities = quantitiesOf(clause.spec);
    const names = namesOf(clause);
    return {
      word: clause.word === 'bare' ? 'value' : clause.word,
      written: clauseWritten(source, clause),
      ...(guard === undefined ? {} : { when: guardWritten(source, guard) }),
      ...(quantities.length === 0 ? {} : { quantities }),
      ...(names.length === 0 ? {} : { names }),
    };
  });
  return {
    name: thing.name,
    kind: thing.kind,
    title: thing.title,
    file: thing.file,
    line: (thing.line?.firstLine ?? 0) + 1,
    ...(thing.marks.length === 0 ? {} : { marks: [...thing.marks] }),
    ...(thing.values.length === 0 ? {} : { values: thing.values.map((value) => value.text) }),
    clauses,
  };
}

const namesOf = (clause: Clause): string[] =>
  clause.items.flatMap((item) => [item.name.text, ...item.alternatives.map((other) => other.text)]);

function quantitiesOf(spec: SpecNode | undefined): NonNullable<ModelClause['quantities']> {
  return (spec?.stages ?? []).flatMap(({ back, measure: { measure } }) => {
    if (measure === undefined) return [];
    const { nominal, low, high } = toSI(measure);
    return [
      {
        written: formatMeasure(measure),
        kind: measure.unit.kind,
        ...(back ? { back } : {}),
        ...(nominal === undefined ? {} : { nominal: numberOf(nominal) }),
        ...(low === undefined ? {} : { low: numberOf(low) }),
        ...(high === undefined ? {} : { high: numberOf(high) }),
      },
    ];
  });
}
