// Everything that must hold, in one command: `node tests/run.mjs [step ...]`.
// Installs what is missing, runs every step even when an earlier one failed, ends with "N passed, N failed".
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { browserOrInstall } from '../.tools/install-browser.mjs';
import { installMissing, quietEnv, root } from '../.tools/install.mjs';

const STEP_MINUTES = 15;
const scratch = mkdtempSync(join(tmpdir(), 'pulse-map-'));
const unitReport = join(scratch, 'unit.json');
const browserReport = join(scratch, 'browser.json');
const builtReport = join(scratch, 'built.json');
const hostsReport = join(scratch, 'hosts.json');
const wanted = process.argv.slice(2);
/** What is published is made once: by the step `build` where that runs, by this one where it runs alone. */
const BUILD = ['.tools/build.mjs'];
const buildRuns = wanted.length === 0 || wanted.includes('build');
const bin = (path) => join('node_modules', path);

function readJson(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8'));
  } catch {
    return undefined;
  }
}

/** Counts of a report of vitest. */
function vitestCounts(path) {
  const report = readJson(path);
  if (!report) return undefined;
  // A file that could not be loaded has no failed test of its own: the file counts as one.
  const unloaded = report.testResults.filter(
    (file) => file.status === 'failed' && !file.assertionResults.some((test) => test.status === 'failed'),
  ).length;
  // A test that is left out proves nothing: it counts as failed.
  const leftOut = report.numPendingTests + report.numTodoTests;
  return { passed: report.numPassedTests, failed: report.numFailedTests + unloaded + leftOut };
}

/** Each step: what it runs, in order; `counts` where its tests are counted one by one. */
const STEPS = {
  types: { title: 'type check', commands: [[bin('typescript/bin/tsc'), '-p', 'tsconfig.json']] },
  lint: {
    title: 'lint',
    commands: [
      [bin('eslint/bin/eslint.js'), '.'],
      [bin('prettier/bin/prettier.cjs'), '--check', '--log-level', 'warn', '.'],
    ],
  },
  unit: {
    title: 'unit tests',
    commands: [
      [
        bin('vitest/vitest.mjs'),
        'run',
        '--reporter=default',
        '--reporter=json',
        `--outputFile.json=${unitReport}`,
      ],
    ],
    counts: () => vitestCounts(unitReport),
  },
  browser: {
    title: 'browser tests',
    commands: [[bin('@web/test-runner/dist/bin.js')]],
    env: () => ({ CHROME_PATH: browserOrInstall(), PULSE_MAP_COUNTS: browserReport }),
    counts: () => readJson(browserReport),
  },
  build: {
    title: 'build and package',
    commands: [
      BUILD,
      [bin('publint/src/cli.js'), '--strict'],
      [
        bin('@arethetypeswrong/cli/dist/index.js'),
        '--pack',
        '.',
        '--profile',
        'esm-only',
        '--format',
        'ascii',
      ],
      ['.tools/check-package.mjs'],
      ['.tools/api-report.mjs'],
      ['tests/bench/size.mjs', '--built', '--check'],
      [bin('vite/bin/vite.js'), 'build', '--config', 'demo/vite.config.ts'],
    ],
  },
  built: {
    title: 'published package',
    commands: [
      ...(buildRuns ? [] : [BUILD]),
      [bin('@web/test-runner/dist/bin.js'), '--config', 'tests/browser-built/wtr.config.mjs'],
    ],
    env: () => ({ CHROME_PATH: browserOrInstall(), PULSE_MAP_COUNTS: builtReport }),
    counts: () => readJson(builtReport),
  },
  hosts: {
    title: 'host applications',
    commands: [
      ...(buildRuns ? [] : [BUILD]),
      [
        bin('vitest/vitest.mjs'),
        'run',
        '--config=tests/hosts/vitest.config.ts',
        '--reporter=default',
        '--reporter=json',
        `--outputFile.json=${hostsReport}`,
      ],
    ],
    env: () => ({ CHROME_PATH: browserOrInstall() }),
    counts: () => vitestCounts(hostsReport),
  },
  storybook: {
    title: 'Storybook build',
    commands: [
      ['.tools/build.mjs', 'manifest'],
      [bin('storybook/dist/bin/dispatcher.js'), 'build', '--quiet', '--disable-telemetry'],
    ],
  },
};

/** Runs one Node program; resolves to whether it succeeded, and to everything it wrote. */
function node(args, env) {
  return new Promise((done) => {
    const child = spawn(process.execPath, args, { cwd: root, env: { ...quietEnv, ...env } });
    let output = '';
    const timer = setTimeout(() => {
      output += `\nstopped after ${STEP_MINUTES} minutes\n`;
      child.kill('SIGKILL');
    }, STEP_MINUTES * 60_000);
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (data) => (output += data));
    child.on('error', (error) => (output += String(error)));
    child.on('close', (code) => {
      clearTimeout(timer);
      done({ ok: code === 0, output });
    });
  });
}

async function runStep({ commands, env, counts }) {
  let ok = true;
  let output = '';
  try {
    const extra = env?.() ?? {};
    for (const command of commands) {
      const result = await node(command, extra);
      ok = result.ok;
      // Of several commands only the last one run, which is the one that failed, has something to say.
      output = result.output;
      if (!ok) break;
    }
  } catch (error) {
    return { passed: 0, failed: 1, output: error.message };
  }
  if (!counts) return { passed: ok ? 1 : 0, failed: ok ? 0 : 1, output };
  const { passed, failed } = counts() ?? { passed: 0, failed: 0 };
  if (passed + failed === 0) return { passed: 0, failed: 1, output: `${output}\nno test was run` };
  return { passed, failed: ok ? failed : Math.max(failed, 1), output };
}

const unknown = wanted.filter((name) => !(name in STEPS));
if (unknown.length > 0) {
  console.error(`Step: found "${unknown.join(' ')}", expected some of ${Object.keys(STEPS).join(', ')}`);
  process.exit(2);
}

installMissing();
const total = { passed: 0, failed: 0 };
for (const [name, step] of Object.entries(STEPS)) {
  if (wanted.length > 0 && !wanted.includes(name)) continue;
  const start = performance.now();
  const { passed, failed, output } = await runStep(step);
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  if (failed > 0) console.log(`\n${output.trimEnd()}\n`);
  const verdict = step.counts ? `${passed} passed, ${failed} failed` : failed > 0 ? 'failed' : 'passed';
  console.log(`${step.title.padEnd(18)} ${verdict.padEnd(24)} ${seconds} s`);
  total.passed += passed;
  total.failed += failed;
}
rmSync(scratch, { recursive: true, force: true });
console.log(`${total.passed} passed, ${total.failed} failed`);
process.exitCode = total.failed > 0 ? 1 : 0;
