// Installs the project's packages when any that the lock file names is missing. Built-in modules only: nothing may be there yet.
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('..', import.meta.url));

/** Environment of child processes: no browser downloads, no telemetry. */
export const quietEnv = {
  ...process.env,
  PUPPETEER_SKIP_DOWNLOAD: '1',
  PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD: '1',
  STORYBOOK_DISABLE_TELEMETRY: '1',
};

function packagesIn(path) {
  try {
    return JSON.parse(readFileSync(join(root, path), 'utf8')).packages;
  } catch {
    return undefined;
  }
}

/** Whether node_modules holds every package of the lock file at its version. Contents decide, not times: a checkout renews those. */
export function installed() {
  const wanted = packagesIn('package-lock.json');
  const present = packagesIn('node_modules/.package-lock.json');
  if (!wanted || !present) return false;
  // What the project names itself is never left out, though it may also stand there as somebody's optional peer.
  const { dependencies, devDependencies } = wanted[''];
  const own = Object.keys({ ...dependencies, ...devDependencies });
  if (!own.every((name) => present[`node_modules/${name}`])) return false;
  return Object.entries(wanted).every(
    ([path, { version, optional, devOptional }]) =>
      path === '' || optional || devOptional || present[path]?.version === version,
  );
}

export function installMissing() {
  if (installed()) return;
  console.log('Installing packages (npm ci) ...');
  const args = ['ci', '--no-audit', '--no-fund', '--loglevel=error'];
  const npm = process.env.npm_execpath;
  const { status } = npm
    ? spawnSync(process.execPath, [npm, ...args], { cwd: root, env: quietEnv, stdio: 'inherit' })
    : spawnSync('npm', args, {
        cwd: root,
        env: quietEnv,
        stdio: 'inherit',
        shell: process.platform === 'win32',
      });
  if (status !== 0) {
    console.error('npm ci failed: see above. It needs the network and the registry npm is set up for.');
    process.exit(1);
  }
}
