// Everything that must hold, in one command: `node tests/run.mjs [step ...]`; `all` adds the browser tests in the other engines.
// Installs what is missing, runs every step even when an earlier one failed, ends with "N passed, N failed". An engine that can be neither
// found nor installed is a failure, with PULSE_MAP_ENGINES=installable it is named as not run.
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { browserOrInstall, engineOrInstall } from '../.tools/install-browser.mjs';
import { installMissing, quietEnv, root } from '../.tools/install.mjs';
import { failureLines, failuresInFull, vitestCounts } from './tools/counts.mjs';

/** Guards against hanging, never limits of speed. */
const STEP_MINUTES = 60;
/** Steps that only run where they are asked for. */
const EXTRA = ['firefox', 'webkit'];
/**
 * What runs after what, and what beside what. The browser tests of an engine leave a third of the time to others, since their pages wait
 * for frames and for the driver; Firefox and WebKit show one page at a time. So what opens browsers shares the cores. The build waits
 * for a browser as long as it computes, and types and lint keep one core busy: what they leave goes to the unit tests.
 */
const PLAN = [
  [['package']],
  [['types', 'lint'], ['build'], ['unit']],
  [['browser', 'built', 'storybook', 'hosts'], ['firefox'], ['webkit']],
];
const leaveOut = process.env.PULSE_MAP_ENGINES === 'installable';
const scratch = mkdtempSync(join(tmpdir(), 'pulse-map-'));
const unitReport = join(scratch, 'unit.json');
const browserReport = join(scratch, 'browser.json');
const builtReport = join(scratch, 'built.json');
const hostsReport = join(scratch, 'hosts.json');
const asked = process.argv.slice(2);
const all = asked.length === 0 || asked.includes('all');
/** What is published is made once: by the step `build` where that runs, else by `package`, before what needs it. */
const BUILD = ['.tools/build.mjs'];
const buildRuns = all || asked.includes('build');
const packageRuns = !buildRuns && ['package', 'built', 'hosts'].some((name) => asked.includes(name));
const bin = (path) => join('node_modules', path);

function readJson(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8'));
  } catch {
    return undefined;
  }
}

function countsOf(path) {
  const report = readJson(path);
  return report && vitestCounts(report, root);
}

/** The browser tests in another engine. What an engine cannot be told to do is counted apart. */
function inEngine(name, title) {
  const report = join(scratch, `${name}.json`);
  return {
    title,
    commands: [[bin('@web/test-runner/dist/bin.js')]],
    missing: () => engineOrInstall(name),
    env: () => ({ PULSE_MAP_ENGINE: name, PULSE_MAP_COUNTS: report }),
    counts: () => readJson(report),
  };
}

/** Each step: what it runs, in order; `missing` says why it cannot run here; `counts` where its tests are counted one by one. */
const STEPS = {
  package: { title: 'package', commands: [BUILD] },
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
    counts: () => countsOf(unitReport),
  },
  browser: {
    title: 'browser tests',
    commands: [[bin('@web/test-runner/dist/bin.js')]],
    env: () => ({
      CHROME_PATH: browserOrInstall(),
      PULSE_MAP_COUNTS: browserReport,
      ...(EXTRA.some(runs) && { PULSE_MAP_PAGES: '2' }),
    }),
    counts: () => readJson(browserReport),
  },
  firefox: inEngine('firefox', 'browser: Firefox'),
  webkit: inEngine('webkit', 'browser: WebKit'),
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
      ['tests/tools/offline.mjs'],
      ['tests/tools/browser-faults.mjs'],
    ],
  },
  built: {
    title: 'published package',
    commands: [[bin('@web/test-runner/dist/bin.js'), '--config', 'tests/browser-built/wtr.config.mjs']],
    env: () => ({ CHROME_PATH: browserOrInstall(), PULSE_MAP_COUNTS: builtReport }),
    counts: () => readJson(builtReport),
  },
  hosts: {
    title: 'host applications',
    commands: [
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
    counts: () => countsOf(hostsReport),
  },
  storybook: {
    title: 'Storybook build',
    commands: [
      ...(buildRuns || packageRuns ? [] : [[...BUILD, 'manifest']]),
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

async function runStep({ commands, missing, env, counts }) {
  let ok = true;
  let output = '';
  try {
    const notRun = await missing?.();
    if (notRun) return { passed: 0, failed: leaveOut ? 0 : 1, notRun, output: notRun };
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
  const { passed, failed, beyond, failures = [] } = counts() ?? { passed: 0, failed: 0 };
  if (passed + failed === 0) return { passed: 0, failed: 1, output: `${output}\nno test was run` };
  // The runner also fails for tests that lie beyond an engine.
  if (failures.length > 0) output = failuresInFull(failures);
  return { passed, beyond, failed: ok || beyond ? failed : Math.max(failed, 1), failures, output };
}

const unknown = asked.filter((name) => name !== 'all' && !(name in STEPS));
if (unknown.length > 0) {
  console.error(
    `Step: found "${unknown.join(' ')}", expected some of ${[...Object.keys(STEPS), 'all'].join(', ')}`,
  );
  process.exit(2);
}

const total = { passed: 0, failed: 0 };
const failedTests = [];

async function runNamed(name) {
  const step = STEPS[name];
  const start = performance.now();
  const result = await runStep(step);
  const { passed, failed, beyond, notRun, output } = result;
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  if (failed > 0) console.log(`\n${output.trimEnd()}\n`);
  const counted = `${passed} passed, ${failed} failed${beyond ? `, ${beyond} beyond the engine` : ''}`;
  const verdict = notRun ? `NOT RUN: ${notRun}` : step.counts ? counted : failed > 0 ? 'failed' : 'passed';
  console.log(`${step.title.padEnd(18)} ${verdict.padEnd(24)} ${seconds} s`);
  failedTests.push(...failureLines(step.title, result));
  total.passed += passed;
  total.failed += failed;
}

async function inTurn(names) {
  for (const name of names) await runNamed(name);
}

installMissing();
function runs(name) {
  if (name === 'package') return packageRuns;
  return asked.includes(name) || (EXTRA.includes(name) ? asked.includes('all') : all);
}
for (const lanes of PLAN) await Promise.all(lanes.map((lane) => inTurn(lane.filter(runs))));
rmSync(scratch, { recursive: true, force: true });
for (const line of failedTests) console.log(`failed: ${line}`);
console.log(`${total.passed} passed, ${total.failed} failed`);
process.exitCode = total.failed > 0 ? 1 : 0;
