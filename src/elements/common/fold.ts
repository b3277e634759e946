import { html, noChange, nothing, type TemplateResult } from 'lit';
import { type ChildPart, Directive, directive } from 'lit/directive.js';
import { setChildPartValue } from 'lit/directive-helpers.js';

type Content = () => unknown;

/** Renders the content of a `<details>` lazily, when it is first opened. It listens for as long as its `<details>` stands. */
class OnceOpen extends Directive {
  #details: HTMLDetailsElement | undefined;
  #content: Content = () => nothing;
  #opened = false;

  override render(content: Content): unknown {
    this.#content = content;
    this.#opened ||= this.#details?.open ?? false;
    return this.#opened ? content() : nothing;
  }

  override update(part: ChildPart, [content]: [Content]): unknown {
    if (!this.#details) {
      this.#details = part.parentNode as HTMLDetailsElement;
      this.#details.addEventListener('toggle', () => {
        if (!this.#opened) setChildPartValue(part, this.render(this.#content), this);
      });
    }
    return this.render(content);
  }
}

const onceOpen = directive(OnceOpen);

/**
 * A `<details>` whose content is rendered only once it has been opened.
 * @param open forces it open; otherwise the user's choice stays
 * @param as its part, which is a class as well, and a further class, where it has them
 */
export function fold(
  summary: string,
  open: boolean,
  content: Content,
  { part = '', look = '' } = {},
): TemplateResult {
  return html`<details class="also ${part} ${look}" part=${part || nothing} ?open=${open || noChange}>
    <summary>${summary}</summary>
    ${onceOpen(content)}
  </details>`;
}
