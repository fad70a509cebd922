// Sealed joints: which sealant goes where.
import type { Job } from '../names/job.js';
import { resolve } from '../names/job.js';
import type { Thing } from '../names/model.js';
import { clausesOf } from '../names/model.js';
import type { BoundStatement } from '../names/statement.js';

/** The sealant of a part's joint. */
export function sealantOf(job: Job, part: Thing): Thing | undefined {
  return job.relations(part, 'sealed with')[0]?.target;
}

/** The faces a part's joint lies on: the `on` of its `sealed with` line. */
export function facesOf(job: Job, part: Thing): Thing[] {
  const faces: Thing[] = [];
  for (const { line } of clausesOf(part, 'sealed with')) {
    const on = line.clauses.find((c) => c.word === 'on');
    for (const item of on?.items ?? []) {
      const face = resolve(job.scopes, item.name.text);
      if (face && !faces.includes(face)) faces.push(face);
    }
  }
  return faces;
}

/** The parts whose joint a statement wets: `apply SEALANT to FACE`, sealed with it on that face; on any, when the face is not declared. */
export function joinsAt(job: Job, statement: BoundStatement | undefined, supply: Thing): Thing[] {
  const faces = statement?.named('to').flatMap((o) => o.thing ?? []) ?? [];
  return job
    .inverse(supply, 'sealed with')
    .map((r) => r.of)
    .filter(
      (part) =>
        faces.length === 0 || faces.includes(part) || facesOf(job, part).some((f) => faces.includes(f)),
    );
}
