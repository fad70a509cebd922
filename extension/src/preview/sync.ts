// Keeps the text and its preview at the same line, both ways, without the two chasing each other.
import {
  type Disposable,
  Range,
  Selection,
  type TextEditor,
  TextEditorRevealType,
  Uri,
  ViewColumn,
  window,
} from 'vscode';
import { together } from '../commands/ask.js';
import { setting } from '../settings/read.js';
import type { ToPage } from './messages.js';

/** After one side was moved by the other, its own scroll events are echoes for this long, in milliseconds. */
const ECHO = 250;

export interface Sync extends Disposable {
  /** Brings the page to the cursor. */
  now(): void;
  /** The page was scrolled by its reader. */
  scrolled(line: number): void;
  /** The reader clicked a row of the page. */
  goTo(line: number): Promise<void>;
}

export function follow(uri: string, post: (message: ToPage) => void): Sync {
  let movedByPage = 0;
  const editorOf = (): TextEditor | undefined =>
    window.visibleTextEditors.find((editor) => editor.document.uri.toString() === uri);
  const isEcho = (): boolean => Date.now() - movedByPage < ECHO;
  const reveal = (line: number, mark: boolean): void => {
    if (setting('preview.followCursor')) post({ type: 'reveal', line, mark });
  };
  const listeners = together(
    window.onDidChangeTextEditorSelection(({ textEditor, selections: [selection] }) => {
      if (textEditor.document.uri.toString() === uri && selection) reveal(selection.active.line, true);
    }),
    window.onDidChangeTextEditorVisibleRanges(({ textEditor, visibleRanges: [visible] }) => {
      if (textEditor.document.uri.toString() !== uri || !visible || isEcho()) return;
      // With the cursor in sight, the cursor leads; else the top of the text does.
      const cursor = textEditor.selection.active.line;
      if (cursor < visible.start.line || cursor > visible.end.line) reveal(visible.start.line, false);
    }),
  );
  return {
    now: () => {
      const editor = editorOf();
      if (editor) reveal(editor.selection.active.line, true);
    },
    scrolled: (line) => {
      const editor = editorOf();
      if (!editor || !setting('preview.followCursor')) return;
      movedByPage = Date.now();
      editor.revealRange(new Range(line, 0, line, 0), TextEditorRevealType.AtTop);
    },
    goTo: async (line) => {
      movedByPage = Date.now();
      const editor = await window.showTextDocument(Uri.parse(uri), {
        viewColumn: editorOf()?.viewColumn ?? ViewColumn.One,
      });
      const start = editor.document.lineAt(
        Math.min(line, editor.document.lineCount - 1),
      ).firstNonWhitespaceCharacterIndex;
      editor.selection = new Selection(line, start, line, start);
      editor.revealRange(editor.selection, TextEditorRevealType.InCenterIfOutsideViewport);
    },
    dispose: () => void listeners.dispose(),
  };
}
