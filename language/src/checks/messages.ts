// The signal-word messages of a job in the order written, with the text each one prints.
import { everyLine, type Job } from '../names/job.js';
import type { MessageLine } from '../syntax/tree.js';
import { once } from '../text/once.js';
import { type WorkLine, workLines } from './own-lines.js';

export interface Message {
  readonly line: MessageLine;
  readonly work: WorkLine;
  readonly text: string;
}

/** The messages among the job's own lines of work; a shared one brings the text of its entry. */
export const messagesOf = once((job: Job): readonly Message[] => {
  const found: Message[] = [];
  for (const work of workLines(job))
    if (work.line.kind === 'message')
      found.push({ line: work.line, work, text: messageText(job, work.line) });
  return found;
});

/** What the message says: its own text, or title and text of the shared message it names. */
function messageText(job: Job, line: MessageLine): string {
  const shared = line.reference ? job.scope.resolve(line.reference.text)?.line : undefined;
  const parts = shared ? [...everyLine([shared])].map((l) => l.prose?.text) : [];
  return [line.prose?.text, ...parts].filter((t) => t !== undefined).join('\n');
}
