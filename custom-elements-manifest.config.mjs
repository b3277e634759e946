import { readFileSync } from 'node:fs';

/** Custom properties that every element takes, beside the colours of the palette. */
const PROPERTIES = [
  ['font', 'Typeface.'],
  ['radius', 'Radius of the corners of controls.'],
  ['stroke', 'How many times as thick as usual the lines of figure and glyphs are.'],
];

/** The colours, each with the sentence that stands above it in the palette. */
function colours() {
  const code = readFileSync(new URL('src/drawing/palette.ts', import.meta.url), 'utf8');
  return [...code.matchAll(/\/\*\* (.+) \*\/\s+'?([\w-]+)'?: \{ light:/g)].map(([, use, name]) => [
    name,
    use,
  ]);
}

function addProperties(module) {
  const cssProperties = [...colours(), ...PROPERTIES].map(([name, description]) => ({
    name: `--pulse-map-${name}`,
    description,
  }));
  for (const declaration of module.declarations ?? [])
    if (declaration.customElement && declaration.tagName) declaration.cssProperties = cssProperties;
}

// The manifest speaks of src; what is published is dist.
const published = (path) => path.replace(/^\/?src\//, 'dist/').replace(/\.ts$/, '.js');

function rename(node) {
  if (Array.isArray(node)) return node.forEach(rename);
  if (!node || typeof node !== 'object') return;
  for (const [key, value] of Object.entries(node)) {
    if ((key === 'path' || key === 'module') && typeof value === 'string') node[key] = published(value);
    else rename(value);
  }
}

/** Only what a user may lean on: no private or protected members, no statics. */
function keepPublic(module) {
  for (const declaration of module.declarations ?? []) {
    declaration.members = declaration.members?.filter(
      ({ name, privacy = 'public', static: isStatic }) =>
        privacy === 'public' && !isStatic && !/^[#_]/.test(name),
    );
  }
}

export default {
  globs: ['src/elements/**/*.ts'],
  outdir: 'dist',
  litelement: true,
  packagejson: false,
  plugins: [
    {
      name: 'published',
      packageLinkPhase({ customElementsManifest }) {
        rename(customElementsManifest.modules);
        customElementsManifest.modules.forEach(keepPublic);
        customElementsManifest.modules.forEach(addProperties);
      },
    },
  ],
};
