import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

const read = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');

it('every file of stories is named in a test that walks them with axe', () => {
  const walkers = ['stories', 'house/axe-stories', 'limb-parts/stories', 'locale/stories'].map(
    (name) => `browser/${name}.test.ts`,
  );
  const text = walkers.map(read).join('\n');
  const files = readdirSync(new URL('../../../stories', import.meta.url)).filter((name) =>
    name.endsWith('.stories.ts'),
  );
  expect(files.length).toBeGreaterThan(20);
  expect(files.filter((name) => !text.includes(`stories/${name.replace(/\.ts$/, '.js')}`))).toEqual([]);
});
