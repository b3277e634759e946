// Builds what is published into dist/: modules with declarations and compact templates, the custom elements manifest, one
// self-contained file, and a file of words for each further language.
// `node .tools/build.mjs manifest` makes the manifest alone (Storybook reads it).
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { compactMapped } from './compact-templates.mjs';
import { hostTypes } from './host-types.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const inRoot = (path) => join(root, path);

function run(script, ...args) {
  const { status } = spawnSync(process.execPath, [inRoot(`node_modules/${script}`), ...args], {
    cwd: root,
    stdio: 'inherit',
  });
  if (status !== 0) process.exit(status ?? 1);
}

const manifest = () => run('@custom-elements-manifest/analyzer/cem.js', 'analyze', '--quiet');

/** Licence texts of the bundled packages; they must accompany every copy. */
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

/** Minifies the templates and style sheets of the published modules. */
function compact() {
  const modules = readdirSync(inRoot('dist'), { recursive: true }).filter((path) => path.endsWith('.js'));
  for (const path of modules.map((name) => inRoot(`dist/${name}`))) {
    const code = readFileSync(path, 'utf8');
    if (!/\b(html|svg|css) ?`/.test(code)) continue;
    const compacted = compactMapped(code, JSON.parse(readFileSync(`${path}.map`, 'utf8')));
    writeFileSync(path, compacted.code);
    writeFileSync(`${path}.map`, JSON.stringify(compacted.map));
  }
}

const BUNDLE = 'pulse-map.bundle.js';
const SINGLE_FILE = {
  absWorkingDir: root,
  bundle: true,
  format: 'esm',
  platform: 'browser',
  target: 'es2022',
  minify: true,
  sourcemap: true,
  // The maps of the modules carry the sources; here they would be most of the package.
  sourcesContent: false,
  legalComments: 'none',
  metafile: true,
  logLevel: 'warning',
};

async function bundle() {
  const outfile = `dist/${BUNDLE}`;
  const { metafile } = await build({
    ...SINGLE_FILE,
    entryPoints: ['dist/index.js'],
    outfile,
    banner: { js: '/* Pulse Map, MIT. Licences of what it contains: pulse-map.bundle.licences.txt */' },
  });
  const rule = `\n${'-'.repeat(80)}\n\n`;
  writeFileSync(inRoot('dist/pulse-map.bundle.licences.txt'), licencesOf(metafile.inputs).join(rule));
}

/**
 * The same in chunks, for pages without a build that show the map, or begin with it: what the first paint does not need comes after it.
 * Both entries register the languages' registry once for the page, so that the files of words serve them too.
 */
async function chunks() {
  const { metafile } = await build({
    ...SINGLE_FILE,
    entryPoints: { 'pulse-map': 'dist/index.js', map: 'dist/elements/pulse-map/define.js' },
    outdir: 'dist/chunks',
    chunkNames: 'part-[hash]',
    splitting: true,
    banner: { js: '/* Pulse Map, MIT. Licences of what it contains: ../pulse-map.bundle.licences.txt */' },
  });
  const strays = Object.values(metafile.outputs).flatMap(({ imports }) =>
    imports.filter(({ external }) => external),
  );
  if (strays.length)
    throw new Error(`dist/chunks: leans on ${strays.map(({ path }) => path).join(', ')} outside`);
}

/** Folders of `dist` whose tables and names a language may speak of. Whatever else a page has once is left to the bundle. */
const SPOKEN_OF = /^dist\/(locale|statements|anatomy|examination|pressures|bedside|triage|staging)\//;

/**
 * One file per language besides English, for pages without a build. It carries every table it reads, so that it needs nothing of the
 * bundle but the registry of languages, which a page has once (`locale/languages.ts`).
 */
async function languages() {
  for (const tag of readdirSync(inRoot('dist/locale'))) {
    const entry = `dist/locale/${tag}/register.js`;
    if (!existsSync(inRoot(entry))) continue;
    const outfile = `dist/pulse-map.locale-${tag}.js`;
    const { metafile } = await build({
      ...SINGLE_FILE,
      entryPoints: [entry],
      outfile,
      banner: { js: '/* Pulse Map, MIT. */' },
    });
    const { inputs } = metafile.outputs[outfile];
    const strays = Object.keys(inputs).filter((path) => inputs[path].bytesInOutput && !SPOKEN_OF.test(path));
    if (strays.length)
      throw new Error(`${outfile}: carries ${strays.join(', ')}, which is not for a language`);
  }
}

/** The JSON Schemas of a record, a simulated patient and a lesson, for editors and other programs. */
async function schemas() {
  const from = (name) => import(pathToFileURL(inRoot(`dist/${name}.js`)).href);
  const write = (name, schema) =>
    writeFileSync(inRoot(`dist/${name}.schema.json`), `${JSON.stringify(schema, null, 2)}\n`);
  write('examination', (await from('fhir')).examinationJsonSchema());
  write('patient', (await from('flow')).patientJsonSchema());
  write('lesson', (await from('lesson')).lessonJsonSchema());
}

if (process.argv[2] === 'manifest') {
  manifest();
} else {
  rmSync(inRoot('dist'), { recursive: true, force: true });
  run('typescript/bin/tsc', '-p', 'tsconfig.build.json');
  compact();
  run('@angular/compiler-cli/bundles/src/bin/ngc.js', '-p', 'src/angular/tsconfig.json');
  manifest();
  hostTypes();
  await schemas();
  if (!existsSync(inRoot('dist/index.js')))
    throw new Error('src/index.ts: found nothing, expected the entry that registers the elements');
  await bundle();
  await chunks();
  await languages();
}
