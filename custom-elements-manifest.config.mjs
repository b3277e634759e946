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

export default {
  globs: ['src/elements/**/*.ts'],
  outdir: 'dist',
  litelement: true,
  packagejson: false,
  plugins: [
    {
      name: 'published-paths',
      packageLinkPhase({ customElementsManifest }) {
        rename(customElementsManifest.modules);
      },
    },
  ],
};
