// The server as a worker script of its own, without what makes guides.
import { startWorkerServer } from './start-worker.js';

startWorkerServer();
