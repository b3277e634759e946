// Finds an installed Chrome or Chromium: CHROME_PATH first, then the usual places of each system.
import { accessSync, constants, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';

const NAMES_ON_PATH = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];

function usual(platform, env) {
  if (platform === 'darwin') {
    const apps = [
      'Google Chrome.app/Contents/MacOS/Google Chrome',
      'Chromium.app/Contents/MacOS/Chromium',
      'Google Chrome for Testing.app/Contents/MacOS/Google Chrome for Testing',
    ];
    const roots = ['/Applications', join(env.HOME ?? '', 'Applications')];
    return roots.flatMap((root) => apps.map((app) => join(root, app)));
  }
  if (platform === 'win32') {
    const roots = [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA].filter(Boolean);
    const places = ['Google/Chrome/Application/chrome.exe', 'Chromium/Application/chrome.exe'];
    return roots.flatMap((root) => places.map((place) => join(root, place)));
  }
  const folders = (env.PATH ?? '').split(delimiter).concat('/usr/bin', '/usr/local/bin', '/snap/bin');
  return NAMES_ON_PATH.flatMap((name) => folders.filter(Boolean).map((folder) => join(folder, name))).concat(
    '/opt/google/chrome/chrome',
  );
}

function runs(path) {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

/**
 * @param {{ platform?: string, env?: Record<string, string | undefined> }} [where]
 * @returns {string | undefined} path of the browser's program, or undefined when there is none
 * @throws when CHROME_PATH names something that can't be run
 */
export function findBrowser({ platform = process.platform, env = process.env } = {}) {
  if (env.CHROME_PATH) {
    if (runs(env.CHROME_PATH)) return env.CHROME_PATH;
    throw new Error(
      `CHROME_PATH: found "${env.CHROME_PATH}", expected the path of a Chrome or Chromium program`,
    );
  }
  return usual(platform, env).find(runs);
}

/** Flags that keep Chromium quiet, and let it start as root (containers, CI). */
export const BROWSER_FLAGS = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-dev-shm-usage',
  ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
];
