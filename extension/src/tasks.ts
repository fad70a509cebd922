// Tasks that check the library and build its guides with the command line program that the extension carries,
// run by the editor's own Node: nothing else need be installed.
import {
  type Disposable,
  l10n,
  ProcessExecution,
  Task,
  type TaskDefinition,
  TaskGroup,
  TaskScope,
  tasks,
  type WorkspaceFolder,
  workspace,
} from 'vscode';
import { LANGUAGE } from './server/client-options.js';
import { setting } from './settings/read.js';

export interface CommandProgram {
  /** The editor's own Node. */
  readonly node: string;
  readonly script: string;
}

interface BaywrightTask extends TaskDefinition {
  readonly action: 'check' | 'build';
  readonly path?: string;
}

export function registerTasks(program: CommandProgram | undefined): Disposable {
  return tasks.registerTaskProvider(LANGUAGE, {
    provideTasks: () => {
      if (!program || !workspace.isTrusted || !setting('tasks.offer')) return [];
      return (workspace.workspaceFolders ?? [])
        .filter((folder) => folder.uri.scheme === 'file')
        .flatMap((folder) =>
          (['check', 'build'] as const).map((action) => task({ type: LANGUAGE, action }, folder, program)),
        );
    },
    resolveTask: (given) => {
      if (!program || !isOurs(given.definition)) return undefined;
      return task(given.definition, typeof given.scope === 'object' ? given.scope : undefined, program);
    },
  });
}

function isOurs(definition: TaskDefinition): definition is BaywrightTask {
  return definition.action === 'check' || definition.action === 'build';
}

function task(
  definition: BaywrightTask,
  folder: WorkspaceFolder | undefined,
  { node, script }: CommandProgram,
): Task {
  const name = definition.action === 'check' ? l10n.t('Check the library') : l10n.t('Build the guides');
  // One line a finding that the matcher reads, none of them left out, no colours between its words.
  const format =
    definition.action === 'check' ? ['--format', 'text', '--limit', '0', '--color', 'never'] : [];
  const run = new ProcessExecution(node, [script, definition.action, ...format, definition.path ?? '.'], {
    // On the desktop the editor's program is Electron; this makes it plain Node.
    env: { ELECTRON_RUN_AS_NODE: '1' },
    ...(folder && { cwd: folder.uri.fsPath }),
  });
  // Where the whole library shows its findings already, the task would only list each a second time.
  const matchers = setting('findings.scope') === 'open files' ? ['$baywright'] : [];
  const made = new Task(definition, folder ?? TaskScope.Workspace, name, 'Baywright', run, matchers);
  made.group = definition.action === 'build' ? TaskGroup.Build : TaskGroup.Test;
  return made;
}
