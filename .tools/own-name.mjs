// Aliases of the package's own name to its sources: demo, stories and tests import it like users do, without a build.
// tsconfig.json says the same to TypeScript ("paths").
import { fileURLToPath } from 'node:url';

const src = fileURLToPath(new URL('../src', import.meta.url)).replaceAll('\\', '/');

/** For vite and vitest (`resolve.alias`). */
export const ownName = [
  { find: /^pulse-map\/elements\/([^/]+)\/define$/, replacement: `${src}/elements/$1/define.ts` },
  { find: /^pulse-map\/elements\/([^/]+)$/, replacement: `${src}/elements/$1/element.ts` },
  { find: /^pulse-map\/locale\/([^/]+)$/, replacement: `${src}/locale/$1/register.ts` },
  { find: /^pulse-map\/core\/tables$/, replacement: `${src}/core-tables.ts` },
  { find: /^pulse-map\/flow\/worker$/, replacement: `${src}/flow-worker.ts` },
  {
    find: /^pulse-map\/(core|fhir|flow|lesson|letter|notes|picture|practice|report)$/,
    replacement: `${src}/$1.ts`,
  },
  { find: /^pulse-map$/, replacement: `${src}/index.ts` },
];

/** For the browser test runner. */
export const ownNamePlugin = {
  name: 'own-name',
  resolveImport({ source }) {
    const alias = ownName.find(({ find }) => find.test(source));
    return alias && source.replace(alias.find, alias.replacement).replace(src, '/src');
  },
};
