import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

describe('what may not be selected', () => {
  it('is so in Safari too, which knows the property by its own name only', () => {
    const times = (text: string, property: string): number =>
      text.split(new RegExp(`(?<![\\w-])${property}:`)).length - 1;
    const styled = readdirSync('src/elements', { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.ts'))
      .map((file) => ({ file, text: readFileSync(`src/elements/${file}`, 'utf8') }))
      .filter(({ text }) => times(text, 'user-select') > 0);
    expect(styled.length).toBeGreaterThan(1);
    for (const { file, text } of styled)
      expect(times(text, '-webkit-user-select'), file).toBe(times(text, 'user-select'));
  });
});
