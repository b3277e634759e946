// Bundles modules like a user's build would: minified ES modules of the published package for current browsers.
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** Excludes modules whose resolved path matches. */
const without = (pattern) => ({
  name: 'without',
  setup(plugins) {
    plugins.onResolve({ filter: /./ }, async ({ path, pluginData, ...rest }) => {
      if (pluginData === 'asked' || rest.kind === 'entry-point') return undefined;
      const found = await plugins.resolve(path, { ...rest, pluginData: 'asked' });
      // pluginData must not be inherited by the imports of the resolved module.
      return pattern.test(found.path) ? { path, external: true } : { ...found, pluginData: undefined };
    });
  },
});

const nameOf = (path) => path.slice(path.lastIndexOf('/') + 1);

/**
 * Bundles a module with what it imports on demand in chunks of its own. The package's own name leads to dist/.
 * @param {string} code of the module, resolved from the top of the project
 * @param {{ name?: string, leftOut?: RegExp }} [options] name of the resulting file; modules that stay outside, by their path
 * @returns {Promise<{ files: Map<string, string>, needed: (module?: string) => Set<string> }>} every file by its name, and
 *   the names of those that the module needs at once, or that another one, given by the end of its path, does
 */
export async function bundleInChunks(code, { name = 'entry', leftOut } = {}) {
  const { outputFiles, metafile } = await build({
    absWorkingDir: root,
    bundle: true,
    minify: true,
    format: 'esm',
    target: 'es2022',
    legalComments: 'none',
    write: false,
    stdin: { contents: code, resolveDir: root },
    // Not this project's own, which would lead the package's name to its sources.
    tsconfigRaw: '{}',
    outdir: 'out',
    entryNames: name,
    chunkNames: `${name}-[hash]`,
    splitting: true,
    metafile: true,
    plugins: leftOut ? [without(leftOut)] : [],
  });
  const files = new Map(outputFiles.map(({ path, text }) => [nameOf(path), text]));
  const chunks = new Map(Object.entries(metafile.outputs).map(([path, chunk]) => [nameOf(path), chunk]));
  const needed = (module) => {
    const found = new Set();
    const reach = (file) => {
      if (found.has(file)) return;
      found.add(file);
      for (const { path, kind, external } of chunks.get(file).imports) {
        if (kind === 'import-statement' && !external) reach(nameOf(path));
      }
    };
    const [start] = module
      ? ([...chunks].find(([, { entryPoint }]) => entryPoint?.endsWith(module)) ?? [])
      : [`${name}.js`];
    if (!start) throw new Error(`bundle: found no chunk that begins with ${module}`);
    reach(start);
    return found;
  };
  return { files, needed };
}
