// The public door of the compiler: guides from documents, and the command for programs that want to run it.
export { run } from './cli/main.js';
export { nodeShell } from './cli/node-shell.js';
export type { Shell } from './cli/shell.js';
export { type HtmlOutput, type PdfOutput, renderHtml, renderPdf } from './output.js';
