// Renames a thing in every file of its library, after asking whether the name may be used.
import type { Span } from '@baywright/language';
import {
  ErrorCodes,
  type PrepareRenameParams,
  type RenameParams,
  ResponseError,
  type TextEdit,
} from 'vscode-languageserver';
import { meantAt, mentionsOfThing } from '../locate.js';
import type { Snapshot } from '../snapshot.js';
import { workspaceEdit } from '../workspace-edit.js';
import { documentFeature } from './feature.js';

const NAME = /^[\p{L}][\p{L}\p{N}]*(?:[-./×’][\p{L}\p{N}]+)*$/u;

export const prepareRename = documentFeature<PrepareRenameParams>(
  'textDocument/prepareRename',
  {},
  (snapshot, { position }) => {
    const meant = meantAt(snapshot, snapshot.positions.offset(position));
    if (!meant || meant.thing.line === undefined) return null;
    return snapshot.range(meant.span);
  },
);

export const rename = documentFeature<RenameParams>(
  'textDocument/rename',
  { renameProvider: { prepareProvider: true } },
  (snapshot, { position, newName }) => {
    const meant = meantAt(snapshot, snapshot.positions.offset(position));
    if (!meant || meant.thing.line === undefined) return refuse('There is no declared name here to rename.');
    const { thing } = meant;
    if (thing.kind !== 'source' && !NAME.test(newName))
      return refuse(
        `“${newName}” cannot be a name: use letters, digits and single hyphens, beginning with a letter.`,
      );
    if (thing.kind !== 'source' && newName !== newName.toLowerCase())
      return refuse(`“${newName}” cannot be a name: names are written in small letters.`);
    const edits = new Map<string, TextEdit[]>();
    for (const { path, mentions } of mentionsOfThing(snapshot.shelf, thing, (p) => snapshot.file(p)?.text)) {
      const taken =
        newName === thing.name
          ? undefined
          : snapshot.library
              .model(path)
              ?.things.find((t) => t.name === newName && thing.kind !== 'operation');
      if (taken) return refuse(`“${newName}” is already the name of ${taken.title}.`);
      edits.set(
        path,
        mentions.map((m) => ({ range: snapshot.location(path, m.name).range, newText: newName })),
      );
    }
    const clash =
      newName === thing.name || thing.kind === 'operation'
        ? undefined
        : snapshot.analysis().job.scope.resolve(newName);
    if (clash) return refuse(`“${newName}” is already the name of ${clash.title}.`);
    return workspaceEdit(snapshot, edits);
  },
);

/** Two mentions of one name on a line, edited as one where the client can: the name in its declaration and in its own block. */
export function ownMentions(snapshot: Snapshot, offset: number): { spans: Span[]; name: string } | undefined {
  const meant = meantAt(snapshot, offset);
  if (meant?.mention.way !== 'declares') return undefined;
  const spans: Span[] = [];
  for (const { path, mentions } of mentionsOfThing(
    snapshot.shelf,
    meant.thing,
    (p) => snapshot.file(p)?.text,
  )) {
    if (path !== snapshot.path) return undefined;
    spans.push(...mentions.map((m) => m.name));
  }
  return spans.length > 1 ? { spans, name: meant.thing.name } : undefined;
}

function refuse(message: string): never {
  throw new ResponseError(ErrorCodes.InvalidParams, message);
}
