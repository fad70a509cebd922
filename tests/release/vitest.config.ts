// Slow proofs of a release: the packed command on a clean folder, and runs that are killed while they write.
import { defineConfig } from 'vitest/config';

export default defineConfig({
  resolve: { conditions: ['source'] },
  ssr: { resolve: { conditions: ['source'] } },
  test: {
    include: ['release/**/*.e2e.ts'],
    testTimeout: 900_000,
    hookTimeout: 300_000,
    fileParallelism: false,
  },
});
