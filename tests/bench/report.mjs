// The table of a run, for the terminal and for RESULTS.md. The layout depends on the rows alone.
import { cpus, loadavg, release, type as system, totalmem } from 'node:os';

const number = (value) =>
  !Number.isFinite(value)
    ? '–'
    : value >= 100
      ? Math.round(value).toLocaleString('en')
      : value.toPrecision(3);

/** Whether the row reaches its goals; undefined when it has none. */
export function reached({ ours, goal, more, peers }) {
  const verdicts = [
    ...(goal === undefined ? [] : [more ? ours >= goal : ours <= goal]),
    ...peers.filter((p) => p.goal !== undefined).map((p) => ours <= p.goal * p.value),
  ];
  return verdicts.length === 0 ? undefined : verdicts.every(Boolean);
}

function peerText({ ours }, { name, value, goal }) {
  const ratio = (ours / value).toFixed(2);
  return `${name} ${number(value)}: **${ratio} ×**${goal === undefined ? '' : ` (≤ ${goal})`}`;
}

export function table(rows) {
  return [
    '| work | ours | goal | peers in the same run: theirs, our ratio (goal) | |',
    '|---|---:|---:|---|---|',
    ...rows.map((row) => {
      const goal =
        row.goal === undefined ? '' : `${row.more ? '≥' : '≤'} ${row.goal.toLocaleString('en')} ${row.unit}`;
      const verdict = reached(row);
      const peers = row.peers.map((p) => peerText(row, p)).join('; ');
      const note = row.note ? ` (${row.note})` : '';
      return `| ${row.work}${note} | ${number(row.ours)} ${row.unit} | ${goal} | ${peers} | ${verdict === undefined ? '' : verdict ? 'yes' : '**no**'} |`;
    }),
  ].join('\n');
}

/** Why goals are missed, for those that are. */
function reasons(rows) {
  const missed = rows.filter((row) => reached(row) === false);
  if (missed.length === 0) return '';
  const said = missed.map(({ work, why }) => `- **${work}**: ${why ?? 'no reason is known yet.'}`);
  return `\n## Goals that are missed, and why\n\n${said.join('\n')}\n`;
}

export function curves(list) {
  return list
    .map(({ work, points }) =>
      [
        `### ${work[0]?.toUpperCase()}${work.slice(1)}`,
        '',
        '| size | ms | µs per line |',
        '|---:|---:|---:|',
        ...points.map((p) => `| ${p.size.toLocaleString('en')} | ${number(p.ms)} | ${number(p.perLine)} |`),
      ].join('\n'),
    )
    .join('\n\n');
}

export function machine() {
  const [cpu] = cpus();
  return `${cpus().length} cores (${cpu?.model.trim() ?? 'unknown'}), ${Math.round(totalmem() / 2 ** 30)} GB, ${system()} ${release()}, Node ${process.versions.node}; ${loadavg()[0]?.toFixed(1)} programs at work on average in the last minute`;
}

export function results({ rows, growth, day, on }) {
  return `# Benchmark results

${day}, ${on}.

Written by \`npm run bench\`. Milliseconds drift with what else the machine does: ratios to the peers, measured in the same
run on the same content, are what counts. The peers only look at shape or text: no names across files, no state on all
variants, no rules, no trade checks, no wording; ours do all of it.

${table(rows)}
${reasons(rows)}
## Growth

${curves(growth)}
`;
}
