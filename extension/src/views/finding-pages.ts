// The page of a kind of finding, opened by its code in the list of problems: text that the server has, to read only.
import { PAGE_SCHEME } from '@baywright/server/protocol';
import { type Disposable, workspace } from 'vscode';
import type { Connection } from '../server/connection.js';

export function registerFindingPages(connection: Connection): Disposable {
  return workspace.registerTextDocumentContentProvider(PAGE_SCHEME, {
    provideTextDocumentContent: async (uri) => {
      const page = uri.path.slice(uri.path.lastIndexOf('/') + 1);
      const { markdown } = await connection.ask('explain', { page });
      return markdown ?? '';
    },
  });
}
