// One code action before it is sent: what it is called, and how its edit is made once it is chosen.
import type { CodeAction, WorkspaceEdit } from 'vscode-languageserver';

export interface ActionOffer extends Pick<CodeAction, 'title' | 'kind' | 'diagnostics' | 'isPreferred'> {
  readonly title: string;
  readonly kind: string;
  /** Only called for an action that is wanted, so that a list costs no edits. */
  edit(): WorkspaceEdit;
}
