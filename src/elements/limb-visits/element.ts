import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { unsafeSVG } from 'lit/directives/unsafe-svg.js';
import { state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { type PatientVisit, visitsInOrder } from '../../comparison/visits.js';
import { BODY_VIEWS, type BodyView } from '../../drawing/views.js';
import { messagesFor } from '../../locale/index.js';
import { partMessagesFor } from '../../locale/parts.js';
import { LANG, LanguageController } from '../common/language.js';
import { LaterController } from '../common/later.js';
import { ownRoot } from '../common/own-root.js';
import { listOf, oneOf, property, TEXTS } from '../common/property.js';
import { styled } from '../common/styled.js';
import { sourcesStyles } from '../common/sources-mark.js';
import { controlStyles, tokenStyles } from '../common/tokens.js';
import { afterPaint } from '../common/trailing.js';
import { WidthController } from '../common/width-controller.js';
import { scrollTo, stepOf, type Window, windowOf } from '../common/window-of.js';
import { CompareChangeEvent, VisitOpenEvent } from './events.js';
import { later } from './fetched.js';
import type { VisitLog } from './log.js';
import { pairOf, pressed } from './chosen.js';
import { Pictures } from './pictures.js';
import { LaidOut, renderPlots } from './lines.js';
import { type Scene, whenOf } from './scene.js';
import { cardOf, GAP, renderCard, stepIn } from './strip.js';
import { visitsStyles } from './styles.js';
import { renderTable, ROW, rowOf } from './table.js';
import { type Done, Work } from './work.js';

export type { PatientVisit } from '../../comparison/visits.js';
export { CompareChangeEvent, VisitOpenEvent } from './events.js';

const VISITS = listOf(
  'visits, each with an id',
  (one: PatientVisit | null) => typeof one?.id === 'string' && typeof (one.at ?? '') === 'string',
);

/** Rows of the table in sight. */
const ROWS = 9;

/**
 * The visits of one patient over time: small maps with a ring where something changed since the visit before, indices, pressures and
 * walking distance as lines with the range that measuring alone scatters in, and what changed between any two that are chosen. From
 * none to ten thousand visits: what is out of sight is neither drawn nor kept.
 *
 * @tag limb-visits
 * @event {VisitOpenEvent} visit-open - A person wants to see one visit.
 * @event {CompareChangeEvent} compare-change - A person chose other visits to compare.
 * @csspart visit - The card of one visit.
 * @csspart plot - The lines of one measure.
 */
export class LimbVisits extends LitElement {
  static override styles = [tokenStyles, controlStyles, sourcesStyles, visitsStyles];

  /** The visits, in any order. */
  @property({ attribute: false, shape: VISITS }) visits: readonly PatientVisit[] = [];
  /** Ids of the two visits to compare; without them the last two that count. */
  @property({ attribute: false, shape: TEXTS }) compared: readonly string[] | undefined = undefined;
  /** What of the body the small maps show. */
  @property({ shape: oneOf(BODY_VIEWS) }) view: BodyView = 'legs';
  /** Language of the words, a BCP 47 tag; without it the nearest `lang` in the page counts. */
  @property(LANG) override lang = '';
  /** Whom the words address: `trade` for clinicians, `plain` for patients; empty, as the closest ancestor with one says, else `trade`. */
  @property(LANG) register: '' | 'trade' | 'plain' = '';
  @state() private way: 'figure' | 'table' = 'figure';
  /** The visit that the keys are at and that the plots read. */
  @state() private active = 0;
  @state() private scrolled = Infinity;
  /** Whether what follows the first paint may be shown. */
  @state() private painted = false;

  readonly #language = new LanguageController(this);
  readonly #width = new WidthController(this, 720);
  #order: readonly PatientVisit[] = [];
  #log: VisitLog | undefined;
  #laidOut = new LaidOut();
  readonly #pictures = new Pictures();
  readonly #work = new Work(
    () => this.#step(),
    () => this.requestUpdate(),
  );

  constructor() {
    super();
    new LaterController(this, later, () => this.painted && this.visits.length > 0);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#work.stop();
  }

  protected override createRenderRoot(): HTMLElement | DocumentFragment {
    return ownRoot(this, super.createRenderRoot());
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (!changed.has('visits')) return;
    const before = this.#order[this.active]?.id;
    this.#order = visitsInOrder(this.visits);
    this.#log = undefined;
    this.#laidOut = new LaidOut();
    this.#pictures.clear();
    const again = this.#order.findIndex(({ id }) => id === before);
    this.active = again < 0 ? Math.max(0, this.#order.length - 1) : again;
    if (again < 0) this.scrolled = this.way === 'figure' ? Infinity : 0;
  }

  protected override updated(changed: PropertyValues): void {
    // Once it is measured, or of another width, the latest visit is still the last in sight; the browser keeps any other.
    const measured = this.scrolled === Infinity && this.#placed !== this.#item;
    if (changed.has('visits') || changed.has('way') || measured) this.#place();
    if (!this.painted && this.#order.length) void afterPaint().then(() => (this.painted = true));
    else if (this.#log && this.isConnected) void this.#work.run();
  }

  protected override render(): TemplateResult {
    const { tag, register } = this.#language;
    const words = partMessagesFor(tag, register).visits;
    const { table } = words;
    const count = this.#order.length;
    if (!count) return html`<p class="empty">${table.empty}</p>`;
    if (later.part && this.painted && !this.#log) this.#log = new later.part.VisitLog(this.#order);
    const scene: Scene = {
      order: this.#order,
      log: this.#log,
      pictures: this.#pictures,
      pair: this.#pair,
      active: this.active,
      words,
      counts: this.#counts,
    };
    return html`<div class="head">
        <p class="title" id="name">${table.count(count)}</p>
        <div class="ways" role="group" aria-label=${table.way}>
          ${(['figure', 'table'] as const).map(
            (way) =>
              html`<button
                type="button"
                class="button"
                aria-pressed=${this.way === way ? 'true' : 'false'}
                @click=${() => this.#show(way)}
              >
                ${table.ways[way]}
              </button>`,
          )}
        </div>
      </div>
      <p class="hidden-visually" id="keys">${table.keys}</p>
      ${this.way === 'figure' ? this.#strip(scene) : this.#table(scene)}
      ${count === 1 ? html`<p class="hint alone">${table.alone}</p>` : nothing}
      <div class="below">${this.#lines(scene)}${this.#changes(scene)}</div>`;
  }

  private get scroller(): HTMLElement | null {
    return this.renderRoot.querySelector('.scroller');
  }

  /** Factor of the text size that the reader has set, as `--_text` has it. */
  get #text(): number {
    return Math.max(1, parseFloat(getComputedStyle(document.documentElement).fontSize) / 16);
  }

  get #item(): number {
    return this.way === 'figure' ? stepIn(this.#width.width, this.#text) : ROW * this.#text;
  }

  /** What is in sight; of cards with the gap beyond the last. */
  get #seen(): number {
    return this.way === 'figure' ? this.#width.width + GAP : ROWS * this.#item;
  }

  get #window(): Window {
    return windowOf(this.scrolled, this.#seen, this.#item, this.#order.length);
  }

  /** Visits stand from left to right in the strip, and the latest on top in the table. */
  #rank(at: number): number {
    return this.way === 'figure' ? at : this.#order.length - 1 - at;
  }

  readonly #counts = (at: number): boolean => this.#log?.counts(at) ?? !this.#order[at]!.enteredInError;

  get #pair(): readonly number[] {
    return pairOf(this.#order, this.#counts, this.compared);
  }

  #strip(scene: Scene): TemplateResult {
    const { from, to } = this.#window;
    const count = scene.order.length;
    const item = this.#item;
    const card = (at: number): TemplateResult =>
      renderCard(cardOf(scene, at), scene.words, this.view, later.part, {
        open: () => this.#open(at),
        pick: () => this.#pick(at),
      });
    // Each card keeps its node, which the browser may have snapped to.
    const cards = repeat(
      Array.from({ length: to - from }, (_, i) => from + i),
      (at) => at,
      card,
    );
    return html`${this.#pictures.body ? unsafeSVG(this.#pictures.body) : nothing}
      <div class="scroller strip" tabindex="-1" @scroll=${this.#handleScroll} @keydown=${this.#handleKey}>
        <ul
          role="list"
          class="track"
          aria-labelledby="name"
          aria-describedby="keys"
          ${styled({
            '--_step': `${item}px`,
            'inline-size': `${count * item - GAP}px`,
            'padding-inline-start': `${from * item}px`,
          })}
        >
          ${cards}
        </ul>
      </div>`;
  }

  #table(scene: Scene): TemplateResult {
    const { from, to } = this.#window;
    const count = scene.order.length;
    const rows = Array.from({ length: to - from }, (_, i) => rowOf(scene, count - 1 - (from + i)));
    return html`<div
      class="scroller rows"
      tabindex="-1"
      ${styled({ 'max-block-size': `${(ROWS + 1) * this.#item}px` })}
      @scroll=${this.#handleScroll}
      @keydown=${this.#handleKey}
    >
      ${renderTable(rows, { from, to }, count, this.#item, scene.words, {
        open: (at) => this.#open(at),
        pick: (at) => this.#pick(at),
      })}
    </div>`;
  }

  #lines(scene: Scene): TemplateResult | typeof nothing {
    const log = this.#log;
    if (!log || !later.part) return nothing;
    const { tag, register } = this.#language;
    const { order, active, pair, words } = scene;
    return renderPlots({
      log,
      laidOut: this.#laidOut,
      part: later.part,
      width: Math.min(
        640,
        this.#width.width >= 900 ? Math.floor(this.#width.width / 2) - 36 : this.#width.width - 24,
      ),
      active,
      base: pair.length > 1 ? pair[0] : undefined,
      until: pair.at(-1),
      shift: order.at(-1)?.at,
      when: (at) => whenOf(scene, at),
      words,
      letters: messagesFor(tag, register).anatomy.sideLetters,
      sources: partMessagesFor(tag, register).flags,
      go: (at) => this.#go(at),
      key: this.#handleKey,
    });
  }

  #changes(scene: Scene): TemplateResult | typeof nothing {
    const log = this.#log;
    if (!log || scene.order.length === 1) return nothing;
    const { table } = scene.words;
    const [a, b] = scene.pair;
    if (a === undefined || b === undefined) return html`<p class="hint">${table.chooseTwo}</p>`;
    const { tag, register } = this.#language;
    return html`<limb-changes
      lang=${tag}
      register=${register}
      since=${scene.order[a]!.at ?? ''}
      .earlier=${log.record(a) ?? this.#order[a]!.examination}
      .examination=${log.record(b) ?? this.#order[b]!.examination}
    ></limb-changes>`;
  }

  #show(way: 'figure' | 'table'): void {
    this.way = way;
    // The visit that the keys are at stays in sight.
    this.scrolled = scrollTo(this.#rank(this.active), 0, this.#seen, this.#item);
  }

  #open(at: number): void {
    this.active = at;
    this.dispatchEvent(new VisitOpenEvent(this.#order[at]!));
  }

  #pick(at: number): void {
    this.active = at;
    const ids = this.#pair.map((one) => this.#order[one]!.id);
    const { id } = this.#order[at]!;
    const next = pressed(ids, id, this.#picked);
    this.#picked = id;
    const order = new Map(this.#order.map((visit, i) => [visit.id, i]));
    this.compared = [...next].sort((x, y) => order.get(x)! - order.get(y)!);
    this.dispatchEvent(new CompareChangeEvent(this.compared));
  }
  #picked: string | undefined;
  /** The distance of cards for which it was scrolled. */
  #placed = 0;

  readonly #handleScroll = (event: Event): void => {
    const target = event.currentTarget as HTMLElement;
    const scroll = this.way === 'figure' ? Math.abs(target.scrollLeft) : target.scrollTop;
    const before = this.#window;
    const next = windowOf(scroll, this.#seen, this.#item, this.#order.length);
    if (before.from === next.from && before.to === next.to) return;
    this.#keepFocus(next);
    this.scrolled = scroll;
  };

  /** A card that leaves the sight must not take the focus with it to nowhere. */
  #keepFocus({ from, to }: Window): void {
    const focused = (this.renderRoot as ShadowRoot).activeElement?.closest<HTMLElement>('[data-at]');
    if (!focused) return;
    const rank = this.#rank(Number(focused.dataset['at']));
    if (rank < from || rank >= to) this.scroller?.focus({ preventScroll: true });
  }

  readonly #handleKey = (event: KeyboardEvent): void => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const list = event.currentTarget as HTMLElement;
    const inTable = list.matches('.rows');
    const isRtl = getComputedStyle(this).direction === 'rtl';
    const [onward, back] = isRtl ? ['ArrowLeft', 'ArrowRight'] : ['ArrowRight', 'ArrowLeft'];
    const page = Math.max(1, Math.floor(this.#seen / this.#item) - 1);
    const count = this.#order.length;
    // In the table the latest stands first, so that its keys run the other way.
    const from = inTable ? count - 1 - this.active : this.active;
    const keys = inTable ? { onward: 'ArrowDown', back: 'ArrowUp', page } : { onward, back, page };
    const to = stepOf(event.key, from, count, keys);
    if (to === undefined) return;
    event.preventDefault();
    const kind = (event.target as HTMLElement).closest('.pick') ? '.pick' : '.open';
    void this.#go(inTable ? count - 1 - to : to, list.matches('.scroller') ? kind : undefined);
  };

  /** Makes a visit the active one and brings it into sight. */
  async #go(at: number, focus?: string): Promise<void> {
    this.active = at;
    const { scroller } = this;
    if (!scroller) return;
    const seen = this.way === 'figure' ? this.#seen : scroller.clientHeight - this.#item;
    const from = this.way === 'figure' ? Math.abs(scroller.scrollLeft) : scroller.scrollTop;
    this.scrolled = scrollTo(this.#rank(at), from, seen, this.#item);
    await this.updateComplete;
    this.#place();
    if (!focus) return;
    const own = this.renderRoot.querySelector(`[data-at="${at}"]`);
    const button =
      own?.querySelector<HTMLButtonElement>(`${focus}:enabled`) ?? own?.querySelector<HTMLElement>('.open');
    button?.focus({ preventScroll: true });
  }

  /** Scrolls to where the window of the last render lies. */
  #place(): void {
    const { scroller } = this;
    if (!scroller) return;
    const item = this.#item;
    this.#placed = item;
    const most = Math.max(0, this.#order.length * item - (this.way === 'figure' ? this.#seen : 0));
    const to = Math.min(this.scrolled, most);
    if (this.way === 'table') scroller.scrollTop = to;
    else scroller.scrollLeft = getComputedStyle(this).direction === 'rtl' ? -to : to;
  }

  /** Draws the next map in sight, else reads the numbers of the next visit. */
  #step(): Done {
    const log = this.#log;
    const { part } = later;
    if (!log || !part) return 'done';
    const { tag, register } = this.#language;
    const look = `${tag} ${register} ${this.view}`;
    const next = this.way === 'figure' ? this.#pictures.next(this.#window, look) : undefined;
    if (next === undefined) return log.readNext() ? 'more' : 'done';
    this.#pictures.draw(next, log.record(next), this.view, messagesFor(tag, register), part);
    return 'seen';
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'limb-visits': LimbVisits;
  }
}
