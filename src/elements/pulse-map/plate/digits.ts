import {
  html,
  type LitElement,
  nothing,
  type ReactiveController,
  svg,
  type SVGTemplateResult,
  type TemplateResult,
} from 'lit';
import {
  digitLimbOf,
  digitsSaid,
  digitsWord,
  type DigitView,
  digitViews,
  digitWord,
  isAnySeen,
  type PlacedDigits,
  standApart,
} from '../../../drawing/plates/digits.js';
import type { Layout } from '../../../drawing/layout.js';
import {
  type Digit,
  type DigitLimb,
  DIGIT_STATES,
  DIGITS,
  type DigitState,
  type Examination,
  isDigitLocked,
  setDigit,
} from '../../../examination/index.js';
import type { Messages } from '../../../locale/index.js';
import { choices } from '../../common/choices.js';
import { hangPanel } from '../chooser/position.js';
import { WhileOpen } from '../chooser/while-open.js';
import { digitGlyph } from './digit-glyph.js';

const number = (value: number): number => Math.round(value * 10) / 10;

/** What is drawn and pressed of the digits of a plate; one target each where they stand apart, else one for all. */
type Target = Digit | 'all';

/** What it takes of the map. */
export interface DigitHost {
  readonly element: LitElement;
  readonly view: string;
  readonly examination: Examination;
  /** The record it is compared with. */
  readonly earlier: Examination | undefined;
  readonly editable: boolean;
  readonly narrow: boolean;
  /** Whether a press draws on the skin. */
  readonly drawing: boolean;
  /** Nothing until they have been fetched. */
  readonly words: Messages | undefined;
  record(next: Examination, told: string): void;
  /** Leaves the plate. @returns whether there was a way back */
  back(): boolean;
}

/** Fingers and toes on their plates: what is recorded, and the panel that records it. */
export class Digits implements ReactiveController {
  /** What the panel is open for. */
  #open: Target | undefined;
  /** The digit in the tab order. */
  #active: Digit = 'first';
  #focus: string | undefined;
  readonly #whileOpen = new WhileOpen(
    (event) => this.#outside(event),
    () => this.#moved(),
  );

  constructor(private readonly host: DigitHost) {
    host.element.addController(this);
  }

  hostDisconnected(): void {
    this.#open = undefined;
    this.#whileOpen.set(false);
  }

  hostUpdated(): void {
    if (!this.host.words || !this.#limb || !this.host.editable) this.#open = undefined;
    const panel = this.#panel;
    this.#whileOpen.set(panel !== null);
    if (panel && !panel.matches(':popover-open')) panel.showPopover();
    if (panel) this.#hang(panel);
    const wanted = this.#focus && this.host.element.renderRoot.querySelector<SVGElement>(this.#focus);
    this.#focus = undefined;
    if (wanted) wanted.focus({ preventScroll: true });
  }

  /** The digits on the drawing of a plate. */
  layer(
    { digits, glyphScale }: Layout,
    { editable, barred }: { readonly editable: boolean; readonly barred: boolean },
  ): SVGTemplateResult | typeof nothing {
    const words = this.host.words;
    if (!digits || !words) return nothing;
    const views = this.#views(digits.limb, words);
    const apart = standApart(digits);
    const button = (target: Target, name: string, inner: unknown, at?: string): SVGTemplateResult =>
      svg`<g class="digit ${this.#open === target ? 'open' : ''}" part="digit" role="button" data-digit=${target} aria-label=${name}
          tabindex=${barred ? nothing : target === 'all' || target === this.#active ? 0 : -1} aria-haspopup="dialog"
          aria-expanded=${this.#open === target} aria-disabled=${editable ? nothing : 'true'} transform=${at ?? nothing}>${inner}</g>`;
    const glyph = (view: DigitView, at = ''): SVGTemplateResult =>
      svg`<g transform="${at}scale(${digits.glyphScale.toFixed(3)}) translate(-12 -12)">${digitGlyph(view, true)}</g>`;
    const spots = digits.spots.map((spot) => ({
      spot,
      view: views.find(({ digit }) => digit === spot.digit) as DigitView,
    }));
    const content = apart
      ? spots.map(({ spot, view }) =>
          button(
            view.digit,
            view.name,
            svg`<circle class="target" r=${number(digits.reach)}></circle><circle class="ring" r=${number(Math.min(digits.reach - 2, 17 * glyphScale))}></circle>${glyph(view)}`,
            `translate(${number(spot.x)} ${number(spot.y)})`,
          ),
        )
      : button(
          'all',
          digitsSaid(views, digits.limb, words),
          svg`<path class="target row" d=${rowOf(digits)}></path><path class="ring row" d=${rowOf(digits)}></path>${spots.map(
            ({ spot, view }) => glyph(view, `translate(${number(spot.x)} ${number(spot.y)}) `),
          )}`,
        );
    return svg`<g class="digits" role="group" aria-label=${digitsWord(digits.limb, words)} @click=${this.#click} @keydown=${this.#keydown}>${content}</g>`;
  }

  /** What stands at each digit of the plate, where any was looked at. */
  seen(): readonly DigitView[] | undefined {
    const [limb, words] = [this.#limb, this.host.words];
    const views = limb && words ? this.#views(limb, words) : [];
    return isAnySeen(views) ? views : undefined;
  }

  #views(limb: DigitLimb, words: Messages): readonly DigitView[] {
    return digitViews(this.host.examination, limb, words, this.host.earlier);
  }

  /** Below the drawing: what is recorded, in words; and the panel while it is open. */
  template(): TemplateResult | typeof nothing {
    const [limb, words] = [this.#limb, this.host.words];
    if (!limb) return nothing;
    // Its line is kept free until the words are there, so that nothing moves.
    if (!words) return html`<p class="legend digits-said"></p>`;
    const views = this.#views(limb, words);
    return html`<p class="legend digits-said">${digitsSaid(views, limb, words)}</p>
      ${this.#open ? this.#panelOf(this.#open, limb, views, words) : nothing}`;
  }

  get #limb(): DigitLimb | undefined {
    return digitLimbOf(this.host.view);
  }

  get #panel(): HTMLElement | null {
    return this.host.element.renderRoot.querySelector('.digit-panel');
  }

  #panelOf(target: Target, limb: DigitLimb, views: readonly DigitView[], words: Messages): TemplateResult {
    const { examination } = this.host;
    const rows = views.filter(({ digit }) => target === 'all' || digit === target);
    const title = target === 'all' ? digitsWord(limb, words) : digitWord(limb, target, words);
    return html`<div
      class="digit-panel ${this.host.narrow ? 'at-foot' : ''}"
      popover="manual"
      role="dialog"
      aria-label=${title}
      @keydown=${this.#panelKey}
    >
      <h2>${title}</h2>
      ${rows.map(
        ({ digit, state, kind, said }) =>
          html`<div class="digit-row">
            ${target === 'all' ? html`<span aria-hidden="true">${digitWord(limb, digit, words)}</span>` : nothing}
            ${kind === 'unknown' ? html`<span>${said}</span>` : nothing}
            ${choices<DigitState>({
              label: digitWord(limb, digit, words),
              options: DIGIT_STATES.map((one) => [one, words.marks.digitStates[one]] as const),
              value: state,
              disabled: isDigitLocked(examination, limb, digit),
              pick: (next) => this.#record(limb, digit, next),
            })}
          </div>`,
      )}
      <button type="button" class="button" data-tool="close-digits" @click=${() => this.#close(true)}>
        ${words.map.close}
      </button>
    </div>`;
  }

  #record(limb: DigitLimb, digit: Digit, state: DigitState | undefined): void {
    const words = this.host.words;
    if (!words) return;
    const said = state ? words.marks.digitStates[state] : words.map.cleared;
    this.host.record(
      setDigit(this.host.examination, limb, digit, state),
      `${digitWord(limb, digit, words)}: ${said}`,
    );
  }

  #toggle(target: Target): void {
    if (!this.host.editable || !this.host.words) return;
    if (this.#open === target) return this.#close(true);
    this.#open = target;
    if (target !== 'all') this.#active = target;
    this.#focus = '.digit-panel [role=radio][tabindex="0"]:not(:disabled), .digit-panel [data-tool]';
    this.host.element.requestUpdate();
  }

  #close(refocus: boolean): void {
    if (!this.#open) return;
    if (refocus) this.#focus = `.stage [data-digit=${this.#open}]`;
    this.#open = undefined;
    this.host.element.requestUpdate();
  }

  readonly #click = (event: Event): void => {
    const target = digitOf(event);
    if (target && !this.host.drawing) this.#toggle(target);
  };

  readonly #keydown = (event: KeyboardEvent): void => {
    const target = digitOf(event);
    if (!target || event.ctrlKey || event.altKey || event.metaKey) return;
    const { key } = event;
    if (key === 'Enter' || key === ' ') this.#toggle(target);
    else if (key === 'Escape') {
      if (this.#open) this.#close(true);
      else if (!this.host.back()) return;
    } else if (target !== 'all' && /^Arrow|^Home$|^End$/.test(key)) this.#travel(event, target);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };

  /** Left and right as the digits stand on the drawing, whichever side it is of. */
  #travel({ key, currentTarget }: KeyboardEvent, from: Digit): void {
    const x = (digit: Digit): number =>
      (currentTarget as Element).querySelector(`[data-digit=${digit}]`)?.getBoundingClientRect().x ?? 0;
    const across = [...DIGITS].sort((a, b) => x(a) - x(b));
    const step = key === 'ArrowLeft' || key === 'ArrowUp' ? -1 : 1;
    const at = key === 'Home' ? 0 : key === 'End' ? 4 : across.indexOf(from) + step;
    const to = across[Math.max(0, Math.min(4, at))] as Digit;
    this.#active = to;
    this.#focus = `.stage [data-digit=${to}]`;
    this.host.element.requestUpdate();
  }

  readonly #panelKey = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape') return;
    event.preventDefault();
    event.stopPropagation();
    this.#close(true);
  };

  #hang(panel: HTMLElement): void {
    const { renderRoot } = this.host.element;
    const own = renderRoot.querySelector(`.stage [data-digit=${this.#open}] .target`);
    hangPanel(panel, this.host.narrow ? null : own, renderRoot.querySelectorAll('.stage .digit .target'), 1);
  }

  #outside(event: Event): void {
    const panel = this.#panel;
    if (panel && event.composedPath().includes(panel)) return;
    // A press on a digit toggles its panel by itself.
    if (!digitOf(event)) this.#close(false);
  }

  #moved(): void {
    const panel = this.#panel;
    if (panel) this.#hang(panel);
  }
}

/** The row of digits as a line through them, which its width makes a target. */
const rowOf = ({ spots }: PlacedDigits): string =>
  `M${spots.map(({ x, y }) => `${number(x)} ${number(y)}`).join('L')}`;

/** The digit that an event is about. */
function digitOf(event: Event): Target | undefined {
  for (const node of event.composedPath())
    if (node instanceof Element && node.hasAttribute('data-digit'))
      return node.getAttribute('data-digit') as Target;
  return undefined;
}
