// What publint and attw don't ask of the built package: that every module loads in plain Node, that the core carries no
// element code, that declarations lean on dependencies only, and that the tarball holds what it should and no more.
import { spawnSync } from 'node:child_process';
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { gluedBindings } from './compact-templates.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const dist = join(root, 'dist');
const pkg = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
const faults = [];

const files = readdirSync(dist, { recursive: true }).map((path) => path.replaceAll('\\', '/'));
/** Files for pages without a build: they need a DOM and nothing from npm. */
const forPages = files.filter((path) => /^(pulse-map\.(bundle|locale-.+)|chunks\/.+)\.js$/.test(path));
const modules = files.filter((path) => path.endsWith('.js') && !forPages.includes(path));
/** What loads elsewhere only: half compiled for an application's own compiler to complete, or the inside of a worker. */
const NOT_IN_NODE = /^(angular\/|flow-worker\.js$)/;
/** Folders of entries for one framework each, which may lean on it; it is an optional peer. */
const FOR_FRAMEWORK = /^(hosts|angular)\//;
/** A peer as an import names it: the types of React stand for React. */
const peers = Object.keys(pkg.peerDependencies).map((name) => name.replace('@types/', ''));

/** Loads modules in a fresh Node process; each entry gets its own, so that none depends on another. */
function loads(paths) {
  const urls = JSON.stringify(paths.map((path) => pathToFileURL(join(dist, path)).href));
  const code = `for (const url of ${urls}) await import(url).catch((error) => {
    console.error(url.split('/dist/')[1] + ': ' + error.message); process.exitCode = 1; });`;
  const { status, stderr } = spawnSync(process.execPath, ['--input-type=module', '--eval', code], {
    encoding: 'utf8',
  });
  if (status !== 0) faults.push(`does not load in plain Node: ${stderr.trim()}`);
}

const loadable = modules.filter((path) => !NOT_IN_NODE.test(path));
loads(loadable);
for (const path of loadable.filter((path) => /^[^/]+\.js$|\/(element|define)\.js$/.test(path))) loads([path]);

/** Names of the packages that a module imports. */
function packagesNamed(text) {
  const found = text.matchAll(
    /(?<!['"\w.])(?:from|import)\s*\(?\s*['"]((?:@[^'"/\n]+\/)?[^.'"/\n][^'"/\n]*)[^'"\n]*['"]/g,
  );
  return [...found].map((match) => match[1]);
}

for (const path of files.filter((path) => /\.(d\.ts|js)$/.test(path) && !forPages.includes(path))) {
  for (const name of packagesNamed(readFileSync(join(dist, path), 'utf8'))) {
    const known = name in pkg.dependencies || (FOR_FRAMEWORK.test(path) && peers.includes(name));
    if (/^(lit-html|lit-element|@lit\/)/.test(name)) {
      faults.push(
        `${path}: shows a type of "${name}"; annotate it with the one from "lit", e.g. render(): TemplateResult`,
      );
    } else if (!known) faults.push(`${path}: imports "${name}", which is no dependency of the package`);
    // The types of d3 are in packages of their own, which a user of ours does not have.
    else if (path.endsWith('.d.ts') && name.startsWith('d3-')) {
      faults.push(`${path}: a public declaration shows a type of "${name}"; give it a type of our own`);
    }
  }
}

/**
 * Most bytes of the declarations of the record's types and schemas, comments left out: its types are written by hand, not spelt out
 * from schemas.
 */
const RECORD_DECLARATIONS = 40_000;
const declared = files
  .filter((path) => /^examination\/(types|schema)\/.*\.d\.ts$/.test(path))
  .map((path) => readFileSync(join(dist, path), 'utf8').replace(/\n?[ \t]*\/\*[\s\S]*?\*\//g, ''))
  .reduce((sum, text) => sum + Buffer.byteLength(text), 0);
if (declared > RECORD_DECLARATIONS)
  faults.push(
    `examination/{types,schema}: found ${declared} bytes of declarations, expected at most ${RECORD_DECLARATIONS}`,
  );

for (const path of modules) {
  for (const place of gluedBindings(readFileSync(join(dist, path), 'utf8')))
    faults.push(`${path}: two bindings are glued into one attribute: ${place}`);
}

/** What is published for programs without a page: every entry of the top folder but that of the elements and the single files. */
const withoutPage = Object.values(pkg.exports).flatMap(({ default: path }) => {
  const name = /^\.\/dist\/([\w-]+\.js)$/.exec(path ?? '')?.[1];
  return name && name !== 'index.js' ? [name] : [];
});
for (const entry of withoutPage) {
  const { metafile } = await build({
    entryPoints: [join(dist, entry)],
    absWorkingDir: root,
    bundle: true,
    format: 'esm',
    write: false,
    metafile: true,
  });
  const apart =
    entry === 'picture.js'
      ? /node_modules\/(@lit|lit)|dist\/elements\//
      : /node_modules\/(@lit|lit)|dist\/(elements|drawing)\//;
  const strays = Object.keys(metafile.inputs).filter((path) => apart.test(path));
  if (strays.length > 0) faults.push(`${entry} carries what belongs to the elements: ${strays.join(', ')}`);
}

const manifest = JSON.parse(readFileSync(join(dist, 'custom-elements.json'), 'utf8'));
const definitions = manifest.modules
  .flatMap((module) => module.exports ?? [])
  .filter((item) => item.kind === 'custom-element-definition');
const defined = definitions.map((item) => item.declaration.module?.replace(/^dist\//, ''));
const elements = modules.filter((path) => /^elements\/.*\/element\.js$/.test(path));
for (const path of elements) {
  if (!defined.includes(path))
    faults.push(`custom-elements.json: found no tag for ${path}, expected one from its define module`);
}
const declarations = manifest.modules.flatMap((module) => module.declarations ?? []).filter((d) => d.tagName);
/** The unique captures of a pattern. */
const said = (paths, pattern) => [
  ...new Set(
    paths.flatMap((path) =>
      [...readFileSync(join(dist, path), 'utf8').matchAll(pattern)].flatMap(([, names]) => names.split(' ')),
    ),
  ),
];
// The palette makes most names of custom properties as it runs.
const { PALETTE } = await import(pathToFileURL(join(dist, 'drawing/palette.js')).href);
const bare = (value = '') => value.replace(/["'\s]/g, '');
/** What stands where a page sets nothing, as the styles themselves say it. */
const initial = new Map(
  Object.entries(PALETTE).map(([token, { light, dark }]) => [
    `--pulse-map-${token}`,
    `light-dark(${light},${dark})`,
  ]),
);
for (const path of modules) {
  const code = readFileSync(join(dist, path), 'utf8');
  for (const [, name, value] of code.matchAll(/var\(\s*(--pulse-map-[a-z][\w-]*)\s*,([^()]*)\)/g))
    initial.set(name, bare(value));
}
for (const { tagName, cssProperties = [], cssParts = [] } of declarations) {
  for (const [name, value] of initial) {
    const told = cssProperties.find((property) => property.name === name);
    if (!told?.description)
      faults.push(
        `custom-elements.json, ${tagName}: found no custom property ${name}, expected it described`,
      );
    else if (bare(told.default) !== value)
      faults.push(
        `custom-elements.json, ${tagName}: found ${name} by default ${told.default}, expected ${value}`,
      );
  }
  const own = modules.filter((path) => path.startsWith(`elements/${tagName}/`));
  for (const name of said(own, /\bpart="([a-z ]+)"/g)) {
    if (!cssParts.some((part) => part.name === name && part.description))
      faults.push(`custom-elements.json, ${tagName}: found no part ${name}, expected it described`);
  }
}
// A bundler may drop a define module when package.json forgets that it has a side effect.
const bundled = readFileSync(join(dist, 'pulse-map.bundle.js'), 'utf8');
// What a page with the map alone never shows has an entry of its own, and stays out of the single file.
const APART = [
  'limb-observations',
  'limb-unconfirmed',
  'limb-visits',
  'pulse-lesson',
  'pulse-lesson-editor',
  'pulse-practice',
];
for (const { name } of definitions) {
  const registered = new RegExp(`["'\`]${name}["'\`]`).test(bundled);
  if (registered === APART.includes(name))
    faults.push(`pulse-map.bundle.js ${registered ? 'registers' : 'does not register'} <${name}>`);
}
if (elements.length === 0) faults.push('dist/elements: found no element.js, expected one for every element');

const npm = process.env.npm_execpath ? [process.execPath, process.env.npm_execpath] : ['npm'];
const pack = spawnSync(npm[0], [...npm.slice(1), 'pack', '--dry-run', '--json', '--ignore-scripts'], {
  cwd: root,
  encoding: 'utf8',
  shell: npm.length === 1 && process.platform === 'win32',
});
const [{ files: packed, size }] = JSON.parse(pack.stdout);
const names = packed.map((file) => file.path);
for (const name of [
  'package.json',
  'README.md',
  'CHANGELOG.md',
  'LICENSE',
  'dist/index.js',
  'dist/core.js',
  'dist/core-tables.js',
  'dist/hosts/properties.d.ts',
  'dist/hosts/web-types.json',
  'dist/hosts/vscode.html-custom-data.json',
  'dist/hosts/vscode.css-custom-data.json',
  ...forPages.map((path) => `dist/${path}`),
]) {
  if (!names.includes(name)) faults.push(`the tarball lacks ${name}`);
}
for (const name of names) {
  if (!/^(dist\/.*\.(js|js\.map|d\.ts|json|txt)|package\.json|README\.md|CHANGELOG\.md|LICENSE)$/.test(name))
    faults.push(`the tarball holds ${name}`);
}

for (const fault of faults) console.error(fault);
if (faults.length > 0) process.exit(1);
console.log(
  `${modules.length} modules load in plain Node; ${names.length} files, ${Math.round(size / 1024)} kB packed`,
);
