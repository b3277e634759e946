import { expect } from '@open-wc/testing';
import 'axe-core/axe.min.js';
import { everything } from './perceive.js';

declare const axe: {
  getRules(tags?: readonly string[]): readonly { readonly ruleId: string }[];
};

/** Rules that axe itself files under colour. The others read structure, names and places, which no look changes. */
const COLOUR = 'cat.color';

/** Which elements can be seen, in the order of the page. */
export function seenIn(page: Element): string {
  return everything(page)
    .map((element) => (element.checkVisibility({ visibilityProperty: true }) ? 1 : 0))
    .join('');
}

/**
 * Axe finds nothing. `before` is what was seen of the same state in another look, where every rule was asked: if it is seen now too, and
 * nothing else, the rules about colour are asked alone.
 */
export async function axeFindsNothing(page: Element, before?: string): Promise<void> {
  if (before === undefined || seenIn(page) !== before) {
    await expect(page).to.be.accessible();
    return;
  }
  const ids = (tags?: readonly string[]): string[] => axe.getRules(tags).map(({ ruleId }) => ruleId);
  const colour = new Set(ids([COLOUR]));
  expect([...colour]).to.include('color-contrast');
  await expect(page).to.be.accessible({ ignoredRules: ids().filter((id) => !colour.has(id)) });
}
