// A browser for the tests: an installed one, else the system's package where we may install it.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { findBrowser } from './find-browser.mjs';

const ADVICE = 'No browser found: install Google Chrome or Chromium, or set CHROME_PATH to its program.';

function apt(...args) {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  return spawnSync('apt-get', args, { env, stdio: ['ignore', 'ignore', 'inherit'] }).status === 0;
}

const mayInstall = () => process.getuid?.() === 0 && existsSync('/usr/bin/apt-get');

/**
 * @returns {string} path of the browser's program
 * @throws with one clear line when there is none and none can be installed
 */
export function browserOrInstall() {
  const found = findBrowser();
  if (found) return found;
  if (mayInstall()) {
    console.log('Installing Chromium (apt-get) ...');
    apt('update');
    for (const name of ['chromium', 'chromium-browser']) {
      if (apt('install', '-y', name) && findBrowser()) return findBrowser();
    }
  }
  throw new Error(ADVICE);
}

/**
 * Another engine, by the module of the tests that drives it.
 * @param {'firefox' | 'webkit'} name
 * @returns {Promise<string | undefined>} what to do where there is none and none can be installed here, in one line
 */
export async function engineOrInstall(name) {
  const { find, packages } = await import(`../tests/tools/engines/${name}.mjs`);
  if (find()) return undefined;
  if (mayInstall()) {
    console.log(`Installing ${packages.join(', ')} (apt-get) ...`);
    apt('update');
    if (apt('install', '-y', '--no-install-recommends', ...packages) && find()) return undefined;
  }
  return `not found, and not to be installed here. On Debian: apt-get install ${packages.join(' ')}`;
}
