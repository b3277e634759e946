// The package as npm would send it, unpacked where a page or an application finds it as an installed one.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** Runs a program to its end; throws with what it wrote where it fails. */
export function run(command, args, cwd = root) {
  const { status, stdout, stderr, error } = spawnSync(command, args, { cwd, encoding: 'utf8' });
  if (status !== 0) throw new Error(`${command} ${args.join(' ')}: ${error?.message ?? stdout + stderr}`);
  return stdout;
}

/** Empties the folder and unpacks the package into its `node_modules`; returns where it then lies. */
export function unpackInto(home) {
  const installed = join(home, 'node_modules/pulse-map');
  rmSync(home, { recursive: true, force: true });
  mkdirSync(installed, { recursive: true });
  const npm = process.env.npm_execpath ? [process.execPath, process.env.npm_execpath] : ['npm'];
  const args = ['pack', '--json', '--ignore-scripts', '--pack-destination', home];
  const [{ filename }] = JSON.parse(run(npm[0], [...npm.slice(1), ...args]));
  run('tar', ['-xzf', join(home, filename), '-C', installed, '--strip-components=1']);
  if (!JSON.parse(readFileSync(join(installed, 'package.json'), 'utf8')).exports)
    throw new Error('the tarball holds no package.json with exports');
  return installed;
}
