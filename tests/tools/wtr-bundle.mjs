// Bundles the browser tests, and the scripts of the pages that they open, once a run: a page then loads about a hundred files instead
// of a thousand modules.
import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('../..', import.meta.url));
const ENTRY = /^\/(tests\/browser\/.+(?:\.test|-page))\.ts$/;
const CHUNKS = '__chunks';

function entries() {
  return readdirSync(new URL('../browser', import.meta.url), { recursive: true })
    .map((path) => `tests/browser/${path.replaceAll('\\', '/')}`)
    .filter((path) => ENTRY.test(`/${path}`));
}

/** Every output by its address. */
async function bundled() {
  const { outputFiles } = await build({
    absWorkingDir: root,
    entryPoints: entries(),
    bundle: true,
    splitting: true,
    format: 'esm',
    target: 'es2022',
    outdir: root,
    outbase: root,
    write: false,
    sourcemap: 'linked',
    chunkNames: `${CHUNKS}/[name]-[hash]`,
    // As the runner resolves: Lit in development mode warns of what it does not like.
    conditions: ['development', 'browser'],
    // The runner's own modules, which only its server has.
    external: ['/__web*'],
    logLevel: 'silent',
  });
  const files = new Map(
    outputFiles.map(({ path, text }) => [`/${path.slice(root.length).replaceAll('\\', '/')}`, text]),
  );
  // The runner reads the map of a test, for the line that failed, only from within it.
  for (const [path, text] of files) {
    if (!path.endsWith('.test.js')) continue;
    const map = Buffer.from(files.get(`${path}.map`)).toString('base64');
    files.set(
      path,
      text.replace(/\/\/# sourceMappingURL=.*/, `//# sourceMappingURL=data:application/json;base64,${map}`),
    );
  }
  return files;
}

/**
 * For the browser test runner, ahead of its plugins: they would parse and rewrite each file anew for each page. What cannot be bundled is
 * served module by module, so that a fault shows in the file that has it; so is everything in watch mode.
 */
export function bundledTests() {
  let files;
  const watching = process.argv.includes('--watch');
  return async (context, next) => {
    const { path } = context;
    const entry = ENTRY.exec(path)?.[1];
    if (watching || !(entry || path.startsWith(`/${CHUNKS}/`) || path.endsWith('.test.js.map')))
      return next();
    files ??= bundled().catch((error) => {
      console.error(`The tests are served module by module, which is slow: ${error.message}`);
      return new Map();
    });
    const body = (await files).get(entry ? `/${entry}.js` : path);
    if (body === undefined) return next();
    context.type = path.endsWith('.map') ? 'json' : 'js';
    // A chunk has its hash in its name: the next page of a browser need not ask for it again.
    if (path.startsWith(`/${CHUNKS}/`)) context.set('cache-control', 'max-age=31536000, immutable');
    context.body = body;
    return undefined;
  };
}
