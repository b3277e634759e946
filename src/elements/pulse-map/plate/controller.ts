import { html, nothing, type ReactiveController, type TemplateResult } from 'lit';
import { type Laterality, oppositeSide, type Side } from '../../../anatomy/index.js';
import {
  doorsBeside,
  isPlateView,
  type Layout,
  PLATE_VIEWS,
  plateOf,
  type PlateView,
  type View,
} from '../../../drawing/index.js';
import type { Examination } from '../../../examination/index.js';
import { ICONS } from '../../common/icons.js';
import { addStyles } from '../../common/more-styles.js';
import { styled } from '../../common/styled.js';
import type { Chooser } from '../chooser/chooser.js';
import type { FigureView } from '../figure/render.js';
import type { Recorder } from '../recorder.js';
import type { Session } from '../session.js';
import { MapDigits } from './digit-host.js';
import type { Digits } from './digits.js';
import { fetchPlate, plateFor, plateKit } from './fetched.js';

/** The plates that a view leads to, of the limbs it shows. */
function platesFrom(view: View): readonly PlateView[] {
  if (isPlateView(view)) {
    const { name, side } = plateOf(view);
    // As they stand there: from behind, the left one is on the left.
    if (side === 'midline') return ['left-knee', 'right-knee'];
    const other: PlateView = `${oppositeSide(side as Side)}-${name as 'hand'}`;
    const next: Partial<Record<string, PlateView>> = {
      foot: `${side as Side}-sole`,
      sole: `${side as Side}-foot`,
      knee: 'legs-behind',
    };
    return [other, ...(next[name] ? [next[name]] : [])];
  }
  const sideOfView = (['right', 'left'] as const).find((side) => view.startsWith(side));
  return PLATE_VIEWS.filter((one) => {
    const { name, side } = plateOf(one);
    const ofArm = name === 'hand';
    if (view !== 'whole' && view.includes('arm') !== ofArm) return false;
    return sideOfView === undefined || side === 'midline' || side === (sideOfView as Laterality);
  });
}

/** Fetches the plate that is to be shown, opens and leaves plates, and renders what leads to them and back. */
export class PlateController implements ReactiveController {
  #failed: PlateView | undefined;
  #digits: Digits | undefined;

  constructor(
    private readonly session: Session,
    private readonly chooser: Chooser,
    private readonly recorder: Recorder,
    private readonly earlier: () => Examination | undefined,
  ) {
    session.element.addController(this);
  }

  /** Fingers and toes; nothing until what draws plates has been fetched. */
  get digits(): Digits | undefined {
    this.#digits ??=
      plateKit.part && new plateKit.part.Digits(new MapDigits(this.session, this.recorder, this.earlier));
    return this.#digits;
  }

  /** Set while the plate to be shown has not been fetched. */
  get missing(): Promise<void> | undefined {
    const { chosenView } = this.session;
    if (!isPlateView(chosenView) || plateFor(chosenView) || this.#failed === chosenView) return undefined;
    return fetchPlate(chosenView);
  }

  hostUpdated(): void {
    const { chosenView, element } = this.session;
    if (plateKit.part) addStyles(element.renderRoot, [plateKit.part.plateStyles]);
    if (this.#failed !== chosenView) this.#failed = undefined;
    void this.missing?.then(() => {
      if (!isPlateView(chosenView) || chosenView !== this.session.chosenView) return;
      if (!plateFor(chosenView)) {
        this.#failed = chosenView;
        this.session.say({ what: this.session.words.map.notFetched });
      }
      element.requestUpdate();
    });
  }

  /**
   * The figure, with the way back from a plate above it, or the ways to plates beside its limbs, else below it. One template
   * for all of them: a figure drawn anew would drop the focus and a press under way.
   */
  around(
    { layout, enlarged }: Pick<FigureView, 'layout' | 'enlarged'>,
    figure: TemplateResult,
  ): TemplateResult {
    const onPlate = isPlateView(layout.view);
    const doors = onPlate ? [] : this.#doors(layout);
    return html`${onPlate ? this.#row() : nothing}
      <div class="stage">
        ${figure}
        ${doors.length ? html`<div class="doors" role="group" aria-label=${this.session.words.map.plates.others} ${styled({ '--_large': enlarged.toFixed(3) })}>${doors}</div>` : nothing}
      </div>
      ${onPlate ? (this.digits?.template() ?? nothing) : doors.length ? nothing : this.#row()}`;
  }

  #doors(layout: Layout): TemplateResult[] {
    return doorsBeside(layout, this.session.words).map(({ view, x, y }) =>
      this.#button(view, { left: x / layout.width, top: y / layout.height }),
    );
  }

  /** The way back from a plate and to those beside it; from the figure, the way to every plate of what is shown. */
  #row(): TemplateResult {
    const { words, view, canGoBack } = this.session;
    return html`<div
      class="plates-row"
      role="group"
      aria-label=${words.map.plates.others}
      @keydown=${this.#keydown}
    >
      ${canGoBack ? html`<button type="button" class="button" data-tool="back" @click=${this.#back}>${ICONS.up} ${words.map.plates.back}</button>` : nothing}
      ${platesFrom(view).map((one) => this.#button(one))}
    </div>`;
  }

  /** @param at where it stands, as shares of the figure */
  #button(view: PlateView, at?: { readonly left: number; readonly top: number }): TemplateResult {
    const { map, anatomy } = this.session.words;
    const { name, side } = plateOf(view);
    const letter = side === 'midline' ? '' : anatomy.sideLetters[side];
    // The name begins with what is written on the button, for those who speak to the page.
    const label = `${letter} ${map.plates.short[name]}: ${map.views[view]}`.trim();
    return html`<button
      type="button"
      class="button plate-door"
      data-plate=${view}
      ${at ? styled({ left: `${(100 * at.left).toFixed(2)}%`, top: `${(100 * at.top).toFixed(2)}%` }) : nothing}
      aria-label=${label}
      @click=${() => this.open(view)}
    >
      ${letter ? html`<b>${letter}</b> ` : nothing}${map.plates.short[name]}
    </button>`;
  }

  /** Shows a plate, as its button does. */
  open(view: PlateView): void {
    this.chooser.close(false);
    this.session.show(view, `[data-plate=${view}]`);
  }

  readonly #back = (): void => {
    this.chooser.close(false);
    this.session.back();
  };

  readonly #keydown = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape' || !this.session.back()) return;
    event.preventDefault();
    event.stopPropagation();
  };
}
