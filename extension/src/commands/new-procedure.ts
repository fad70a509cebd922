// New Procedure: a short brake job with one thing forgotten, so that the first finding and its fix are a minute away.
import {
  commands,
  type Disposable,
  type ExtensionContext,
  Position,
  Uri,
  WorkspaceEdit,
  window,
  workspace,
} from 'vscode';
import { LANGUAGE } from '../server/client-options.js';

export function registerNewProcedure(context: ExtensionContext): Disposable {
  return commands.registerCommand('baywright.newProcedure', async () => {
    const sample = await workspace.fs.readFile(
      Uri.joinPath(context.extensionUri, 'walkthrough', 'first-procedure.bay'),
    );
    const content = new TextDecoder().decode(sample);
    const folder = workspace.workspaceFolders?.[0]?.uri;
    if (!folder) {
      await window.showTextDocument(await workspace.openTextDocument({ language: LANGUAGE, content }));
      return;
    }
    // Untitled, but named in the folder: the checker finds the house's settings and catalogues, and nothing is written yet.
    const target = Uri.joinPath(folder, await freeName(folder)).with({ scheme: 'untitled' });
    const document = await workspace.openTextDocument(target);
    const edit = new WorkspaceEdit();
    if (document.getText() === '') edit.insert(target, new Position(0, 0), content);
    await workspace.applyEdit(edit);
    await window.showTextDocument(document);
  });
}

async function freeName(folder: Uri): Promise<string> {
  const taken = new Set((await workspace.fs.readDirectory(folder)).map(([name]) => name));
  for (let count = 1; ; count += 1) {
    const name = count === 1 ? 'new-procedure.bay' : `new-procedure-${count}.bay`;
    if (!taken.has(name)) return name;
  }
}
