// Side, options, unit order and page size of guides: asked once for each procedure, remembered for the folder.

import type { Choices, GuideOptions } from '@baywright/server/protocol';
import {
  commands,
  type Disposable,
  EventEmitter,
  type ExtensionContext,
  l10n,
  type QuickPickItem,
  window,
} from 'vscode';
import type { Connection } from '../server/connection.js';
import { documentMeant, reporting } from './ask.js';

export interface RememberedChoices {
  /** What is remembered for the procedure; empty when nothing was asked yet. */
  of(uri: string): GuideOptions;
  /** Remembers, and tells those who show the procedure. */
  set(uri: string, options: GuideOptions): Promise<void>;
  /** What is remembered, else asks. Undefined when the user gives up. */
  ask(uri: string): Promise<GuideOptions | undefined>;
  readonly onChanged: (listener: (uri: string) => void) => Disposable;
}

const KEY = 'baywright.choices';

/** Unit order and page size are the shop's; side and options belong to the procedure. */
type Shared = Pick<GuideOptions, 'unitOrder' | 'pageSize' | 'language'>;
interface Memory {
  readonly shared?: Shared;
  readonly byProcedure?: Readonly<Record<string, GuideOptions>>;
}

export function registerChoices(context: ExtensionContext, connection: Connection): RememberedChoices {
  const changed = new EventEmitter<string>();
  const memory = (): Memory => context.workspaceState.get<Memory>(KEY) ?? {};
  const remembered: RememberedChoices = {
    of: (uri) => ({ ...memory().shared, ...memory().byProcedure?.[uri] }),
    set: async (uri, options) => {
      const { unitOrder, pageSize, language, ...own } = options;
      const shared: Shared = {
        ...(unitOrder && { unitOrder }),
        ...(pageSize && { pageSize }),
        ...(language && { language }),
      };
      await context.workspaceState.update(KEY, {
        shared,
        byProcedure: { ...memory().byProcedure, [uri]: own },
      } satisfies Memory);
      changed.fire(uri);
    },
    ask: async (uri) => (memory().byProcedure?.[uri] ? remembered.of(uri) : askAndRemember(uri)),
    onChanged: changed.event,
  };
  const askAndRemember = async (uri: string): Promise<GuideOptions | undefined> => {
    const choices = await reporting(connection, l10n.t('This procedure could not be read.'), () =>
      connection.ask('choices', { uri }),
    );
    const options = choices && (await askAll(choices, remembered.of(uri)));
    if (options) await remembered.set(uri, options);
    return options;
  };
  context.subscriptions.push(
    changed,
    commands.registerCommand('baywright.choose', async (given?: unknown) => {
      const document = await documentMeant(given);
      if (document) await askAndRemember(document.uri.toString());
    }),
  );
  return remembered;
}

/** Asks what there is to ask, one list after the other; a list with one entry is not shown. */
async function askAll(choices: Choices, now: GuideOptions): Promise<GuideOptions | undefined> {
  const title = `${choices.number} ${choices.title}`;
  const side = await pick(title, l10n.t('Which side?'), choices.sides, now.side, sideWord);
  if (side === GAVE_UP) return undefined;
  const variant = await askVariant(choices, now.variant);
  if (variant === GAVE_UP) return undefined;
  const unitOrder = await pick(
    title,
    l10n.t('Which units first?'),
    ['as written', 'metric first', 'US first'] as const,
    now.unitOrder ?? choices.unitOrder,
    unitWord,
  );
  if (unitOrder === GAVE_UP) return undefined;
  const pageSize = await pick(
    title,
    l10n.t('Which paper?'),
    ['A4', 'Letter'] as const,
    now.pageSize ?? choices.pageSize,
    (size) => size,
  );
  if (pageSize === GAVE_UP) return undefined;
  const language = await pick(
    title,
    l10n.t('Which language?'),
    choices.languages,
    now.language,
    (code) => LANGUAGE_NAMES[code],
  );
  if (language === GAVE_UP) return undefined;
  return {
    ...(side && { side }),
    ...(variant && { variant }),
    ...(unitOrder && { unitOrder }),
    ...(pageSize && { pageSize }),
    ...(language && { language }),
  };
}

/** A value for each option of the vehicle, or none for “all of them, marked”. */
export async function askVariant(
  choices: Choices,
  now: GuideOptions['variant'],
): Promise<GuideOptions['variant'] | typeof GAVE_UP> {
  const variant: Record<string, string> = {};
  for (const { name, values } of choices.options) {
    const value = await pick(
      `${choices.number} ${choices.title}`,
      l10n.t('Which {0}?', name),
      [...values, ALL],
      now?.[name],
      (word) => (word === ALL ? l10n.t('all, marked in the guide') : word),
    );
    if (value === GAVE_UP) return GAVE_UP;
    if (value !== undefined && value !== ALL) variant[name] = value;
  }
  return Object.keys(variant).length > 0 ? variant : undefined;
}

export const GAVE_UP = Symbol('gave up');
const ALL = '';
const LANGUAGE_NAMES = { en: 'English', es: 'Español', fr: 'Français', de: 'Deutsch' } as const;

async function pick<Value extends string>(
  title: string,
  placeHolder: string,
  values: readonly Value[],
  now: Value | undefined,
  word: (value: Value) => string,
): Promise<Value | undefined | typeof GAVE_UP> {
  if (values.length < 2) return values[0];
  // The list starts at its first entry: put what is chosen now there, so that Enter keeps it.
  const sorted = [...values].sort((a, b) => Number(b === now) - Number(a === now));
  const items = sorted.map((value): QuickPickItem & { value: Value } => ({
    label: word(value),
    ...(value === now && { description: l10n.t('as now') }),
    value,
  }));
  const chosen = await window.showQuickPick(items, { title, placeHolder, ignoreFocusOut: true });
  return chosen ? chosen.value : GAVE_UP;
}

function sideWord(side: 'left' | 'right' | 'both'): string {
  return side === 'left' ? l10n.t('left') : side === 'right' ? l10n.t('right') : l10n.t('both sides');
}

function unitWord(order: 'as written' | 'metric first' | 'US first'): string {
  return order === 'as written'
    ? l10n.t('as written')
    : order === 'metric first'
      ? l10n.t('metric first')
      : l10n.t('US first');
}
