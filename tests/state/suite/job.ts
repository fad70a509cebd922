// Small jobs for the state suite: things declared above, one step of work below, the findings of the state marked in it.
import { test } from 'vitest';
import type { Finding } from '../../../language/src/diagnostics/define.js';
import { checkMarked, findingsOf } from '../../suite-helper.js';

/** Findings of the state analysis: sequence and state, posture and stages, things that are not there. */
export function ofState(files: ReadonlyMap<string, string>): Finding[] {
  return findingsOf(files).filter((f) => /^(S[1-4]|F30|V101)/.test(f.code) && f.code !== 'S404');
}

/** A procedure from its declarations and its lines of work, which stand in one step unless they open their own. */
export function job(things: string, work: string): string {
  const steps = work.startsWith('  ')
    ? work
    : work
        .split('\n')
        .map((l) => (l === '' || l.startsWith('#') ? l : `    ${l}`))
        .join('\n');
  return `procedure A-1: Job\n\n${things.trim()}\n\nremoval\n  step: Work\n${steps}\n`;
}

/** One example: exactly the marked findings, nothing else. */
export function example(name: string, things: string, work: string): void {
  test(name, () => {
    checkMarked(job(things, work.replace(/^\n|\n\s*$/g, '')), ofState);
  });
}
