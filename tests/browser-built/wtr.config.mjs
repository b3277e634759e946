// The smoke tests of what is published: the tarball that npm would send, unpacked, in the same browser under the same rules
// as the tests of the sources. node_modules of the project stands in for the user's own.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import sources from '../../web-test-runner.config.mjs';
import { ownNamePlugin } from '../../.tools/own-name.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const home = join(root, '.cache/built');
const installed = join(home, 'node_modules/pulse-map');

function run(command, args) {
  const { status, stdout, stderr, error } = spawnSync(command, args, { cwd: root, encoding: 'utf8' });
  if (status !== 0) throw new Error(`${command} ${args.join(' ')}: ${error?.message ?? stderr}`);
  return stdout;
}

function unpack() {
  rmSync(home, { recursive: true, force: true });
  mkdirSync(installed, { recursive: true });
  const npm = process.env.npm_execpath ? [process.execPath, process.env.npm_execpath] : ['npm'];
  const args = ['pack', '--json', '--ignore-scripts', '--pack-destination', home];
  const [{ filename }] = JSON.parse(run(npm[0], [...npm.slice(1), ...args]));
  run('tar', ['-xzf', join(home, filename), '-C', installed, '--strip-components=1']);
  if (!JSON.parse(readFileSync(join(installed, 'package.json'), 'utf8')).exports)
    throw new Error('the tarball holds no package.json with exports');
}
unpack();

// As a user's page resolves the name: by the exports of the unpacked package.
const resolve = createRequire(join(home, 'page.js')).resolve;
const pathOnServer = (file) => `/${relative(root, file).replaceAll('\\', '/')}`;

const published = {
  name: 'published',
  resolveImport: ({ source }) =>
    /^pulse-map(\/|$)/.test(source) ? pathOnServer(resolve(source)) : undefined,
};

export default {
  ...sources,
  rootDir: root,
  files: 'tests/browser-built/*.test.ts',
  nodeResolve: { exportConditions: ['production', 'default'] },
  plugins: [published, ...sources.plugins.filter((plugin) => plugin !== ownNamePlugin)],
};
