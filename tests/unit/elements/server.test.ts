// Every element renders on a server, into declarative shadow DOM, by Lit's own renderer (`@lit-labs/ssr`).
import { render } from '@lit-labs/ssr';
import { collectResult } from '@lit-labs/ssr/lib/render-result.js';
import { html, type StaticValue, unsafeStatic } from 'lit/static-html.js';
import { describe, expect, it } from 'vitest';
import '../../../src/index.js';
import '../../../src/elements/limb-observations/define.js';
import '../../../src/elements/limb-unconfirmed/define.js';
import '../../../src/elements/limb-visits/define.js';
import '../../../src/elements/pulse-lesson/define.js';
import '../../../src/elements/pulse-lesson-editor/define.js';
import '../../../src/elements/pulse-practice/define.js';

const TAGS = [
  'pulse-map',
  'limb-examination',
  'pulse-lesson',
  'pulse-lesson-editor',
  'pulse-practice',
  'pulse-reading',
  'limb-flags',
  'limb-changes',
  'limb-letter',
  'limb-note',
  'limb-observations',
  'limb-unconfirmed',
  'limb-visits',
  'limb-report',
  'limb-history',
  'limb-inspection',
  'limb-context',
  'limb-pressures',
  'limb-staging',
  'bedside-test',
  'limb-stopwatch',
];

/** Elements that show nothing until there is something to tell. */
const SILENT = ['limb-flags', 'limb-changes', 'limb-unconfirmed', 'pulse-lesson'];

const rendered = (tag: StaticValue): Promise<string> =>
  collectResult(render(html`<${tag} name="limbs" lang="en" label="Limbs"></${tag}>`));

describe('on a server', () => {
  it('every element of the package is tried', async () => {
    const { readdirSync } = await import('node:fs');
    const folders = readdirSync(new URL('../../../src/elements/', import.meta.url)).filter((name) =>
      name.includes('-'),
    );
    expect([...TAGS].sort()).toEqual(folders.sort());
  });

  it.each(TAGS)('<%s> renders its words into a shadow tree', async (tag) => {
    const page = await rendered(unsafeStatic(tag));
    expect(page).toMatch(new RegExp(`^(<!--.*?-->)*<${tag}[^>]*>`));
    expect(page).toContain('<template shadowroot');
    const words =
      page
        .replace(/<style>.*?<\/style>/gs, '')
        .replace(/<[^>]*>/g, ' ')
        .match(/[A-Za-z]{3,}/g) ?? [];
    if (!SILENT.includes(tag)) expect(words.length).toBeGreaterThan(2);
    expect(page).not.toMatch(/undefined|\[object Object\]/);
  });

  it('lists hold their choices', async () => {
    expect(await rendered(unsafeStatic('limb-context'))).toMatch(
      /<option[^>]* value="knee"[^>]*>.*?Knee.*?<\/option>/,
    );
  });
});
