// The one door of the language: what the compiler, the server and the tests may use.
export * from './analysis.js';
export * from './diagnostics/define.js';
export { DIAGNOSTICS } from './diagnostics/index.js';
export { type Formatted, format, formatRange, sameMeaning } from './format/index.js';
export type { Analysis, Library, LibraryHost } from './library.js';
export * from './quantity/index.js';
export * from './settings/index.js';
export * from './text/line-index.js';
export * from './text/span.js';
export * as trade from './trade/index.js';
export { nearest } from './vocabulary/near.js';
export { LANGUAGES, type Language } from './vocabulary/kinds.js';
export { SIGNAL_WORDS, SIGNALS, type Signal } from './vocabulary/signals.js';
