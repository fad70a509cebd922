// How time grows with lines, options and files: the analysis in process, warm, the least of several runs. Linear growth
// keeps the time per line flat; the last column of a row says by how much it does not.
import { createLibrary, DEFAULT_SETTINGS } from '@baywright/language';
import { bay, catalogue, procedure } from '../content.mjs';

export function growth({ quick }) {
  const runs = quick ? 3 : 5;
  return [
    curve('lines of one procedure', quick ? [500, 2000] : [250, 500, 1000, 2000, 4000, 8000, 16_000], (n) =>
      analysed([bay(procedure('B-1', n))], 0, runs),
    ),
    curve('two-valued options, 2,000 lines', quick ? [0, 20] : [0, 5, 10, 20, 40, 80], (n) =>
      analysed([bay(procedure('B-1', 2000, n))], n, runs),
    ),
    curve('files of 150 lines', quick ? [10, 40] : [25, 50, 100, 200, 400], (n) =>
      analysed(
        Array.from({ length: n }, (_, i) => bay(procedure(`B-${i}`, 150))),
        0,
        runs,
      ),
    ),
  ];
}

function curve(work, sizes, measure) {
  return { work, points: sizes.map((size) => ({ size, ...measure(size) })) };
}

/** Every text is checked in a library of its own size; the first runs warm the engine up. */
function analysed(texts, options, runs) {
  const files = new Map([
    ['catalogue.bay', catalogue(options)],
    ...texts.map((text, i) => [`job-${i}.bay`, text]),
  ]);
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < runs; i++) {
    const library = createLibrary(
      { read: (path) => files.get(path), list: () => [...files.keys()] },
      DEFAULT_SETTINGS,
    );
    const begin = performance.now();
    for (const path of files.keys()) {
      library.analyse(path);
      if (path !== 'catalogue.bay') library.release(path);
    }
    least = Math.min(least, performance.now() - begin);
  }
  const lines = texts.reduce((sum, text) => sum + text.split('\n').length, 0);
  return { ms: least, perLine: (least * 1000) / lines };
}
