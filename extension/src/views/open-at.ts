// The command of a tree entry that opens a file at a place.

import type { Location } from '@baywright/server/protocol';
import { type Command, Range, Uri } from 'vscode';

export function openAt({ uri, range }: Location, title: string): Command {
  const selection = new Range(range.start.line, range.start.character, range.end.line, range.end.character);
  return { command: 'vscode.open', title, arguments: [Uri.parse(uri), { selection }] };
}
