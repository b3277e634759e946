import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { shownIn, snippetsIn, withSnippets } from '../../../.tools/snippets.mjs';

const readme = readFileSync(new URL('../../../README.md', import.meta.url), 'utf8');

describe('the examples of the README', () => {
  it('stand as in the applications that the suite runs (node .tools/snippets.mjs)', async () => {
    expect(await withSnippets(readme)).toBe(readme);
  });

  it('show every host', () => {
    const hosts = [
      'static',
      'react',
      'react-action',
      'vue',
      'svelte',
      'angular',
      'ssr',
      'policy',
      'exchange',
    ];
    expect(shownIn(readme).sort()).toEqual(hosts.sort());
  });

  it('leave out what serves the test alone', () => {
    const text =
      '<!-- snippet a -->\n  <p>\n  <!-- snippet hide -->\n  <b>\n  <!-- snippet show -->\n  </p>\n<!-- snippet end -->';
    expect([...snippetsIn(text, 'a.html')]).toEqual([['a', '<p>\n</p>']]);
  });

  it('end where they begin', () => {
    expect(() => snippetsIn('// snippet a', 'a.ts')).toThrow('a.ts: found no end of snippet a');
    expect(() => snippetsIn('// snippet end', 'a.ts')).toThrow('expected a snippet before it');
    expect(() => snippetsIn('// snippet a\n// snippet b', 'a.ts')).toThrow('expected the end of a');
  });
});
