// The commands about the server itself: start it again, show its log.
import { commands, type Disposable, l10n } from 'vscode';
import type { Connection } from '../server/connection.js';
import { reporting, together } from './ask.js';

export function registerServerCommands(connection: Connection): Disposable {
  return together(
    commands.registerCommand('baywright.restart', () =>
      reporting(connection, l10n.t('The Baywright server did not start.'), () => connection.restart()),
    ),
    commands.registerCommand('baywright.showLog', () => connection.log.show()),
  );
}
