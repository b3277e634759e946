import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { ownName } from '../.tools/own-name.mjs';

const folder = fileURLToPath(new URL('.', import.meta.url));

// Every page directly in this folder is a page of the demo.
const pages = readdirSync(folder).filter((name) => name.endsWith('.html'));

export default defineConfig({
  root: folder,
  base: './',
  resolve: { alias: ownName },
  build: {
    outDir: 'dist',
    emptyOutDir: true,
    target: 'es2022',
    rolldownOptions: { input: pages.map((page) => `${folder}${page}`) },
  },
});
