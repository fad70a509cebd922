// Procedures: by vehicle and number with their findings; guides out of date; where each figure is used.
import {
  commands,
  type Disposable,
  EventEmitter,
  l10n,
  ThemeIcon,
  TreeItem,
  TreeItemCollapsibleState,
  window,
} from 'vscode';
import { together } from '../commands/ask.js';
import { inWords } from '../commands/check.js';
import type { Connection } from '../server/connection.js';
import { type LibraryNode, libraryTree } from './library-tree.js';
import { openAt } from './open-at.js';

export function registerLibrary(connection: Connection): Disposable {
  const changed = new EventEmitter<undefined>();
  let groups: readonly LibraryNode[] | undefined;
  const tree = window.createTreeView<LibraryNode>('baywright.library', {
    showCollapseAll: true,
    treeDataProvider: {
      onDidChangeTreeData: changed.event,
      getChildren: async (node) => {
        if (node) return [...(node.children ?? [])];
        groups ??= await read(connection);
        return [...groups];
      },
      getTreeItem: item,
    },
  });
  const refresh = (): void => {
    groups = undefined;
    changed.fire(undefined);
  };
  return together(
    tree,
    changed,
    connection.onLibraryChanged(refresh),
    commands.registerCommand('baywright.refreshLibrary', refresh),
  );
}

async function read(connection: Connection): Promise<readonly LibraryNode[]> {
  try {
    return libraryTree(await connection.ask('library', undefined), {
      outOfDate: l10n.t('Guides out of date'),
      figures: l10n.t('Where figures are used'),
      anyVehicle: l10n.t('Any vehicle'),
    });
  } catch (error) {
    connection.log.warn(`library: ${String(error)}`);
    return [];
  }
}

function item(node: LibraryNode): TreeItem {
  const children = node.children?.length ?? 0;
  const state =
    children === 0
      ? TreeItemCollapsibleState.None
      : node.open
        ? TreeItemCollapsibleState.Expanded
        : TreeItemCollapsibleState.Collapsed;
  const made = new TreeItem(node.label, state);
  const counts = node.findings ? inWords(node.findings) : '';
  made.description = [node.detail, counts].filter((part) => part !== '').join(' · ');
  made.iconPath = new ThemeIcon(ICONS[node.kind]);
  if (node.tooltip !== undefined) made.tooltip = node.tooltip;
  if (node.location) made.command = openAt(node.location, l10n.t('Open'));
  return made;
}

const ICONS: Readonly<Record<LibraryNode['kind'], string>> = {
  vehicle: 'symbol-class',
  procedure: 'file',
  'out of date': 'history',
  figures: 'references',
  figure: 'symbol-numeric',
  use: 'arrow-small-right',
};
