// Tests run from the TypeScript sources: the "source" condition points each package at src/.
import { defineConfig } from 'vitest/config';

export default defineConfig({
  resolve: { conditions: ['source'] },
  ssr: { resolve: { conditions: ['source'] } },
  test: {
    include: ['**/*.test.ts'],
    exclude: ['dist/**', 'node_modules/**'],
    reporters: ['default', ['json', { outputFile: '.cache/report.json' }]],
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
