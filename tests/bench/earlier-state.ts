import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** The commit that speed is compared with. */
export const COMPARED = 'e82c870';

/**
 * A module of the sources as they stood at `COMPARED`, or nothing where git does not have that commit.
 * @param path of the module under `src`
 */
export async function moduleThen(path: string): Promise<Record<string, unknown> | undefined> {
  const folder = join(root, 'node_modules/.cache/pulse-map', COMPARED);
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
  return (await import(pathToFileURL(join(folder, 'src', path)).href)) as Record<string, unknown>;
}
