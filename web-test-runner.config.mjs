import { fileURLToPath } from 'node:url';
import { esbuildPlugin } from '@web/dev-server-esbuild';
import { defaultReporter } from '@web/test-runner';
import { ownNamePlugin } from './.tools/own-name.mjs';
import { freePort } from './tests/tools/free-port.mjs';
import { bundledTests } from './tests/tools/wtr-bundle.mjs';
import { countReporter } from './tests/tools/wtr-count-reporter.mjs';
import { realInputPlugin } from './tests/tools/wtr-real-input.mjs';

/** The browser to test in: `chromium`, `firefox` or `webkit`. */
const engine = process.env.PULSE_MAP_ENGINE ?? 'chromium';
const { commands, launcher } = await import(`./tests/tools/engines/${engine}.mjs`);

/** How often what is tried at random is tried, and from which seed on; `npm run test:long` asks for more. */
const trial = {
  runs: Number(process.env.PULSE_MAP_BROWSER_RUNS ?? 1),
  seed: Number(process.env.PULSE_MAP_BROWSER_SEED ?? 20261126),
};

const countsTo = process.env.PULSE_MAP_COUNTS;

export default {
  files: 'tests/browser/**/*.test.ts',
  nodeResolve: true,
  port: await freePort(),
  // Pages wait for frames and for the driver: two of them left more than a quarter of two cores idle. Beside other engines two are enough.
  concurrency: Number(process.env.PULSE_MAP_PAGES ?? 3),
  // The first page of a run waits until the tests are bundled.
  browserStartTimeout: 120_000,
  testsStartTimeout: 120_000,
  testsFinishTimeout: 600_000 * trial.runs,
  // Guards against hanging, never limits of speed.
  testFramework: { config: { ui: 'bdd', timeout: 60_000 } },
  middleware: [bundledTests()],
  plugins: [
    ownNamePlugin,
    esbuildPlugin({
      ts: true,
      target: 'es2022',
      tsconfig: fileURLToPath(new URL('tsconfig.json', import.meta.url)),
    }),
    realInputPlugin(commands),
  ],
  browsers: [launcher()],
  reporters: [defaultReporter(), ...(countsTo ? [countReporter(countsTo)] : [])],
  // A stray warning or error on the console fails the test that caused it. Lit's notice that it runs in
  // development mode is expected; its other warnings are not.
  testRunnerHtml: (testFramework) => `<!doctype html>
<html lang="en">
  <head><meta charset="utf-8"><title>Pulse Map browser test</title></head>
  <body>
    <script>
      globalThis.trial = ${JSON.stringify(trial)};
      globalThis.litIssuedWarnings = new Set(['dev-mode']);
      for (const level of ['warn', 'error']) {
        console[level] = (...parts) =>
          reportError(new Error('stray console.' + level + ': ' + parts.map(String).join(' ')));
      }
    </script>
    <script type="module" src="${testFramework}"></script>
  </body>
</html>`,
};
