// The typesetter's own process: one message in, one message out. It lives apart from the program because the engine
// is native code whose memory grows; the parent ends it and starts another. Plain JavaScript, because it is run as a
// file of the package, whichever way the program itself was built.
import { join } from 'node:path';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';

const [workspace, fonts] = process.argv.slice(2);
/** Loaded here, not at the top: where the engine is not there, every job is answered with the reason. */
const opened = open();
const main = join(workspace, 'main.typ');

/** What a document left in the engine is given back when the script's own side of it is collected, which hardly ever happens by itself: it is small. */
const COLLECT_EVERY = 8;
let done = 0;
let collect;

process.on('message', async (job) => {
  const { compiler, missing } = await opened;
  const answer = compiler ? typeset(compiler, job) : { missing };
  done += 1;
  if (done % COLLECT_EVERY === 0) {
    collect ??= collector();
    collect();
  }
  process.send({ ...answer, memory: process.memoryUsage().rss });
});

/** Asked for here and not when Node starts: with a flag it would start without what it has prepared, which takes longer. */
function collector() {
  setFlagsFromString('--expose-gc');
  return runInNewContext('gc');
}

async function open() {
  try {
    const { NodeCompiler } = await import('@myriaddreamin/typst-ts-node-compiler');
    return { compiler: NodeCompiler.create({ workspace, fontArgs: [{ fontPaths: [fonts] }] }) };
  } catch (error) {
    return { missing: String(error?.message || error?.code || error).split(/\n| imported from /)[0] };
  }
}

function typeset(compiler, job) {
  try {
    compiler.resetShadow();
    compiler.addSource(main, job.main);
    for (const { path, data } of job.pictures) compiler.mapShadow(join(workspace, path), Buffer.from(data));
    const compiled = compiler.compile({ mainFilePath: main, inputs: { conf: job.settings } });
    const document = compiled.result;
    if (!document) return { problems: read(compiler, compiled.takeDiagnostics()) };
    const warnings = read(compiler, compiled.takeWarnings());
    const pdf = compiler.pdf(document, { pdfStandard: job.standard, creationTimestamp: job.timestamp });
    return { pdf: new Uint8Array(pdf), pages: document.numOfPages, warnings };
  } catch (error) {
    return { problems: [String(error?.message || error?.code || error)] };
  } finally {
    // What the same guide needs when it is printed again is kept, and nothing for the next one: no two share a page.
    compiler.evictCache(2);
  }
}

function read(compiler, error) {
  if (!error) return [];
  return compiler.fetchDiagnostics(error).map(({ path, range, message, hints }) => {
    const place = range ? `${path}:${range.start.line + 1}` : '';
    return [place, message, ...(hints ?? [])].filter(Boolean).join(' ');
  });
}
