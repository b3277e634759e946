import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/hosts/*.test.ts'],
    root: new URL('../..', import.meta.url).pathname,
    environment: 'node',
    testTimeout: 240_000,
    expect: { poll: { timeout: 60_000 } },
    hookTimeout: 300_000,
    fileParallelism: false,
  },
});
