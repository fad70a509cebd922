// Vehicle at This Line: what is off, hung, loose, drained, raised, placed or owed at the line under the cursor.

import type { StateEntry, StateKind, StateSection } from '@baywright/server/protocol';
import {
  commands,
  type Disposable,
  EventEmitter,
  l10n,
  Position,
  Range,
  type TextEditor,
  ThemeColor,
  ThemeIcon,
  TreeItem,
  TreeItemCollapsibleState,
  Uri,
  window,
} from 'vscode';
import { documentMeant, reporting, together } from '../commands/ask.js';
import { askVariant, GAVE_UP, type RememberedChoices } from '../commands/choose.js';
import { LANGUAGE } from '../server/client-options.js';
import type { Connection } from '../server/connection.js';
import { setting } from '../settings/read.js';

type Node = StateSection | StateEntry;
/** The cursor rests this long, in milliseconds, before the state is asked for. */
const PAUSE = 60;

export function registerVehicleState(connection: Connection, choices: RememberedChoices): Disposable {
  const changed = new EventEmitter<undefined>();
  let sections: readonly StateSection[] = [];
  let shown = '';
  let asked = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const tree = window.createTreeView<Node>('baywright.vehicleState', {
    showCollapseAll: true,
    treeDataProvider: {
      onDidChangeTreeData: changed.event,
      getChildren: (node) => (node === undefined ? [...sections] : isSection(node) ? [...node.entries] : []),
      getTreeItem: (node) => (isSection(node) ? sectionItem(node) : entryItem(node)),
    },
  });

  const refresh = async (): Promise<void> => {
    const editor = editorMeant();
    if (!editor || !tree.visible) return;
    const uri = editor.document.uri.toString();
    const { line, character } = editor.selection.active;
    const { side, variant } = choices.of(uri);
    asked += 1;
    const turn = asked;
    try {
      const state = await connection.ask('state', {
        uri,
        position: { line, character },
        ...(side && { side }),
        ...(variant && { variant }),
      });
      if (turn !== asked) return;
      sections = state.sections;
      shown = uri;
      tree.description = state.variant;
      tree.message =
        sections.length === 0
          ? l10n.t('Line {0}: all is as it came in.', line + 1)
          : l10n.t('Before line {0}', line + 1);
      changed.fire(undefined);
    } catch (error) {
      connection.log.warn(`state: ${String(error)}`);
    }
  };
  const refreshSoon = (): void => {
    clearTimeout(timer);
    timer = setTimeout(() => void refresh(), PAUSE);
  };

  return together(
    tree,
    changed,
    window.onDidChangeTextEditorSelection(() => setting('vehicleState.followCursor') && refreshSoon()),
    window.onDidChangeActiveTextEditor(
      (editor) => editor && editor.document.uri.toString() !== shown && refreshSoon(),
    ),
    tree.onDidChangeVisibility(refreshSoon),
    choices.onChanged(refreshSoon),
    connection.onStale(refreshSoon),
    commands.registerCommand('baywright.chooseVehicle', async () => {
      const document = await documentMeant();
      if (!document) return;
      const uri = document.uri.toString();
      const there = await reporting(connection, l10n.t('This procedure could not be read.'), () =>
        connection.ask('choices', { uri }),
      );
      if (!there) return;
      const variant = await askVariant(there, choices.of(uri).variant);
      if (variant === GAVE_UP) return;
      const { variant: _before, ...rest } = choices.of(uri);
      await choices.set(uri, variant ? { ...rest, variant } : rest);
    }),
  );
}

/** The procedure being written; while a preview or the tree has the focus, the one beside it. */
function editorMeant(): TextEditor | undefined {
  const isOurs = (editor: TextEditor): boolean => editor.document.languageId === LANGUAGE;
  const active = window.activeTextEditor;
  return active ? [active].find(isOurs) : window.visibleTextEditors.find(isOurs);
}

function isSection(node: Node): node is StateSection {
  return 'entries' in node;
}

function sectionItem({ title, entries }: StateSection): TreeItem {
  const item = new TreeItem(title, TreeItemCollapsibleState.Expanded);
  item.description = String(entries.length);
  return item;
}

function entryItem({ label, detail, kind, location }: StateEntry): TreeItem {
  const item = new TreeItem(label);
  item.description = detail;
  item.iconPath = icon(kind);
  item.accessibilityInformation = { label: detail === '' ? label : `${label}, ${detail}` };
  if (!location) return item;
  const { start, end } = location.range;
  const selection = new Range(
    new Position(start.line, start.character),
    new Position(end.line, end.character),
  );
  item.tooltip = l10n.t('{0}: line {1}', label, start.line + 1);
  item.command = {
    command: 'vscode.open',
    title: l10n.t('Go to the line'),
    arguments: [Uri.parse(location.uri), { selection }],
  };
  return item;
}

const ICONS: Readonly<Record<StateKind, string>> = {
  off: 'circle-slash',
  hung: 'link',
  loose: 'circle-outline',
  untorqued: 'circle-large-outline',
  disconnected: 'debug-disconnect',
  capped: 'archive',
  drained: 'arrow-down',
  unbled: 'pulse',
  raised: 'arrow-up',
  placed: 'inbox',
  changed: 'settings',
  disturbed: 'compass',
  owed: 'bell-dot',
  clock: 'clock',
  ban: 'error',
};

function icon(kind: StateKind): ThemeIcon {
  const pressing = kind === 'owed' || kind === 'ban' || kind === 'clock';
  return pressing
    ? new ThemeIcon(ICONS[kind], new ThemeColor('list.warningForeground'))
    : new ThemeIcon(ICONS[kind]);
}
