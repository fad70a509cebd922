// End-to-end tests in a real editor: `npm run workbench -w tests`. They need the network once, Chromium, and minutes.
import { defineConfig } from 'vitest/config';

export default defineConfig({
  resolve: { conditions: ['source'] },
  ssr: { resolve: { conditions: ['source'] } },
  test: {
    root: import.meta.dirname,
    include: ['**/*.e2e.ts'],
    globalSetup: ['./prepare.ts'],
    // One editor at a time: they share the machine's processors and the tests of a file share one window.
    fileParallelism: false,
    // What a busy machine needs to draw.
    expect: { poll: { timeout: 20_000 } },
    testTimeout: 90_000,
    hookTimeout: 180_000,
  },
});
