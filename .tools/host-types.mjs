// Makes dist/hosts/: types for the templates of React, Vue and Svelte, and what editors know of the elements, all from the
// custom elements manifest.
import { copyFileSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { generateJetBrainsWebTypes } from 'custom-element-jet-brains-integration';
import { generateVsCodeCustomElementData } from 'custom-element-vs-code-integration';

const root = fileURLToPath(new URL('..', import.meta.url));
const templates = fileURLToPath(new URL('hosts', import.meta.url));

/** Names of types in the text of one, which the package must export. */
const namesIn = (text) => text.match(/\b[A-Z]\w+/g) ?? [];

const comment = (text, indent) =>
  text ? `${indent}/** ${text.replaceAll('\n', `\n${indent} * `)} */\n` : '';

/** A property as a template sets it; the attribute too, where it is written otherwise. */
function property({ name, attribute, description, takes = [] }, { name: type }) {
  const text = [`${type}['${name}']`, ...takes.filter((taken) => taken !== 'undefined')].join(' | ');
  const names = attribute && attribute !== name ? [name, `'${attribute}'`] : [name];
  return names.map((key) => `${comment(description, '  ')}  ${key}?: ${text} | undefined;\n`).join('');
}

const event = ({ name, type, description }) => `${comment(description, '  ')}  '${name}': ${type.text};\n`;

/**
 * What a page may set on each element and what it hears from it, as the module `properties.d.ts`.
 * @param elements the declarations of the manifest that have a tag
 */
export function propertiesModule(elements) {
  const settable = ({ kind, readonly }) => kind === 'field' && !readonly;
  const parts = elements.map((element) => {
    const { name, tagName, members, events = [] } = element;
    const fields = members.filter(settable);
    return {
      tagName,
      name,
      names: [
        ...events.flatMap(({ type }) => namesIn(type.text)),
        ...fields.flatMap(({ takes = [] }) => takes.flatMap(namesIn)),
      ],
      text: [
        `/** What a page may set on \`<${tagName}>\`. */\nexport interface ${name}Properties {\n`,
        ...fields.map((field) => property(field, element)),
        `}\n\n/** What a page hears from \`<${tagName}>\`. */\nexport interface ${name}Events {\n`,
        ...events.map(event),
        '}\n',
      ].join(''),
    };
  });
  const list = (suffix) => parts.map(({ tagName, name }) => `  '${tagName}': ${name}${suffix};\n`).join('');
  const names = [...new Set(parts.flatMap((part) => part.names))].filter((name) => name !== 'Event').sort();
  return [
    `import type { ${['From', ...names].sort().join(', ')} } from '../index.js';\n`,
    ...parts.map(
      ({ tagName, name }) => `import type { ${name} } from '../elements/${tagName}/element.js';\n`,
    ),
    '\nexport type { From };\n\n',
    parts.map(({ text }) => text).join('\n'),
    `\n/** The elements by their tags. */\nexport interface Elements {\n${list('')}}\n`,
    `\nexport interface Properties {\n${list('Properties')}}\n`,
    `\nexport interface Events {\n${list('Events')}}\n`,
  ].join('');
}

/** Writes everything that hosts and editors read beside the modules themselves. */
export function hostTypes() {
  const manifest = JSON.parse(readFileSync(join(root, 'dist/custom-elements.json'), 'utf8'));
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  const outdir = join(root, 'dist/hosts');
  mkdirSync(outdir, { recursive: true });
  const elements = manifest.modules.flatMap(({ declarations }) => declarations);
  writeFileSync(join(outdir, 'properties.d.ts'), propertiesModule(elements));
  for (const file of readdirSync(templates)) {
    copyFileSync(join(templates, file), join(outdir, file));
    // Types alone; the module stands there for tools that load what they find imported.
    writeFileSync(join(outdir, file.replace('.d.ts', '.js')), 'export {};\n');
  }
  // The colours are told once, in the style sheets; at every element they would be four fifths of the text.
  const brief = { outdir, hideCssPropertiesDocs: true, hideLogs: true };
  generateVsCodeCustomElementData(structuredClone(manifest), brief);
  generateJetBrainsWebTypes(structuredClone(manifest), { ...brief, packageJson: false });
  const webTypes = join(outdir, 'web-types.json');
  const data = JSON.parse(readFileSync(webTypes, 'utf8'));
  writeFileSync(webTypes, JSON.stringify({ ...data, name: 'pulse-map', version }));
}
