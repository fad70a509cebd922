// A thread that checks some files of a library and answers once with what it found.
import { parentPort, workerData } from 'node:worker_threads';
import { checkFiles } from './check.js';
import { openLibrary } from './libraries.js';
import { nodeShell } from './node-shell.js';
import type { CheckChunk, CheckedChunk } from './shell.js';

const { root, hasSettings, asked, files } = workerData as CheckChunk;
const shell = nodeShell();
const answer: CheckedChunk = {
  files: checkFiles(shell, openLibrary(shell, root, hasSettings, asked), files),
};
parentPort?.postMessage(answer);
