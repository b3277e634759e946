import { fileURLToPath } from 'node:url';
import { esbuildPlugin } from '@web/dev-server-esbuild';
import { defaultReporter } from '@web/test-runner';
import { chromeLauncher } from '@web/test-runner-chrome';
import { BROWSER_FLAGS, findBrowser } from './.tools/find-browser.mjs';
import { bundleTestsPlugin } from './.tools/bundle-tests.mjs';
import { ownNamePlugin } from './.tools/own-name.mjs';
import { countReporter } from './tests/tools/wtr-count-reporter.mjs';
import { realInputPlugin } from './tests/tools/wtr-real-input.mjs';

const executablePath = findBrowser();
if (!executablePath)
  throw new Error('No browser: install Chrome or Chromium, or set CHROME_PATH to its program.');

const countsTo = process.env.PULSE_MAP_COUNTS;

export default {
  files: 'tests/browser/**/*.test.ts',
  nodeResolve: true,
  concurrency: 2,
  testsStartTimeout: 30_000,
  testsFinishTimeout: 120_000,
  testFramework: { config: { ui: 'bdd', timeout: 10_000 } },
  plugins: [
    ownNamePlugin,
    esbuildPlugin({
      ts: true,
      target: 'es2022',
      tsconfig: fileURLToPath(new URL('tsconfig.json', import.meta.url)),
    }),
    bundleTestsPlugin(),
    realInputPlugin(),
  ],
  browsers: [
    chromeLauncher({
      launchOptions: { executablePath, args: BROWSER_FLAGS },
      // A context each: two files running at once share no storage and neither loses the focus to the other.
      async createPage({ browser }) {
        const context = await browser.createBrowserContext();
        const page = await context.newPage();
        const cdp = await page.createCDPSession();
        await cdp.send('Emulation.setFocusEmulationEnabled', { enabled: true });
        return page;
      },
    }),
  ],
  reporters: [defaultReporter(), ...(countsTo ? [countReporter(countsTo)] : [])],
  // A stray warning or error on the console fails the test that caused it. Lit's notice that it runs in
  // development mode is expected; its other warnings are not.
  testRunnerHtml: (testFramework) => `<!doctype html>
<html lang="en">
  <head><meta charset="utf-8"><title>Pulse Map browser test</title></head>
  <body>
    <script>
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
