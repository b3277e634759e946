// What takes too long for `npm test`: the same properties, tried many times as often, any acts of hands on every element (a fortieth as
// often), and the random round trips of FHIR.
// `npm run test:long`, or with a factor of your own: `npm run test:long -- 20`.
import { spawnSync } from 'node:child_process';
import { browserOrInstall } from '../.tools/install-browser.mjs';
import { installMissing, root } from '../.tools/install.mjs';

const factor = Number(process.argv[2] ?? 800);
if (!(factor >= 1)) {
  console.error(`factor: found "${process.argv[2]}", expected a number of 1 or more`);
  process.exit(2);
}

const FILES = [
  'tests/unit/examination/edit-laws.test.ts',
  'tests/unit/interchange/spoilt.test.ts',
  'tests/unit/interchange/any-json.test.ts',
];

function node(args, env) {
  return spawnSync(process.execPath, args, { cwd: root, stdio: 'inherit', env: { ...process.env, ...env } });
}

installMissing();
const hour = 3_600_000;
const { status } = node(['node_modules/vitest/vitest.mjs', 'run', `--testTimeout=${6 * hour}`, ...FILES], {
  PULSE_MAP_RUNS: String(factor),
  PULSE_MAP_SEED: 'random',
});
// A run of the browser's trial takes seconds where one of a property takes milliseconds.
const browser = node(
  ['node_modules/@web/test-runner/dist/bin.js', '--files', 'tests/browser/hosts/any-acts.test.ts'],
  {
    CHROME_PATH: browserOrInstall(),
    PULSE_MAP_BROWSER_RUNS: String(Math.ceil(factor / 40)),
    PULSE_MAP_BROWSER_SEED: String(Math.floor(Math.random() * 1e9)),
  },
);
const fhir = node(['--import', 'tsx', 'tests/fhir/long.ts'], {});
const all = [status, browser.status, fhir.status];
process.exitCode = Number(all.some((one) => one !== 0));
