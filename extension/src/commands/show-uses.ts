// What a click on "used by 4 procedures" does: the places in the editor's own view of references.
import { type Location, type Position, SHOW_USES } from '@baywright/server/protocol';
import { commands, type Disposable } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';

export function registerShowUses(client: BaseLanguageClient): Disposable {
  return commands.registerCommand(
    SHOW_USES,
    (uri: string, position: Position, places: readonly Location[]) => {
      const { asUri, asPosition, asLocation } = client.protocol2CodeConverter;
      return commands.executeCommand(
        'editor.action.showReferences',
        asUri(uri),
        asPosition(position),
        places.map((place) => asLocation(place)),
      );
    },
  );
}
