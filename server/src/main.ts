// The server as a program of its own: what an editor starts by IPC, and `node dist/node.js --stdio` by hand.
import { settleEngine } from './engine.js';
import { startServer } from './start.js';

settleEngine();
startServer();
