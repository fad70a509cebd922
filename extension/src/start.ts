// What both platforms start: the server, then everything of the editor that asks it.
import { type ExtensionContext, window } from 'vscode';
import { followActiveDocument } from './commands/ask.js';
import { registerCheck } from './commands/check.js';
import { registerChoices } from './commands/choose.js';
import { registerIssue } from './commands/issue.js';
import { registerNewProcedure } from './commands/new-procedure.js';
import { registerPrint } from './commands/print.js';
import { registerServerCommands } from './commands/server.js';
import { registerShowUses } from './commands/show-uses.js';
import { registerSign } from './commands/sign.js';
import { registerOrder } from './commands/tightening-order.js';
import { registerPreview } from './preview/panel.js';
import { clientOptions } from './server/client-options.js';
import { connect, type MakeClient } from './server/connection.js';
import { serveFiles } from './server/serve-files.js';
import { followSettingsFiles } from './server/settings-files.js';
import { registerStatus } from './status.js';
import { type CommandProgram, registerTasks } from './tasks.js';
import { registerFindingPages } from './views/finding-pages.js';
import { registerLibrary } from './views/library.js';
import { registerVehicleState } from './views/vehicle-state.js';

export interface Platform {
  /** True when the server can read `file:` folders itself. */
  readonly onDisk: boolean;
  readonly makeClient: MakeClient;
  /** The command line program, for tasks; absent in the browser. */
  readonly command?: CommandProgram;
}

export async function start(context: ExtensionContext, platform: Platform): Promise<void> {
  const log = window.createOutputChannel('Baywright', { log: true });
  const client = platform.makeClient(clientOptions(log, platform.onDisk));
  serveFiles(client);
  const connection = connect(client, log);
  const choices = registerChoices(context, connection);
  context.subscriptions.push(
    log,
    connection,
    followActiveDocument(),
    registerServerCommands(connection),
    registerShowUses(client),
    registerCheck(connection),
    registerPrint(connection, choices),
    registerSign(context, connection),
    registerIssue(context, connection),
    registerNewProcedure(context),
    registerOrder(connection),
    registerPreview(context, connection, choices),
    registerVehicleState(connection, choices),
    registerLibrary(connection),
    registerFindingPages(connection),
    registerStatus(),
    registerTasks(platform.command),
  );
  // Commands and views are there at once; a server that cannot start must not take them away.
  await client.start().catch((error: unknown) => log.error(String(error)));
  context.subscriptions.push(followSettingsFiles(client));
}
