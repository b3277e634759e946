import { expect, it } from 'vitest';
import { figureStyles } from '../../../src/elements/pulse-map/figure/styles.js';
import { mapStyles } from '../../../src/elements/pulse-map/styles.js';

/** What is styled by its place among its siblings: the last part of each such selector. */
function besides(text: string): string[] {
  const selectors = [...text.matchAll(/([^{};]+)\{/g)].map(([, selector]) => selector!.trim());
  return selectors
    .filter((selector) => !selector.startsWith('@'))
    .flatMap((selector) => selector.split(/,(?![^()]*\))/))
    .flatMap((selector) => /[~+]\s*([^~+]*)$/.exec(selector)?.[1]?.trim() ?? [])
    .map((after) => after.split(/[\s>]+/).at(-1)!);
}

it('asks no element of a map but those it means for its siblings before it', () => {
  const meant = besides(mapStyles.cssText + figureStyles.cssText);
  expect(meant.length).toBeGreaterThan(6);
  // The browser looks selectors up by the class or name that they end with, and tries one without for every element.
  expect(meant.filter((last) => !/^[.a-z]/.test(last))).toEqual([]);
});
