// The typesetter's own process: one message in, one message out. It lives apart from the program because the engine
// is native code whose memory grows; the parent ends it and starts another. Plain JavaScript, because it is run as a
// file of the package, whichever way the program itself was built.
import { join } from 'node:path';
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';

const [workspace, fonts] = process.argv.slice(2);
const compiler = NodeCompiler.create({ workspace, fontArgs: [{ fontPaths: [fonts] }] });
const main = join(workspace, 'main.typ');

process.on('message', (job) => {
  process.send({ ...typeset(job), memory: process.memoryUsage().rss });
});

function typeset(job) {
  try {
    compiler.resetShadow();
    compiler.addSource(main, job.main);
    for (const { path, data } of job.pictures) compiler.mapShadow(join(workspace, path), Buffer.from(data));
    const compiled = compiler.compile({ mainFilePath: main, inputs: { conf: job.settings } });
    const document = compiled.result;
    if (!document) return { problems: read(compiled.takeDiagnostics()) };
    const warnings = read(compiled.takeWarnings());
    const pdf = compiler.pdf(document, { pdfStandard: job.standard, creationTimestamp: job.timestamp });
    return { pdf: new Uint8Array(pdf), pages: document.numOfPages, warnings };
  } catch (error) {
    return { problems: [String(error?.message || error?.code || error)] };
  } finally {
    compiler.evictCache(10);
  }
}

function read(error) {
  if (!error) return [];
  return compiler.fetchDiagnostics(error).map(({ path, range, message, hints }) => {
    const place = range ? `${path}:${range.start.line + 1}` : '';
    return [place, message, ...(hints ?? [])].filter(Boolean).join(' ');
  });
}
