// The layers of the source, lowest first, and the lint rule that enforces them: imports go downward only.
import { posix, relative, sep } from 'node:path';

/** Low to high. A module imports from its own layer and from those before it, never from those after. */
export const LAYERS = [
  'anatomy',
  'examination',
  'pressures',
  'bedside',
  'triage',
  'staging',
  'comparison',
  'flow',
  'localisation',
  'statements',
  'report',
  'letter',
  'locale',
  'interchange',
  'notes',
  'drawing',
  'lesson',
  'practice',
  'elements',
  'angular',
];

/** Layers that entries without a DOM (every file directly in src but index.ts) may not import. */
const ABOVE_CORE = ['drawing', 'elements'];
/** Entries that draw; nothing below the elements needs a DOM. */
const DRAWS = ['picture.ts'];

/** Layers that only some others may load: the map knows nothing of the simulated patient, nor does the localisation it tests. */
const APART = { flow: ['flow', 'lesson', 'practice', 'elements'] };

/** Calls `check(node, specifier)` for everything that names another module: import, export from, import(), import type. */
export function visitSpecifiers(check) {
  const ofSource = (node) => {
    if (node.source?.type === 'Literal') check(node.source, String(node.source.value));
  };
  return {
    ImportDeclaration: ofSource,
    ExportNamedDeclaration: ofSource,
    ExportAllDeclaration: ofSource,
    ImportExpression: ofSource,
    TSImportType: ofSource,
  };
}

/** Path below src with forward slashes, or undefined for a file elsewhere. */
export function pathInSrc(filename, src) {
  const path = relative(src, filename).split(sep).join('/');
  return path.startsWith('..') ? undefined : path;
}

export const srcOf = (context) => context.settings.house?.src ?? `${context.cwd}/src`;

function fault(from, specifier) {
  if (/^pulse-map(\/|$)/.test(specifier))
    return 'src names its own modules by relative paths, not by the package name';
  if (!specifier.startsWith('.')) return undefined;
  if (!specifier.endsWith('.js')) return `a relative import ends in ".js", found "${specifier}"`;
  const to = posix.join(posix.dirname(from), specifier);
  if (to.startsWith('..')) return `src imports nothing outside src, found "${specifier}"`;

  const [fromLayer] = from.includes('/') ? from.split('/') : [undefined];
  const [toLayer] = to.includes('/') ? to.split('/') : [undefined];
  for (const layer of [fromLayer, toLayer]) {
    if (layer && !LAYERS.includes(layer))
      return `"${layer}" is no layer; the layers are ${LAYERS.join(', ')}`;
  }
  if (!fromLayer) {
    const hidden =
      from !== 'index.ts' && ABOVE_CORE.includes(toLayer) && !(toLayer === 'drawing' && DRAWS.includes(from));
    return hidden ? `"${from}" is an entry without a DOM and may not import from "${toLayer}"` : undefined;
  }
  if (!toLayer) return `an entry ("${to}") is imported by nothing in src but other entries`;
  if (LAYERS.indexOf(toLayer) > LAYERS.indexOf(fromLayer)) {
    return `imports run downward only: "${fromLayer}" lies below "${toLayer}"`;
  }
  if (APART[toLayer]?.includes(fromLayer) === false) {
    return `"${toLayer}" is loaded only by ${APART[toLayer].join(', ')}, and by entries of the package`;
  }
  if (/\/define\.js$/.test(to) && !/\/define\.ts$/.test(from)) {
    return 'only define modules and src/index.ts import a define module; a class module has no side effect';
  }
  return undefined;
}

export const layers = {
  meta: { type: 'problem', schema: [], docs: { description: 'imports run downward only' } },
  create(context) {
    const from = pathInSrc(context.filename, srcOf(context));
    if (!from) return {};
    return visitSpecifiers((node, specifier) => {
      const message = fault(from, specifier);
      if (message) context.report({ node, message });
    });
  },
};
