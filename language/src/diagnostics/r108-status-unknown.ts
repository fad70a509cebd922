// R108: status unknown.
import { defineDiagnostic } from './define.js';
import { didYouMean } from './did-you-mean.js';
import { libraryFile } from './register-example.js';

export const statusUnknown = defineDiagnostic<{ readonly word: string; readonly near: readonly string[] }>({
  code: 'R108',
  name: 'status-unknown',
  severity: 'error',
  message: (d) => `\`${d.word}\` is not a status`,
  advice: ({ near }) => didYouMean(near) ?? 'one of `draft`, `proved`, `released`, `withdrawn`',
  why: `The status decides what may be printed for the bay: a draft carries a mark on every page, a withdrawn one is not printed at all.`,
  wrong: libraryFile('a.bay', 'A-1', 'status finished', '#      ^^^^^^^^ R108'),
  right: libraryFile('a.bay', 'A-1', 'status draft'),
});
