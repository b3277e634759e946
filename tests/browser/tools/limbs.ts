// The parts of the examination on a page, and what one does with them.
import { everything, painted } from './perceive.js';

interface Updates {
  updateComplete?: Promise<unknown>;
}

/** Drawn, with every element inside it. */
export async function drawn(root: Element): Promise<void> {
  for (let round = 0; round < 3; round++) {
    for (const element of everything(root)) await (element as Updates).updateComplete;
  }
  await painted();
}

/** The visible text field or list with a label of these words. */
export function field<E extends HTMLElement = HTMLInputElement>(root: Element, label: string | RegExp): E {
  const fits = (text: string | null | undefined): boolean => {
    const tidy = (text ?? '').replace(/\s+/g, ' ').trim();
    return typeof label === 'string' ? tidy === label : label.test(tidy);
  };
  const found = everything(root).filter(
    (element) =>
      ['input', 'select', 'textarea'].includes(element.localName) &&
      element.checkVisibility({ visibilityProperty: true }) &&
      (fits(element.getAttribute('aria-label')) ||
        [...((element as HTMLInputElement).labels ?? [])].some((l) =>
          fits(l.querySelector('span')?.textContent),
        )),
  );
  if (found.length !== 1) throw new Error(`${found.length} fields labelled ${String(label)}`);
  return found[0] as unknown as E;
}
