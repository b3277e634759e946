import { chmodSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findBrowser } from '../../../.tools/find-browser.mjs';
import { ownName } from '../../../.tools/own-name.mjs';

const text = (path: string) => readFileSync(new URL(`../../../${path}`, import.meta.url), 'utf8');
const pkg = JSON.parse(text('package.json')) as {
  dependencies: Record<string, string>;
  exports: Record<string, unknown>;
};

describe('the package', () => {
  it('leans on four packages at run time and no more', () => {
    expect(Object.keys(pkg.dependencies).sort()).toEqual(['d3-scale', 'd3-shape', 'lit', 'zod']);
  });

  it('imports each of them somewhere in its sources', () => {
    const src = new URL('../../../src/', import.meta.url);
    const sources = readdirSync(src, { recursive: true, encoding: 'utf8' })
      .filter((path) => path.endsWith('.ts'))
      .map((path) => readFileSync(new URL(path, src), 'utf8'))
      .join('\n');
    const unused = Object.keys(pkg.dependencies).filter(
      (name) => !new RegExp(`from '${name}(/|')`).test(sources),
    );
    expect(unused).toEqual([]);
  });

  it('has a lock file that names no address to download from', () => {
    expect(text('package-lock.json')).not.toMatch(/"resolved": "(?!file:)/);
    expect(text('package-lock.json')).not.toMatch(/https?:\/\/(localhost|\d)/);
  });

  it('leads every one of its entries to its sources for demo, stories and tests', () => {
    const entries = Object.keys(pkg.exports).filter(
      (entry) => !/json$|bundle$|\/(react|vue|svelte|angular)$/.test(entry),
    );
    for (const entry of entries) {
      const name = entry.replace(/^\./, 'pulse-map').replace('*', 'some-element');
      expect(ownName.filter(({ find }) => find.test(name)).length, name).toBe(1);
      expect(text('tsconfig.json')).toContain(`"${entry.replace(/^\./, 'pulse-map')}":`);
    }
  });
});

describe('findBrowser', () => {
  let folder = '';
  const program = () => join(folder, 'google-chrome');
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'pulse-map-browser-'));
    for (const name of ['chromium', 'google-chrome']) {
      writeFileSync(join(folder, name), '');
      chmodSync(join(folder, name), 0o755);
    }
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it('takes CHROME_PATH before anything installed', () => {
    expect(findBrowser({ env: { CHROME_PATH: program(), PATH: '' } })).toBe(program());
  });

  it('says what is wrong with a CHROME_PATH that cannot be run', () => {
    const env = { CHROME_PATH: join(folder, 'nothing') };
    expect(() => findBrowser({ env })).toThrow(/CHROME_PATH: found ".*nothing", expected/);
  });

  it('looks along PATH on Linux', () => {
    expect(findBrowser({ platform: 'linux', env: { PATH: folder } })).toBe(join(folder, 'chromium'));
  });

  it('finds nothing where nothing is installed', () => {
    expect(findBrowser({ platform: 'win32', env: {} })).toBeUndefined();
  });
});
