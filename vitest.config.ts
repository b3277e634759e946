import { defineConfig } from 'vitest/config';

export default defineConfig({
  // Lit's decorators, as tsconfig.json has them; vite reads them from there.
  test: {
    include: ['tests/unit/**/*.test.ts'],
    environment: 'node',
    testTimeout: 10_000,
    passWithNoTests: true,
  },
});
