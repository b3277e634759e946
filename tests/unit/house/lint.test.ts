import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ESLint, Linter } from 'eslint';
import { getFileInfo } from 'prettier';
import tseslint from 'typescript-eslint';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { layers } from '../../../.tools/lint/layers.mjs';
import { noCircles } from '../../../.tools/lint/no-circles.mjs';
import { zodImport } from '../../../.tools/lint/zod-import.mjs';

// A source folder of our own, so that the rules can be tried on files the project does not have.
let src = '';
beforeAll(() => {
  src = mkdtempSync(join(tmpdir(), 'pulse-map-lint-'));
  mkdirSync(join(src, 'anatomy'));
});
afterAll(() => rmSync(src, { recursive: true, force: true }));

function faults(path: string, code: string): string[] {
  const linter = new Linter({ cwd: src });
  const found = linter.verify(
    code,
    {
      files: ['**/*.ts'],
      languageOptions: { parser: tseslint.parser as Linter.Parser },
      plugins: { house: { rules: { layers, 'no-circles': noCircles, 'zod-import': zodImport } } as never },
      rules: { 'house/layers': 'error', 'house/no-circles': 'error', 'house/zod-import': 'error' },
      settings: { house: { src } },
    },
    { filename: join(src, path) },
  );
  return found.map((fault) => fault.message);
}

describe('the layer rule', () => {
  it.each([
    ['anatomy/sites.ts', "import { parse } from '../examination/index.js';"],
    ['anatomy/sites.ts', "import type { Grade } from '../examination/index.js';"],
    ['anatomy/sites.ts', "export * from '../examination/index.js';"],
    ['anatomy/sites.ts', "export { parse } from '../examination/index.js';"],
    ['anatomy/sites.ts', "const late = import('../examination/index.js');"],
    ['anatomy/sites.ts', "type Late = import('../examination/index.js').Grade;"],
    ['localisation/rule.ts', "import { words } from '../locale/index.js';"],
    ['interchange/fhir.ts', "import { path } from '../drawing/index.js';"],
    ['drawing/figure/paths.ts', "import { PulseMap } from '../../elements/map/element.js';"],
  ])('refuses an upward import in %s: %s', (path, code) => {
    expect(faults(path, code)).toEqual([expect.stringContaining('imports run downward only')]);
  });

  it.each([
    ['examination/parse.ts', "import { sites } from '../anatomy/index.js';"],
    ['anatomy/sites.ts', "import { sides } from './sides.js';"],
    ['elements/map/element.ts', "import { paths } from '../../drawing/index.js';"],
    ['elements/map/define.ts', "import '../chooser/define.js';"],
    ['index.ts', "import './elements/map/define.js';"],
    ['core.ts', "export * from './interchange/index.js';"],
    ['anatomy/sites.ts', "import * as z from 'zod/mini';"],
  ])('lets a downward import pass in %s: %s', (path, code) => {
    expect(faults(path, code)).toEqual([]);
  });

  it.each([
    ['core.ts', "export * from './drawing/index.js';", 'entry without a DOM'],
    ['fhir.ts', "export * from './elements/map/element.js';", 'entry without a DOM'],
    ['anatomy/sites.ts', "import { core } from '../core.js';", 'imported by nothing in src'],
    ['elements/map/element.ts', "import '../chooser/define.js';", 'no side effect'],
    ['anatomy/sites.ts', "import { sides } from './sides';", 'ends in ".js"'],
    ['anatomy/sites.ts', "import { x } from '../../tests/x.js';", 'nothing outside src'],
    ['anatomy/sites.ts', "import { x } from 'pulse-map/core';", 'not by the package name'],
    ['localisation/read.ts', "import { x } from '../flow/simulate.js';", 'is loaded only by'],
    ['locale/en/map.ts', "import { x } from '../../flow/simulate.js';", 'is loaded only by'],
    ['flow/simulate.ts', "import { x } from '../localisation/read.js';", 'imports run downward only'],
    ['helpers/x.ts', "import { x } from '../anatomy/index.js';", '"helpers" is no layer'],
  ])('refuses in %s: %s', (path, code, reason) => {
    expect(faults(path, code)).toEqual([expect.stringContaining(reason)]);
  });
});

describe('the rule against circles', () => {
  it('names the way round, also when it runs through types', () => {
    writeFileSync(join(src, 'anatomy/b.ts'), "import { c } from './c.js';\nexport const b = c;");
    writeFileSync(join(src, 'anatomy/c.ts'), "import type { A } from './a.js';\nexport const c: A = 1;");
    const code = "import { b } from './b.js';\nexport type A = typeof b;";
    writeFileSync(join(src, 'anatomy/a.ts'), code);
    expect(faults('anatomy/a.ts', code)).toEqual([
      'circular import: anatomy/a.ts -> anatomy/b.ts -> anatomy/c.ts -> anatomy/a.ts',
    ]);
  });

  it('is silent where two modules share a third', () => {
    writeFileSync(join(src, 'anatomy/e.ts'), "import { f } from './f.js';\nexport const e = f;");
    writeFileSync(join(src, 'anatomy/f.ts'), 'export const f = 1;');
    expect(faults('anatomy/d.ts', "import { e } from './e.js';\nimport { f } from './f.js';")).toEqual([]);
  });
});

describe('the zod rule', () => {
  it.each([
    "import { z } from 'zod/mini';",
    "import { z } from 'zod';",
    "import * as z from 'zod';",
    "import * as zod from 'zod/mini';",
    "import z from 'zod/mini';",
    "export * from 'zod/mini';",
  ])('refuses %s', (code) => {
    expect(faults('examination/schema/site.ts', code)).toEqual([expect.stringContaining("from 'zod/mini'")]);
  });
});

describe("the project's own configuration", () => {
  it('covers the folders whose names begin with a dot', async () => {
    const eslint = new ESLint();
    for (const path of ['.tools/build.mjs', '.tools/lint/layers.mjs', '.storybook/main.ts']) {
      expect(await eslint.isPathIgnored(path), path).toBe(false);
      const { ignored } = await getFileInfo(path, { ignorePath: '.prettierignore' });
      expect(ignored, path).toBe(false);
    }
  });

  // Without the rules that ask for types: they would have the whole project read for four lines, and none of them is asked for here.
  async function rulesBroken(path: string, code: string): Promise<(string | null)[]> {
    const eslint = new ESLint({ overrideConfig: tseslint.configs.disableTypeChecked as Linter.Config });
    const [result] = await eslint.lintText(code, { filePath: path });
    return (result?.messages ?? []).map((message) => message.ruleId);
  }

  it('holds the rules of the house over src', async () => {
    const code = [
      "import { z } from 'zod';",
      "import { html } from 'lit';",
      "import { PulseMap } from './elements/map/element.js';",
      'console.log(z, html, PulseMap, document.title, new Date(), Math.random());',
    ].join('\n');
    expect(new Set(await rulesBroken('src/core.ts', code))).toEqual(
      new Set([
        'house/zod-import',
        'no-restricted-imports',
        'house/layers',
        'no-console',
        'no-restricted-globals',
        'no-restricted-syntax',
      ]),
    );
  });
});
