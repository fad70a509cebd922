// What both platforms tell the language client: which documents, which files to watch, what to start with.

import type { StartOptions } from '@baywright/server/protocol';
import { env, type LogOutputChannel, workspace } from 'vscode';
import type { LanguageClientOptions } from 'vscode-languageclient';

export const LANGUAGE = 'baywright';
const WATCHED = '**/{*.bay,baywright.json,*.po,*.png,*.jpg,*.jpeg,*.svg,*.webp,*.gif,*.mp4,*.webm}';

/** `onDisk` says whether the server can read the files of the folders itself. */
export function clientOptions(log: LogOutputChannel, onDisk: boolean): LanguageClientOptions {
  const folders = workspace.workspaceFolders ?? [];
  const start: StartOptions = {
    filesByClient: !onDisk || folders.some((folder) => folder.uri.scheme !== 'file'),
    locale: env.language,
    settingsBySchema: true,
    showsPages: true,
    showsUses: true,
  };
  return {
    documentSelector: [{ language: LANGUAGE }],
    synchronize: { configurationSection: LANGUAGE, fileEvents: workspace.createFileSystemWatcher(WATCHED) },
    initializationOptions: start,
    outputChannel: log,
    traceOutputChannel: log,
    progressOnInitialization: true,
  };
}
