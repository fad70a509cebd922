// Tests in real editors: they need Neovim and Emacs, as Debian packages them.
import { defineConfig } from 'vitest/config';

export default defineConfig({
  resolve: { conditions: ['source'] },
  ssr: { resolve: { conditions: ['source'] } },
  test: { include: ['editors/**/*.e2e.ts'], testTimeout: 90_000, hookTimeout: 120_000 },
});
