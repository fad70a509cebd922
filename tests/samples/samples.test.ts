// The sample libraries are clean, formatted and of a size that a shop would print, and together they use the whole
// language: every verb, clause, section, head, rule form, kind of quantity and family of vehicles.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { libraryFindings } from '../../language/src/checks/library-wide.js';
import { format } from '../../language/src/format/index.js';
import type { Library } from '../../language/src/library.js';
import { everyLine } from '../../language/src/names/job.js';
import { quantityKinds } from '../../language/src/quantity/index.js';
import type { Line } from '../../language/src/syntax/tree.js';
import { indexLines, positionAt } from '../../language/src/text/line-index.js';
import { VERBS } from '../../language/src/verbs/index.js';
import { ENTRY_CLAUSES, STEP_CLAUSES } from '../../language/src/vocabulary/clauses.js';
import { HEADS } from '../../language/src/vocabulary/heads.js';
import { SECTIONS } from '../../language/src/vocabulary/sections.js';
import { LIBRARIES, SAMPLES, sampleLibrary } from './sample-library.js';

for (const [name, root] of LIBRARIES) {
  const { library, files } = sampleLibrary(root);
  describe(`the ${name} sample library`, () => {
    it.each(files)('%s has no finding', (path) => {
      expect(findingsOf(library, path)).toEqual([]);
    });

    it('has no finding as a whole: nothing unused, nothing declared twice', () => {
      expect(
        libraryFindings(library, files).map(({ file, code, message }) => `${file} ${code} ${message}`),
      ).toEqual([]);
    });

    it.each(files)('%s is formatted', (path) => {
      const text = library.host.read(path) ?? '';
      expect(format(text, path).text).toBe(text);
    });

    it.each(files)('%s points at pictures and films that exist', (path) => {
      const folder = join(root, path, '..');
      for (const line of everyLine(library.tree(path)?.lines ?? [])) {
        if (line.kind !== 'picture' && line.kind !== 'clip') continue;
        expect(existsSync(join(folder, line.path?.text ?? '?')), `${path}: ${line.path?.text}`).toBe(true);
      }
    });

    it.each(files.filter((path) => path.startsWith('procedures/')))(
      '%s is as long as a shop writes it',
      (path) => {
        const lines = (library.host.read(path) ?? '').split('\n').length;
        expect(lines).toBeGreaterThanOrEqual(60);
        expect(lines).toBeLessThanOrEqual(400);
      },
    );
  });
}

describe('together the samples use', () => {
  const lines = LIBRARIES.flatMap(([, root]) => {
    const { library, files } = sampleLibrary(root);
    return files.flatMap((path) => [...everyLine(library.tree(path)?.lines ?? [])]);
  });
  const missing = (all: readonly string[], used: Iterable<string>): string[] => {
    const set = new Set(used);
    return all.filter((word) => !set.has(word));
  };

  it('every verb', () => {
    const used = lines.flatMap((line) => (line.kind === 'statement' ? [line.verb.text] : []));
    expect(
      missing(
        VERBS.map((verb) => verb.word),
        used,
      ),
    ).toEqual([]);
  });

  it('every clause of an entry', () => {
    const entries = lines.filter((line) => line.kind === 'entry').flatMap((line) => line.children);
    const used = entries
      .flatMap((line) => clauseLines(line))
      .flatMap((line) => line.clauses.map((clause) => clause.word));
    expect(
      missing(
        ENTRY_CLAUSES.map((clause) => clause.word),
        used,
      ),
    ).toEqual([]);
  });

  it('every clause of a statement', () => {
    const used = lines.flatMap((line) =>
      line.kind === 'statement' ? line.clauses.map((clause) => clause.word) : [],
    );
    const sides = lines.flatMap((line) => (line.kind === 'perform' && line.side ? ['side'] : []));
    expect(
      missing(
        STEP_CLAUSES.map((clause) => clause.word),
        [...used, ...sides],
      ),
    ).toEqual([]);
  });

  it('every section', () => {
    const used = lines.flatMap((line) => (line.kind === 'section' ? [line.word] : []));
    expect(
      missing(
        SECTIONS.map((section) => section.word),
        used,
      ),
    ).toEqual([]);
  });

  it('every head', () => {
    const used = lines.flatMap((line) => [
      line.kind,
      ...(line.kind === 'text' ? [line.word] : []),
      ...(line.kind === 'message' ? [line.signal] : []),
    ]);
    expect(
      HEADS.filter(
        (head) =>
          !used.includes(head.kind === 'text' || head.kind === 'message' ? (head.word as never) : head.kind),
      ).map((head) => head.word),
    ).toEqual([]);
  });

  it('every form of rule', () => {
    const used = lines
      .flatMap((line) => (line.kind === 'rule' ? line.clauses : []))
      .map((clause) => {
        if (clause.word === 'require')
          return clause.wait
            ? 'require wait'
            : clause.message
              ? `require ${clause.message}`
              : 'require an act';
        return 'until' in clause && clause.until ? `before ${clause.until}` : clause.word;
      });
    const forms = [
      'after',
      'before',
      'never',
      'every',
      'require an act',
      'require wait',
      'require warning',
      'require hold',
      'before next',
      'before step ends',
      'since',
      'while',
      'needs',
      'at most once',
    ];
    expect(missing(forms, used)).toEqual([]);
  });

  it('every kind of quantity', () => {
    const used = new Set<string>();
    for (const line of lines) for (const kind of kindsIn(line)) used.add(kind);
    expect(missing(Object.keys(quantityKinds), used)).toEqual([]);
  });

  it('guards by option, by several values, by year, by side and by two terms', () => {
    const guards = lines.flatMap((line) => ('guard' in line && line.guard ? [line.guard] : []));
    expect(guards.some((guard) => guard.only)).toBe(true);
    expect(guards.some((guard) => guard.terms.length > 1)).toBe(true);
    expect(guards.some((guard) => guard.terms.some((term) => term.years))).toBe(true);
    expect(guards.some((guard) => guard.terms.some((term) => term.option.text === 'side'))).toBe(true);
    expect(guards.some((guard) => guard.terms.some((term) => term.values.length > 1))).toBe(true);
  });

  it('at least fourteen procedures over three kinds of machine', () => {
    const { library, files } = sampleLibrary(SAMPLES);
    const procedures = files
      .flatMap((path) => library.model(path) ?? [])
      .filter((model) => model.kind === 'procedure');
    expect(procedures.length).toBeGreaterThanOrEqual(14);
    expect(
      new Set(procedures.flatMap((model) => model.applies.map((line) => line.vehicle?.text))).size,
    ).toBeGreaterThanOrEqual(3);
  });
});

/** Findings as `path:line:column CODE message`, so that a failure reads as the command's report does. */
function findingsOf(library: Library, path: string): string[] {
  return (library.analyse(path)?.findings ?? []).map((finding) => {
    const at = positionAt(indexLines(library.host.read(finding.file) ?? ''), finding.span.start);
    return `${finding.file}:${at.line + 1}:${at.column + 1} ${finding.code} ${finding.message}`;
  });
}

function clauseLines(line: Line): Extract<Line, { kind: 'clauses' }>[] {
  return [...everyLine([line])].filter((each) => each.kind === 'clauses');
}

/** Kinds of the quantities written in one line, its blocks aside. */
function kindsIn(line: Line): string[] {
  const kinds: string[] = [];
  JSON.stringify({ ...line, children: [] }, (_key, value: unknown) => {
    if (isMeasured(value)) kinds.push(value.measure.unit.kind);
    return typeof value === 'bigint' ? Number(value) : value;
  });
  return kinds;
}

function isMeasured(
  value: unknown,
): value is { readonly measure: { readonly unit: { readonly kind: string } } } {
  return (
    typeof value === 'object' &&
    value !== null &&
    'measure' in value &&
    typeof value.measure === 'object' &&
    value.measure !== null &&
    'unit' in value.measure
  );
}
