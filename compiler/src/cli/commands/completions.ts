// `baywright completions`: a script for the shell.

import { defineCommand } from '../command.js';
import { completionScript, SHELLS } from '../completions.js';
import { CannotRun } from '../shell.js';

export default defineCommand({
  name: 'completions',
  summary: 'print a script that completes the command line in a shell',
  docs: `Prints a completion script for ${SHELLS.join(', ')}. Load it where the shell reads its settings.`,
  takes: [{ name: 'shell', docs: SHELLS.join(', '), values: SHELLS }],
  options: {},
  examples: [
    ['baywright completions bash >> ~/.bashrc', 'bash'],
    ['baywright completions zsh >> ~/.zshrc', 'zsh'],
    ['baywright completions fish > ~/.config/fish/completions/baywright.fish', 'fish'],
  ],
  run({ shell, commands }, [name]) {
    const wanted = SHELLS.find((one) => one === name);
    if (wanted === undefined)
      throw new CannotRun(`there is no script for “${name ?? ''}”; there is one for ${SHELLS.join(', ')}`);
    shell.out.write(completionScript(wanted, commands));
    return 0;
  },
});
