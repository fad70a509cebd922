// Tests run from the TypeScript sources: the "source" condition points each package at src/.
import { defineConfig } from 'vitest/config';

export default defineConfig({
  resolve: { conditions: ['source'] },
  ssr: { resolve: { conditions: ['source'] } },
  test: {
    include: ['**/*.test.ts'],
    exclude: ['dist/**', 'node_modules/**'],
    reporters: ['default', ['json', { outputFile: '.cache/report.json' }]],
    // These end what hangs. No test measures time, and none may fail because the machine is slow.
    testTimeout: 180_000,
    hookTimeout: 180_000,
    expect: { poll: { timeout: 120_000 } },
  },
});
