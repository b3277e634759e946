import { readFileSync } from 'node:fs';

/** Custom properties that every element takes, beside the colours of the palette. */
const PROPERTIES = [
  ['font', 'Typeface.'],
  ['radius', 'Radius of the corners of controls.'],
  ['stroke', 'How many times as thick as usual the lines of figure and glyphs are.'],
];

const source = (path) => readFileSync(new URL(`src/${path}`, import.meta.url), 'utf8');

/** The colours, each with the sentence that stands above it in the palette. */
function colours() {
  const entry = /\/\*\* (.+) \*\/\s+'?([\w-]+)'?: \{ light: '(#\w+)', dark: '(#\w+)' \}/g;
  return [...source('drawing/palette.ts').matchAll(entry)].map(([, description, name, light, dark]) => ({
    name: `--pulse-map-${name}`,
    description,
    syntax: '<color>',
    default: `light-dark(${light}, ${dark})`,
  }));
}

/** What stands where a page sets nothing. */
function fallback(name) {
  const [, value] =
    new RegExp(`var\\(\\s*${name},([^()]+)\\)`).exec(source('elements/common/tokens.ts')) ?? [];
  return value?.replace(/\s+/g, ' ').trim();
}

function otherProperties() {
  return PROPERTIES.map(([name, description]) => {
    const full = `--pulse-map-${name}`;
    return { name: full, description, default: fallback(full) };
  });
}

function addProperties(module) {
  const cssProperties = [...colours(), ...otherProperties()];
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

/** What the browser or Lit calls, and no page. */
const CALLED = /^(form\w+|attributeChanged|connected|disconnected|adopted)Callback$/;

/** Only what a page may lean on: elements with a tag, their public members, and events that are described. */
function keepPublic(module) {
  module.declarations = (module.declarations ?? []).filter(({ tagName }) => tagName);
  const kept = module.declarations.map(({ name }) => name);
  module.exports = (module.exports ?? []).filter(
    ({ kind, declaration }) =>
      kept.includes(declaration?.name) ||
      (kind === 'custom-element-definition' && declaration.module?.endsWith('/element.js')),
  );
  for (const declaration of module.declarations) {
    declaration.members = declaration.members?.filter(
      ({ name, privacy = 'public', static: isStatic }) =>
        privacy === 'public' && !isStatic && !/^[#_]/.test(name) && !CALLED.test(name),
    );
    declaration.events = declaration.events?.filter(({ description }) => description);
    // As with an `<input>`, the attribute `value` is what the property `defaultValue` says.
    for (const attribute of declaration.attributes ?? [])
      if (attribute.name === 'value')
        Object.assign(attribute, { fieldName: 'defaultValue', type: { text: 'string' } });
  }
}

/** What a property takes, by class and name, where it takes more than it gives. */
const taken = new Map();

/** The words of a union type, without those that the getter has too: `T` of a class of `T`s is what its `value` gives. */
function noteSetters(ts, node) {
  const generic = node.typeParameters?.map(({ name }) => name.text) ?? [];
  for (const setter of node.members.filter(ts.isSetAccessorDeclaration)) {
    const name = setter.name.getText();
    const getter = node.members.find((m) => ts.isGetAccessorDeclaration(m) && m.name.getText() === name);
    const given = partsOf(ts, getter?.type);
    const more = partsOf(ts, setter.parameters[0]?.type).filter(
      (part) => !given.includes(part) && !generic.includes(part),
    );
    if (more.length) taken.set(`${node.name?.text}.${name}`, more);
  }
}

const partsOf = (ts, type) =>
  type ? (ts.isUnionTypeNode(type) ? type.types : [type]).map((part) => part.getText()) : [];

/** A property of an element says `takes`: the types that it takes beside the one it gives. */
function addTaken(module) {
  for (const { name, members = [] } of module.declarations ?? [])
    for (const member of members) {
      const takes = taken.get(`${member.inheritedFrom?.name ?? name}.${member.name}`);
      if (takes) member.takes = takes;
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
      analyzePhase({ ts, node }) {
        if (ts.isClassDeclaration(node)) noteSetters(ts, node);
      },
      packageLinkPhase({ customElementsManifest: manifest }) {
        rename(manifest.modules);
        manifest.modules.forEach(keepPublic);
        manifest.modules = manifest.modules.filter(({ exports }) => exports.length);
        manifest.modules.forEach(addProperties);
        manifest.modules.forEach(addTaken);
      },
    },
  ],
};
