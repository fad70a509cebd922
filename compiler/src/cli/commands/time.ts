// `baywright time`: how long a procedure takes, and what the waiting is.
import { declaredLabour, type JobTime, jobTime, trade } from '@baywright/language';
import { choice, defineCommand } from '../command.js';
import type { Shelf } from '../libraries.js';
import { oneProcedure } from '../one-procedure.js';
import { relativeTo } from '../paths.js';

export default defineCommand({
  name: 'time',
  summary: 'tell how long a procedure takes: hands on, waiting, in all',
  docs: `Adds up the usual minutes of the steps and the waits among them, on the way where every test passes, once for each labour line: one side, where a job has sides. Work that goes on while something cures or settles costs no time; where a wait decides, its line is named.

The usual minutes are those of the bare work (common practice). A shop's own figure is one to four times as long: fetching, cleaning up, what will not come off. The exit code is 1 where a declared figure is far outside that.`,
  takes: [{ name: 'file', docs: 'a procedure' }],
  options: {
    format: choice('-f, --format <form>', 'how it is written', ['text', 'json'], 'text'),
  },
  examples: [
    ['baywright time procedures/FD-05-final-drive-cover.bay', 'one procedure'],
    ['baywright time FD-05.bay --format json', 'for another program'],
  ],
  run({ shell, paint }, [file = ''], { format }) {
    const { run, shelf, path } = oneProcedure(shell, file);
    const declared = declaredLabour(run);
    const rows = declared.length > 0 ? declared : [{ time: jobTime(run) }];
    const data = rows.map(
      (row): Told =>
        'verdict' in row
          ? { ...told(shelf, row.time), declaredMin: row.declaredMin, verdict: row.verdict }
          : told(shelf, row.time),
    );
    if (format === 'json') {
      const shown = relativeTo(shell.folder, shell.resolve(file));
      shell.out.write(`${JSON.stringify({ file: shown, times: data }, undefined, 2)}\n`);
    } else shell.out.write(`${data.map((one) => asText(one, path, paint.bold)).join('\n\n')}\n`);
    return data.some(({ verdict = 'agrees' }) => verdict !== 'agrees') ? 1 : 0;
  },
});

interface Told {
  readonly variants?: string;
  readonly handsOnMin: number;
  readonly waitingMin: number;
  readonly elapsedMin: number;
  /** Minutes of clocks that ran while other work went on. */
  readonly overlappedMin: number;
  readonly waits: readonly {
    readonly file: string;
    readonly line: number;
    readonly text: string;
    readonly min: number;
  }[];
  readonly declaredMin?: number;
  readonly verdict?: trade.LabourCheck['verdict'];
}

function told({ library }: Shelf, time: JobTime): Omit<Told, 'declaredMin' | 'verdict'> {
  const { variants } = time;
  return {
    ...(variants === undefined ? {} : { variants }),
    handsOnMin: tenths(time.handsOnMin),
    waitingMin: tenths(time.waitingMin),
    elapsedMin: tenths(time.elapsedMin),
    overlappedMin: tenths(time.overlappedMin),
    waits: time.waits.map(({ act, min }) => ({
      file: act.file,
      line: act.line.firstLine + 1,
      text: library.tree(act.file)?.text.slice(act.line.code.start, act.line.code.end) ?? '',
      min: tenths(min),
    })),
  };
}

const tenths = (minutes: number): number => Math.round(minutes * 10) / 10;

const VERDICTS: Readonly<Record<trade.LabourCheck['verdict'], string>> = {
  agrees: '',
  'too short': ', far too short for these steps',
  'too long': ', far too long for these steps',
};

function asText(time: Told, own: string, bold: (text: string) => string): string {
  const { timeText } = trade;
  const { declaredMin, verdict = 'agrees' } = time;
  const rows: [string, string][] = [
    ...(declaredMin === undefined
      ? []
      : [['Declared', `${timeText(declaredMin)}${VERDICTS[verdict]}`] as [string, string]]),
    ['Hands on', `${timeText(time.handsOnMin)}, the bare work`],
    ['Waiting', time.waitingMin > 0 ? timeText(time.waitingMin) : 'none'],
    ['In all', timeText(time.elapsedMin)],
    ...time.waits.map(({ file, line, text, min }, i): [string, string] => [
      i === 0 ? 'Waits' : '',
      `${timeText(min)} at ${file === own ? 'line' : `${file}, line`} ${line}: ${text}`,
    ]),
  ];
  const head = time.variants === undefined ? [] : [bold(`When ${time.variants}`)];
  return [...head, ...rows.map(([name, value]) => `${name.padEnd(10)}${value}`)].join('\n');
}
