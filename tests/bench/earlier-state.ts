import { build } from 'esbuild';
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const cache = join(root, 'node_modules/.cache/pulse-map');

/** The commit that speed is compared with. */
export const COMPARED = 'e82c870';

/**
 * A module as users get it, bundled. The loader that runs these programs gives every function its name back each time it is
 * made, which costs more than some of them do.
 */
async function bundled(folder: string, path: string, name: string): Promise<Record<string, unknown>> {
  const outfile = join(cache, 'bench', `${name}.mjs`);
  await build({
    absWorkingDir: folder,
    entryPoints: [join('src', path)],
    outfile,
    bundle: true,
    format: 'esm',
    platform: 'node',
    target: 'es2022',
    tsconfigRaw: '{}',
    logLevel: 'error',
  });
  return (await import(pathToFileURL(outfile).href)) as Record<string, unknown>;
}

/**
 * A module of the sources as they stand.
 * @param path of the module under `src`
 */
export function moduleNow(path: string): Promise<Record<string, unknown>> {
  return bundled(root, path, 'now');
}

/**
 * A module of the sources as they stood at `COMPARED`, or nothing where git does not have that commit.
 * @param path of the module under `src`
 */
export async function moduleThen(path: string): Promise<Record<string, unknown> | undefined> {
  const folder = join(cache, COMPARED);
  if (!existsSync(join(folder, 'src'))) {
    try {
      const archive = execFileSync('git', ['archive', COMPARED, 'src', 'package.json'], {
        cwd: root,
        maxBuffer: 2 ** 28,
        stdio: ['ignore', 'pipe', 'ignore'],
      });
      mkdirSync(folder, { recursive: true });
      execFileSync('tar', ['-x', '-C', folder], { input: archive });
    } catch {
      return undefined;
    }
  }
  return bundled(folder, path, COMPARED);
}
