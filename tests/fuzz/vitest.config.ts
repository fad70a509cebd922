// The long fuzz: `FUZZ_SECONDS=600 npm run fuzz -w tests`.
import { defineConfig } from 'vitest/config';

export default defineConfig({
  resolve: { conditions: ['source'] },
  ssr: { resolve: { conditions: ['source'] } },
  test: { include: ['fuzz/long.e2e.ts'] },
});
