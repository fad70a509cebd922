// What the checker asks of the protocol: publishing, progress, messages.
import { type Connection, type InitializeParams, MessageType } from 'vscode-languageserver';
import type { CheckerHost } from './checker.js';
import { clientFacts } from './client-facts.js';
import { METHODS } from './protocol.js';
import { quiet } from './quiet.js';
import { refreshViews } from './refresh.js';
import { TEXTS } from './texts/index.js';

/** Sends what the checker finds, shows a bar for long work, warns of settings that do nothing. */
export function checkerHost(
  connection: Connection,
  host: Pick<CheckerHost, 'now' | 'later'>,
  params: InitializeParams,
): CheckerHost {
  const say = TEXTS[clientFacts(params).language];
  const canProgress = params.capabilities.window?.workDoneProgress ?? false;
  let bar: { readonly token: string; last: number; begun: boolean } | undefined;
  let bars = 0;
  let told = '';
  const tell = (token: string, value: object): void =>
    quiet(connection.sendNotification('$/progress', { token, value }));
  return {
    now: host.now,
    later: host.later,
    publish: (uri, version, diagnostics) =>
      quiet(connection.sendDiagnostics({ uri, diagnostics, ...(version === null ? {} : { version }) })),
    checked(uris) {
      if (uris.length === 0) {
        quiet(connection.sendNotification(METHODS.libraryChanged));
        refreshViews(connection, params);
      } else quiet(connection.sendNotification(METHODS.previewStale, { uris }));
    },
    progress(done, all) {
      if (!canProgress || all < MANY) return;
      if (!bar) {
        bars += 1;
        const own = { token: `baywright-check-${bars}`, last: 0, begun: false };
        bar = own;
        void connection.sendRequest('window/workDoneProgress/create', { token: own.token }).then(
          () => {
            // The client may be slower than the check; nothing is told of a bar before it begins.
            if (bar !== own) return;
            own.begun = true;
            tell(own.token, { kind: 'begin', title: say.checkingLibrary, percentage: 0 });
          },
          () => undefined,
        );
        return;
      }
      const percentage = Math.floor((100 * done) / all);
      const { token, begun } = bar;
      if (done >= all) {
        if (begun) tell(token, { kind: 'end' });
        bar = undefined;
      } else if (begun && percentage >= bar.last + 5) {
        bar.last = percentage;
        tell(token, { kind: 'report', percentage, message: say.counted(done, all) });
      }
    },
    unused(entries) {
      const words = entries.join(', ');
      if (words !== '' && words !== told)
        quiet(
          connection.sendNotification('window/showMessage', {
            type: MessageType.Warning,
            message: say.suppressedNothing(words),
          }),
        );
      told = words;
    },
  };
}

/** A library of fewer files is checked before a bar could be read. */
const MANY = 40;
