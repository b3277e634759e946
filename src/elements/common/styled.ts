import { noChange } from 'lit';
import { directive, Directive, type ElementPart } from 'lit/directive.js';

type Styles = Readonly<Record<string, string | number>>;

class Styled extends Directive {
  render(_styles: Styles): typeof noChange {
    return noChange;
  }

  override update(part: ElementPart, [styles]: [Styles]): typeof noChange {
    const { style } = part.element as HTMLElement | SVGElement;
    for (const [name, value] of Object.entries(styles)) style.setProperty(name, String(value));
    return noChange;
  }
}

/**
 * Sets style properties on the element it stands on, always the same ones. It never writes a `style` attribute, which a
 * strict content security policy forbids: Lit's own `styleMap` does so the first time.
 */
export const styled: (styles: Styles) => unknown = directive(Styled);
