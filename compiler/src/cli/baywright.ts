// The program: one command line, one exit code.
import { run } from './main.js';
import { nodeShell } from './node-shell.js';

// A reader that leaves early (`| head`) is no failure of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0);
  throw error;
});
process.exitCode = await run(process.argv.slice(2), nodeShell());
