import { defineConfig } from 'vitest/config';
import { ownName } from './.tools/own-name.mjs';

const ALL = 'tests/unit/**/*.test.ts';

/** Tests of what a module does when it is first loaded, or of what is on the page of one element: each needs modules of its own. */
const ALONE = [
  'tests/unit/elements/**/*.test.ts',
  'tests/unit/house/**/*.test.ts',
  'tests/unit/locale/{parts,words}.test.ts',
];

export default defineConfig({
  resolve: { alias: ownName },
  test: {
    environment: 'node',
    setupFiles: ['tests/tools/seed.ts'],
    // A guard against hanging, never a limit of speed: a busy machine has taken ten times as long as a quiet one.
    testTimeout: 120_000,
    hookTimeout: 120_000,
    passWithNoTests: true,
    // By default a core is left to whoever waits; of two, that is half.
    maxWorkers: '100%',
    projects: [
      { extends: true, test: { name: 'alone', include: ALONE } },
      // Loading the tables and languages anew for each of a hundred files took as long as the tests themselves.
      { extends: true, test: { name: 'together', include: [ALL], exclude: ALONE, isolate: false } },
    ],
  },
});
