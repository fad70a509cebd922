// W109: named in prose only.
import { defineDiagnostic } from './define.js';
import { textJob } from './text-example.js';

export const namedInProseOnly = defineDiagnostic<{ readonly name: string; readonly kind: string }>({
  code: 'W109',
  name: 'named-in-prose-only',
  severity: 'hint',
  message: (d) => `the ${d.kind} \`${d.name}\` is named in the text only`,
  advice: (d) => `\`with ${d.name}\` on the line puts it on the list of what is needed`,
  why: `“You will need” is worked out from the lines, not from the text. What stands only in the text is missed when the tools are fetched.`,
  wrong: textJob(
    'clean mirror-glass: Take the long mirror brush.',
    '#                                     ^^^^^^^^^^^^ W109',
  ).concat('\ntools\n  mirror-brush: Mirror brush\n'),
  right: textJob('clean mirror-glass with mirror-brush: Hold it by the end.').concat(
    '\ntools\n  mirror-brush: Mirror brush\n',
  ),
});
