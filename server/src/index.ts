// The door of the server: how a program starts it and lends it what makes guides.
export { type GuideSource, type Renderers, registerRenderers } from './renderers.js';
export { startServer } from './start.js';
