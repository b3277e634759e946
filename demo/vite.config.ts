import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { ownName } from '../.tools/own-name.mjs';

const folder = fileURLToPath(new URL('.', import.meta.url));

// Every page directly in this folder is a page of the demo.
const pages = readdirSync(folder).filter((name) => name.endsWith('.html'));

export default defineConfig({
  root: folder,
  base: './',
  resolve: { alias: ownName },
  plugins: [
    // The built demo is kept whole on the first visit and works without a connection; a newer one waits until the person asks for it.
    VitePWA({
      registerType: 'prompt',
      injectRegister: false,
      manifest: {
        name: 'Alder Row Clinic, a demonstration of Pulse Map',
        short_name: 'Pulse Map',
        description: 'A visit form of an invented clinic, with the pulse map among its fields.',
        start_url: './',
        scope: './',
        display: 'standalone',
        background_color: '#f5f4f1',
        theme_color: '#f5f4f1',
        icons: [{ src: 'icon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' }],
      },
      workbox: {
        globPatterns: ['**/*.{html,js,css,svg}'],
        // A chunk that is not kept would be missed only without a connection: the build fails instead.
        maximumFileSizeToCacheInBytes: 4_000_000,
      },
    }),
  ],
  build: {
    outDir: 'dist',
    emptyOutDir: true,
    target: 'es2022',
    rolldownOptions: { input: pages.map((page) => `${folder}${page}`) },
  },
});
