import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import * as z from 'zod/mini';
import { SIDES, type Side } from '../../anatomy/index.js';
import {
  BEDSIDE_TEST_IDS,
  BEAT_SECONDS,
  beatAt,
  type BedsideReading,
  BEDSIDE_TESTS,
  type BedsideTest as Test,
} from '../../bedside/index.js';
import {
  type AnyBedsideResult,
  bedsideFields,
  type BedsideResult,
  type BedsideTestId,
  LONGEST_TEXT,
  patchAt,
  type Reason,
  REASONS,
} from '../../examination/index.js';
import { sourcesOf } from '../../statements/index.js';
import { choices } from '../common/choices.js';
import { numberField, textField } from '../common/fields.js';
import { PartElement } from '../common/part-element.js';
import { partStyles } from '../common/part-styles.js';
import { oneOf, property } from '../common/property.js';
import { selectField } from '../common/select.js';
import { sourcesMark, sourcesStyles } from '../common/sources-mark.js';
import { controlStyles, tokenStyles } from '../common/tokens.js';
import { warnOfAttribute } from '../common/unknown-attribute.js';
import { unreadStyles } from '../common/unread-notice.js';
import type { WatchController } from '../limb-stopwatch/watch-controller.js';
import { Watches, type WatchOptions } from './watches.js';
import { Beat } from './beat.js';
import { coldBody, coldStyles } from './cold.js';
import { type AngleGauge, elevationBody } from './elevation.js';
import { elevationStyles } from './elevation-styles.js';
import { handBody, handStyles } from './hand.js';
import type { BedsideHost, Body, NumberEntry } from './host.js';
import { positionBody, positionStyles } from './position.js';
import { renderRates } from './rates.js';
import { ShinSensor } from './shin-sensor.js';
import { stressBody, stressStyles } from './stress.js';
import { cardStyles } from './styles.js';
import { timedBody, timedStyles } from './timed.js';

/** Takes nothing: what a test of a later version holds is not known. */
const UNKNOWN_TEST: z.ZodMiniType<SidedResult> = z.custom<SidedResult>(() => false, {
  params: { expected: { code: 'one-of', values: BEDSIDE_TEST_IDS } },
});

/** The results of both sides of one test. */
export type SidedResult = Partial<Record<Side, AnyBedsideResult>>;

/**
 * One bedside test: its purpose and technique, its timer or gauge, the reading with the limit used, or why it was not
 * done. Each side has its own result.
 *
 * @tag bedside-test
 * @attr value - Both sides' results as JSON; what a form reset returns to. Stands after `test`.
 * @csspart card - The whole card.
 * @csspart reading - The sentence that says what the result means.
 */
export class BedsideTest extends PartElement<SidedResult> {
  static override styles = [
    tokenStyles,
    controlStyles,
    unreadStyles,
    partStyles,
    timedStyles,
    elevationStyles,
    handStyles,
    coldStyles,
    positionStyles,
    stressStyles,
    cardStyles,
    sourcesStyles,
  ];

  /** Which test, by its id. Of an unknown one nothing is shown or entered, and `value` stays what was given. */
  @property({ reflect: true, useDefault: true }) test: BedsideTestId = 'elevation';
  /** The side shown. Where it is neither, the card asks for one. */
  @property({ reflect: true, useDefault: true }) side: Side = 'right';
  /** The limit of the practice, in the test's unit, instead of the usual one. A limit kept with a result comes first. */
  @property({ type: Number }) limit: number | undefined = undefined;
  /**
   * Id of the encounter with the patient. With it running watches are kept in the tab over a reload; without it nothing is kept.
   */
  @property() keep: string | undefined = undefined;
  /** A key that does what the large button does from anywhere in the page, as a foot pedal sends it; not while text is typed. */
  @property() pedal: string | undefined = undefined;

  @state() private gauges: Partial<Record<Side, AngleGauge>> = {};

  /** Whether the element around clears the watches itself, since it may undo a value under a running watch. */
  @property({ attribute: false, shape: oneOf(['here', 'around']) }) watchesCleared: 'here' | 'around' =
    'here';

  readonly #watches = new Watches(this, (elapsed) => this.#tick(elapsed));
  readonly #beat = new Beat();
  readonly #sensor = new ShinSensor(this, (angle) => this.#setAngle(angle));
  #main: (() => void) | undefined;
  readonly #onPedal = (event: KeyboardEvent): void => {
    const [from] = event.composedPath() as HTMLElement[];
    const typing = from?.matches?.('input, textarea, select, [contenteditable]') ?? false;
    if (event.key !== this.pedal || event.repeat || typing || !this.editable) return;
    event.preventDefault();
    this.#main?.();
  };

  protected override get schema(): z.ZodMiniType<SidedResult> {
    return this.#isKnown ? (bedsideFields[this.test] as unknown as z.ZodMiniType<SidedResult>) : UNKNOWN_TEST;
  }

  protected override get editable(): boolean {
    return super.editable && this.#isKnown;
  }

  get #isKnown(): boolean {
    return BEDSIDE_TEST_IDS.includes(this.test);
  }

  /** What a side's result means; `undefined` when nothing is recorded, or nothing that this version knows. */
  reading(side: Side = this.side): BedsideReading | undefined {
    const result = this.recorded?.[side];
    if (!this.#isKnown || !result || !Object.keys(result).length) return undefined;
    return (BEDSIDE_TESTS[this.test] as Test).evaluate(result as never, this.limit);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    document.addEventListener('keydown', this.#onPedal);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    document.removeEventListener('keydown', this.#onPedal);
    this.#beat.silence();
  }

  /** Sets every watch to zero and keeps none of them, and lets the leg down: what ran and was raised belongs to another encounter. */
  clearWatches(): void {
    this.#watches.reset();
    this.gauges = {};
  }

  override formResetCallback(): void {
    super.formResetCallback();
    this.clearWatches();
  }

  protected override taken(): void {
    if (this.watchesCleared === 'here') this.clearWatches();
  }

  override attributeChangedCallback(name: string, old: string | null, now: string | null): void {
    super.attributeChangedCallback(name, old, now);
    // The value can only be read once it is known of which test it is.
    if (name === 'test' && old !== now && this.hasAttribute('value')) {
      super.attributeChangedCallback('value', null, this.getAttribute('value'));
    }
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('test') && changed.get('test') !== undefined) this.#watches.forget();
    if (changed.has('test')) this.reread();
    if (changed.has('test') && !this.#isKnown)
      warnOfAttribute(this, 'test', BEDSIDE_TEST_IDS, 'nothing can be entered');
    if (changed.has('side') && !SIDES.includes(this.side))
      warnOfAttribute(this, 'side', SIDES, 'the card asks for a side');
  }

  protected override render(): TemplateResult {
    const { unreadNotice } = this;
    this.#main = undefined;
    if (!this.#isKnown)
      return html`<div class="unread"><p role="status">${this.mapWords.form.sealed}</p></div>`;
    if (unreadNotice) return unreadNotice;
    const { bedside: words } = this.words;
    const definition = BEDSIDE_TESTS[this.test];
    const how = words.how[this.test];
    const sided = SIDES.includes(this.side);
    const notDone = this.recorded?.[this.side]?.notDone;
    const body = !sided || notDone || this.unknownAt([this.side, 'notDone']) ? undefined : this.#body();
    this.#main = body?.main;
    return html`<article part="card" class="card" aria-label=${words.named(this.test, definition.eponym)}>
      <header>
        <div>
          <h3>
            ${how.name}
            ${definition.eponym ? html`<span class="eponym">${definition.eponym}</span>` : nothing}
          </h3>
          <p class="hint">${how.purpose}</p>
        </div>
        ${choices<Side>({
          label: words.sides,
          options: SIDES.map((side) => [side, this.words.whole[side]] as const),
          value: this.side,
          disabled: false,
          pick: (side) => {
            if (side) this.side = side;
          },
        })}
      </header>
      <p role="note" class="caution">${how.caution}</p>
      <details class="fold steps">
        <summary>${words.steps}</summary>
        <ol>
          ${how.steps.map((step) => html`<li>${step}</li>`)}
        </ol>
      </details>
      ${body?.template ?? nothing} ${sided ? this.#footer(notDone) : nothing}
    </article>`;
  }

  #body(): Body {
    const host = this.#host;
    switch (this.test) {
      case 'elevation':
        return elevationBody(
          host as BedsideHost<'elevation'>,
          () => this.gauges[this.side] ?? { angle: this.#recordedAngle, from: undefined },
          (angle, from) => this.#setAngle(angle, from),
          this.#sensor,
        );
      case 'hand-arch':
        return handBody(host as BedsideHost<'hand-arch'>);
      case 'cold-provocation':
        return coldBody(host as BedsideHost<'cold-provocation'>);
      case 'arm-stress':
        return stressBody(host as BedsideHost<'arm-stress'>, this.#beat);
      case 'scalene':
      case 'hyperabduction':
      case 'costoclavicular':
        return positionBody(host as never);
      default:
        return timedBody(host as never);
    }
  }

  get #recordedAngle(): number {
    return (this.recorded?.[this.side] as BedsideResult<'elevation'> | undefined)?.angle ?? 0;
  }

  #setAngle(angle: number, from?: number): void {
    if (!this.editable) return;
    this.gauges = { ...this.gauges, [this.side]: { angle, from } };
  }

  get #host(): BedsideHost {
    const { test, side, editable, words, mapWords } = this;
    return {
      test,
      side,
      editable,
      words,
      mapWords,
      limit: this.recorded?.[side]?.limit ?? this.limit ?? BEDSIDE_TESTS[test].limits?.usual ?? 0,
      result: (of = side) => (this.recorded?.[of] ?? {}) as Partial<BedsideResult<BedsideTestId>>,
      patch: (fields, ...sides) => this.#patch(fields, sides.length ? sides : [side]),
      isUnknown: (path) => this.unknownAt([side, ...path]),
      known: (path, label, control, { side: of = side, labelled } = {}) =>
        this.known([of, ...path], label, control, labelled),
      watch: (purpose, options) => this.#watch(purpose, options),
      number: (entry) => this.#number(entry),
      requestUpdate: () => this.requestUpdate(),
    };
  }

  /** Changes fields of a side's result and stores the limit in force with it. */
  #patch(fields: Partial<Record<string, unknown>>, sides: readonly Side[]): boolean {
    let next = this.value;
    for (const side of sides) {
      for (const [field, value] of Object.entries(fields)) next = patchAt(next, [side, field], value);
      const limit = this.limit ?? BEDSIDE_TESTS[this.test].limits?.usual;
      const measured =
        next?.[side] && Object.keys(next[side]).some((key) => !['limit', 'note', 'notDone'].includes(key));
      if (limit !== undefined && measured && next?.[side]?.limit === undefined && !('limit' in fields)) {
        next = patchAt(next, [side, 'limit'], limit);
      }
      if (!measured) next = patchAt(next, [side, 'limit'], undefined);
    }
    return this.replace(next);
  }

  #watch(purpose: string, options: WatchOptions = {}): WatchController {
    const id = `${this.test}-${options.bothSides ? 'both' : this.side}-${purpose}`;
    return this.#watches.at(id, this.keep, options);
  }

  #tick(elapsed: number): void {
    if (this.test === 'arm-stress') this.#beat.sound(beatAt(elapsed, BEAT_SECONDS.value));
  }

  #number({ id, label, quiet, unit, max, value, set }: NumberEntry): TemplateResult {
    const key = `${this.side}-${id}`;
    return numberField({
      id: key,
      label,
      ...(quiet && { quiet }),
      unit,
      max,
      value,
      shown: this.words.whole.number,
      disabled: !this.editable,
      refusal: this.refusals.get(key),
      complain: (typed) => this.words.bedside.refusedTime(typed, max, unit),
      typing: this.typing,
      set,
    });
  }

  /** The reading in words, by which limit, how often healthy people test positive; not done, and why. */
  #footer(notDone: Reason | undefined): TemplateResult {
    const { bedside: words } = this.words;
    const { anatomy, examination } = this.mapWords;
    const other: Side = this.side === 'right' ? 'left' : 'right';
    const [here, there] = [this.reading(), this.reading(other)];
    const say = (reading: BedsideReading): string => words.read(this.test, reading);
    const result = this.recorded?.[this.side];
    return html`<footer>
      <div class="read" aria-live="polite">
        ${here ? html`<p part="reading" class="reading">${say(here)}</p>` : nothing}
        ${here?.notes?.map((note) => html`<p class="hint">${words.notes[note]}</p>`)}
        ${there ? html`<p class="hint">${words.otherSide(anatomy.sides[other], say(there))}</p>` : nothing}
        ${renderRates(BEDSIDE_TESTS[this.test] as Test, this.#host.limit, this.words.bedside)}
        ${sourcesMark(sourcesOf({ code: 'test', test: this.test, limit: this.#host.limit }), this.words.flags)}
      </div>
      <div class="row foot">
        ${this.#limits()}
        ${this.known(
          [this.side, 'notDone'],
          words.notDone,
          () =>
            selectField<Reason>({
              label: words.notDone,
              empty: words.wasDone,
              options: REASONS.map((reason) => [reason, examination.reasons[reason]] as const),
              value: notDone,
              disabled: !this.editable,
              set: (reason) => this.#patch({ notDone: reason }, [this.side]),
            }),
          true,
        )}
        ${textField({
          label: words.note,
          value: result?.note,
          longest: LONGEST_TEXT,
          disabled: !this.editable,
          typing: this.typing,
          set: (note) => this.#patch({ note }, [this.side]),
        })}
        ${
          result && this.editable && !this.unknownAt([this.side])
            ? html`<button
                type="button"
                class="button"
                @click=${() => this.replace(patchAt(this.value, [this.side], undefined))}
              >
                ${words.clear}
              </button>`
            : nothing
        }
      </div>
    </footer>`;
  }

  /** Sources disagree on many limits, so the one used is shown, can be changed and is stored with the result. */
  #limits(): TemplateResult | typeof nothing {
    const { limits } = BEDSIDE_TESTS[this.test];
    if (!limits || limits.options.length < 2) return nothing;
    const { bedside: words } = this.words;
    const used = this.value?.[this.side]?.limit ?? this.limit ?? limits.usual;
    return selectField({
      label: words.limit,
      options: limits.options.map(
        ({ value }) => [String(value), words.limitOption(value, limits.unit)] as const,
      ),
      value: String(used),
      disabled: !this.editable,
      set: (value) => {
        if (this.value?.[this.side]) this.#patch({ limit: Number(value) }, [this.side]);
        else this.limit = Number(value);
      },
    });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bedside-test': BedsideTest;
  }
}
