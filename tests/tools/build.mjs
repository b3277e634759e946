// Builds what is published into dist/: modules with declarations, the custom elements manifest, one self-contained file.
// `node tests/tools/build.mjs manifest` makes the manifest alone (Storybook reads it).
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('../..', import.meta.url));
const inRoot = (path) => join(root, path);

function run(script, ...args) {
  const { status } = spawnSync(process.execPath, [inRoot(`node_modules/${script}`), ...args], {
    cwd: root,
    stdio: 'inherit',
  });
  if (status !== 0) process.exit(status ?? 1);
}

const manifest = () => run('@custom-elements-manifest/analyzer/cem.js', 'analyze', '--quiet');

/** Licence texts of the packages inside the bundle: they ask to travel with every copy. */
function licencesOf(inputs) {
  const packages = new Set(
    Object.keys(inputs).flatMap(
      (path) => /(?:^|\/)node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(path)?.[1] ?? [],
    ),
  );
  return [...packages].sort().map((name) => {
    const folder = inRoot(`node_modules/${name}`);
    const { version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
    const file = readdirSync(folder).find((entry) => /^licen[cs]e/i.test(entry));
    const text = file ? readFileSync(join(folder, file), 'utf8').trim() : '';
    return `${name} ${version} (${license})\n\n${text}\n`;
  });
}

async function bundle() {
  const { metafile } = await build({
    absWorkingDir: root,
    entryPoints: ['dist/index.js'],
    outfile: 'dist/pulse-map.bundle.js',
    bundle: true,
    format: 'esm',
    platform: 'browser',
    target: 'es2022',
    minify: true,
    legalComments: 'none',
    banner: { js: '/* Pulse Map, MIT. Licences of what it contains: pulse-map.bundle.licences.txt */' },
    metafile: true,
    logLevel: 'warning',
  });
  const rule = `\n${'-'.repeat(80)}\n\n`;
  writeFileSync(inRoot('dist/pulse-map.bundle.licences.txt'), licencesOf(metafile.inputs).join(rule));
}

if (process.argv[2] === 'manifest') {
  manifest();
} else {
  rmSync(inRoot('dist'), { recursive: true, force: true });
  run('typescript/bin/tsc', '-p', 'tsconfig.build.json');
  manifest();
  if (existsSync(inRoot('dist/index.js'))) await bundle();
  else throw new Error('src/index.ts: found nothing, expected the entry that registers the elements');
}
