// The smoke tests of what is published: the tarball that npm would send, unpacked, in the same browser under the same rules
// as the tests of the sources. node_modules of the project stands in for the user's own.
import { createRequire } from 'node:module';
import { join, relative } from 'node:path';
import sources from '../../web-test-runner.config.mjs';
import { ownNamePlugin } from '../../.tools/own-name.mjs';
import { root, unpackInto } from '../tools/packed.mjs';

const home = join(root, '.cache/built');
unpackInto(home);

// As a user's page resolves the name: by the exports of the unpacked package.
const resolve = createRequire(join(home, 'page.js')).resolve;
const pathOnServer = (file) => `/${relative(root, file).replaceAll('\\', '/')}`;

const published = {
  name: 'published',
  resolveImport: ({ source }) =>
    /^pulse-map(\/|$)/.test(source) ? pathOnServer(resolve(source)) : undefined,
};

export default {
  ...sources,
  rootDir: root,
  files: 'tests/browser-built/*.test.ts',
  nodeResolve: { exportConditions: ['production', 'default'] },
  plugins: [published, ...sources.plugins.filter((plugin) => plugin !== ownNamePlugin)],
};
