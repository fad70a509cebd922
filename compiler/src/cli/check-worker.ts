// A thread that checks some files of a library and answers once with their findings.
import { parentPort, workerData } from 'node:worker_threads';
import { checkFiles } from './check.js';
import { openLibrary } from './libraries.js';
import { nodeShell } from './node-shell.js';
import type { CheckChunk, CheckedChunk } from './shell.js';

const { root, hasSettings, asked, files } = workerData as CheckChunk;
const { library } = openLibrary(nodeShell(), root, hasSettings, asked);
const answer: CheckedChunk = { findings: checkFiles(library, files) };
parentPort?.postMessage(answer);
