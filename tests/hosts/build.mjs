// Builds the applications of this folder as their makers would: from the unpacked package, each with its framework's own tools, in
// .cache/hosts. The project's node_modules stands in for their own.
import { transformAsync } from '@babel/core';
import linker from '@angular/compiler-cli/linker/babel';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import vue from '@vitejs/plugin-vue';
import { cpSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build as viteBuild } from 'vite';
import { root, run, unpackInto } from '../tools/packed.mjs';

const APPS = ['react', 'vue', 'svelte', 'angular', 'static', 'ssr', 'node'];
export const home = join(root, '.cache/hosts');
const dist = join(home, 'dist');
export const bin = (path) => join(root, 'node_modules', path);

/** Angular's packages, and our entry for it, are published half compiled; an application's build completes them. */
const angularLinker = {
  name: 'angular-linker',
  transform: {
    filter: { code: 'ɵɵngDeclare' },
    async handler(code, id) {
      const done = await transformAsync(code, {
        filename: id,
        configFile: false,
        babelrc: false,
        compact: false,
        plugins: [linker],
      });
      return { code: done.code, map: null };
    },
  },
};

/** Builds the pages of one application with Vite. */
const vite = (app, pages, plugins = [], folder = app) =>
  viteBuild({
    root: join(home, folder),
    base: './',
    configFile: false,
    logLevel: 'warn',
    plugins,
    build: {
      outDir: join(dist, app),
      emptyOutDir: true,
      minify: false,
      reportCompressedSize: false,
      chunkSizeWarningLimit: Infinity,
      rolldownOptions: { input: pages.map((page) => join(home, folder, page)) },
    },
  });

async function react() {
  await viteBuild({
    root: join(home, 'react'),
    configFile: false,
    logLevel: 'warn',
    build: { ssr: 'server.tsx', outDir: join(home, 'react/server'), minify: false },
  });
  const { page } = await import(pathToFileURL(join(home, 'react/server/server.js')).href);
  const hydrated = join(home, 'react/hydrated.html');
  const served = readFileSync(hydrated, 'utf8').replace(/(?<=<div id="app">)/, () => page());
  writeFileSync(hydrated, served);
  await vite('react', ['client.html', 'hydrated.html', 'action.html']);
}

async function angular() {
  run(process.execPath, [
    bin('@angular/compiler-cli/bundles/src/bin/ngc.js'),
    ...['-p', join(home, 'angular'), '--outDir', join(home, 'angular/out')],
  ]);
  cpSync(join(home, 'angular/index.html'), join(home, 'angular/out/index.html'));
  await vite('angular', ['index.html'], [angularLinker], 'angular/out');
}

async function ssr() {
  writeFileSync(join(home, 'ssr/index.html'), run(process.execPath, ['server.mjs'], join(home, 'ssr')));
  await vite('ssr', ['index.html']);
}

function fromStaticHost(installed) {
  cpSync(join(home, 'static'), join(dist, 'static'), { recursive: true });
  for (const file of ['pulse-map.bundle.js', 'pulse-map.locale-de.js'])
    cpSync(join(installed, 'dist', file), join(dist, 'static', file));
}

/** Builds all of them, as while one develops, so that each framework says what it does not like; returns the folder to serve. */
export async function buildHosts() {
  process.env.NODE_ENV = 'development';
  const installed = unpackInto(home);
  writeFileSync(join(home, 'package.json'), '{ "name": "hosts", "private": true, "type": "module" }\n');
  for (const app of APPS)
    cpSync(fileURLToPath(new URL(app, import.meta.url)), join(home, app), { recursive: true });
  mkdirSync(dist, { recursive: true });
  await react();
  const isCustomElement = (tag) => tag.includes('-');
  await vite('vue', ['index.html'], [vue({ template: { compilerOptions: { isCustomElement } } })]);
  await vite('svelte', ['index.html'], [svelte({ configFile: false })]);
  await angular();
  await ssr();
  fromStaticHost(installed);
  return dist;
}
