// Bundles a module as a user's own build would: one minified ES module for today's browsers.
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { ownName } from '../tools/own-name.mjs';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** Leads the package's own name to its sources. */
const fromSources = {
  name: 'own-name',
  setup(plugins) {
    for (const { find, replacement } of ownName) {
      plugins.onResolve({ filter: find }, ({ path }) => ({ path: path.replace(find, replacement) }));
    }
  },
};

/**
 * @param {string} entry path of a module, from the top of the project
 * @returns {Promise<string>} the bundle's code
 */
export async function bundleFromSources(entry) {
  const { outputFiles } = await build({
    absWorkingDir: root,
    entryPoints: [entry],
    bundle: true,
    minify: true,
    format: 'esm',
    target: 'es2022',
    legalComments: 'none',
    write: false,
    plugins: [fromSources],
    loader: { '.json': 'json' },
  });
  return outputFiles[0].text;
}
