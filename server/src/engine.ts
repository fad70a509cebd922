// How eagerly the engine compiles. The bounds of Node 20's are made for programs that run one thing for minutes; ours runs
// much code for seconds, in several threads, and spent a third of a build on compiling what hardly ran again. The engines
// of later Nodes wait longer by themselves.
import { setFlagsFromString } from 'node:v8';

/** The engine that has these bounds: V8 of Node 20. Others complain of bounds they do not know. */
const ENGINE = '11.';
/**
 * Bytes of code that a function runs through before it is compiled well (the engine's own: 132 kB), and bytes of others that
 * are compiled into it (920). Measured: a build of 250 pages takes three quarters of the time, one of 1,000 pages nine
 * tenths, and an edit is answered as quickly. Larger bounds make long runs slower, smaller ones short runs.
 */
const BOUNDS = ['--interrupt-budget=250000', '--max-inlined-bytecode-size-cumulative=250'];

/** Code that has not run for a while is not thrown away: what a program keeps for its next start would lack what it starts with. */
const KEPT = '--no-flush-bytecode';
/**
 * How far the heap grows beyond what it holds before it is cleared, in percent, where memory is held down. By itself it
 * grows to four times as much. Measured: 1,000 prints take a third less memory in the program, and 2 % longer.
 */
const HELD = '--heap-growing-percent=100';

interface Settling {
  /** The program keeps what was compiled for its next start. */
  readonly keepsCode?: boolean;
  /** The work leaves much behind and holds little, and stands beside other processes that need memory too. */
  readonly holdsMemory?: boolean;
}

/** Before any of the program runs, and before kept code is read: the engine takes only what was compiled under the same bounds. */
export function settleEngine({ keepsCode = false, holdsMemory = false }: Settling = {}): void {
  if (!process.versions.v8.startsWith(ENGINE)) return;
  const more = [...(keepsCode ? [KEPT] : []), ...(holdsMemory ? [HELD] : [])];
  for (const bound of [...BOUNDS, ...more]) setFlagsFromString(bound);
}
