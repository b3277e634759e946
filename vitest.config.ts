import { defineConfig } from 'vitest/config';
import { ownName } from './.tools/own-name.mjs';

export default defineConfig({
  resolve: { alias: ownName },
  test: {
    include: ['tests/unit/**/*.test.ts'],
    environment: 'node',
    testTimeout: 10_000,
    passWithNoTests: true,
  },
});
