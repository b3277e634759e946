import { css, html, nothing, type TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import type * as z from 'zod/mini';
import { ARTERIES, ARTERY_IDS, type ArteryId, type Laterality } from '../../anatomy/index.js';
import { type Side, sidesOf } from '../../anatomy/index.js';
import {
  ARM_CLAUDICATION,
  type Context,
  contextSchema,
  fieldAt,
  LEG_CLAUDICATION,
  type GraftRoute,
  type Medicine,
  type Revascularisation,
} from '../../examination/index.js';
import { choices, optionsOf, toggles } from '../common/choices.js';
import { PartElement } from '../common/part-element.js';
import { partStyles } from '../common/part-styles.js';
import { property } from '../common/property.js';
import { selectField } from '../common/select.js';
import { type SidedRow, sidedRows, sidedRowStyles } from '../common/sided-rows.js';
import { controlStyles, tokenStyles } from '../common/tokens.js';
import { unreadStyles } from '../common/unread-notice.js';
import { coldInjury } from './cold-injury.js';
import type { ContextForm } from './form.js';
import { graft } from './graft.js';
import { access, aneurysms, devices, pairedAneurysms } from './vascular-rows.js';

type Kind = 'leg' | 'arm';

/**
 * What is known about the patient before a pulse is felt: age, diabetes, smoking, the cause, an injury, pain on exertion,
 * amputations, pulses that were never there, medicines, aneurysms, dialysis access, lines, cold injury, bypasses and stents. Nothing is compulsory; what is left open is not known.
 *
 * @tag limb-context
 * @attr value - The context as JSON; what a form reset returns to.
 * @csspart repairs - The list of bypasses and stents.
 */
export class LimbContext extends PartElement<Context> {
  static override styles = [
    tokenStyles,
    controlStyles,
    unreadStyles,
    partStyles,
    sidedRowStyles,
    css`
      ul {
        margin: 0;
        padding: 0;
        list-style: none;
      }
      li {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        justify-content: space-between;
        gap: 8px;
        padding-block: 6px;
        border-block-end: 1px solid var(--_line);
      }
      .of-graft {
        display: grid;
        gap: 4px;
        flex-basis: 100%;
        order: 1;
      }
      .adding {
        display: flex;
        flex-wrap: wrap;
        align-items: end;
        gap: 12px;
        margin-block-start: 8px;
      }
      .adding .text {
        min-inline-size: 180px;
      }
    `,
  ];

  /** Leaves out pain on exertion, where another control on the page asks for it. */
  @property({ type: Boolean, attribute: 'no-claudication' }) noClaudication = false;

  @state() private shown: Side = 'right';
  /** The bypass or stent being entered. */
  @state() private artery: ArteryId | undefined;
  @state() private side: Laterality = 'right';
  @state() private kind: Revascularisation = 'bypass';
  @state() private route: GraftRoute | undefined;

  /** Brings a side into sight where there is no room for two; where there is, nothing changes. */
  showSide(side: Side): void {
    this.shown = side;
  }

  protected override get schema(): z.ZodMiniType<Context> {
    return contextSchema;
  }

  protected override render(): TemplateResult {
    const { unreadNotice } = this;
    if (unreadNotice) return unreadNotice;
    const { context: words, history } = this.words;
    const { value } = this;
    const form = this.#form;
    const inArm = value?.devices?.some(({ limb }) => limb === 'arm') ? true : undefined;
    const hasArms =
      value?.armClaudication ??
      value?.armAmputation ??
      value?.radialHarvested ??
      value?.access ??
      value?.coldInjury?.arm ??
      inArm;
    return html`
      <div class="loose">
        ${this.#one(words.age, words.ages, ['ageBand'])} ${this.#diabetes()}
        ${this.#one(words.smoked, words.smoking, ['smoking'])}
        ${this.#one(words.mechanism, words.mechanisms, ['mechanism'])} ${this.#medicines()}
        <div>
          <span class="hint" aria-hidden="true">${words.aneurysms}</span>
          ${aneurysms(form)}
        </div>
      </div>
      ${sidedRows(
        [
          { heading: words.anywhere, rows: [this.#injury(), pairedAneurysms(form)] },
          {
            heading: this.words.whole.legs,
            rows: [
              ...this.#pain(history.claudicates, history.muscles, 'leg', 'legClaudication', LEG_CLAUDICATION),
              this.#sided(words.amputation, words.legAmputations, 'leg', 'legAmputation'),
              this.#missing(),
              devices(form, 'leg'),
              ...coldInjury(form, 'leg'),
            ],
          },
          {
            heading: this.words.whole.arms,
            folded: hasArms === undefined,
            rows: [
              ...this.#pain(history.tires, history.muscles, 'arm', 'armClaudication', ARM_CLAUDICATION),
              this.#sided(words.amputation, words.armAmputations, 'arm', 'armAmputation'),
              this.#harvested(),
              ...access(form),
              devices(form, 'arm'),
              ...coldInjury(form, 'arm'),
            ],
          },
        ],
        this.shown,
        (side) => this.showSide(side),
        this.words,
      )}
      <div class="loose">${this.#repairs()}</div>
    `;
  }

  get #form(): ContextForm {
    return {
      value: this.value,
      editable: this.editable,
      words: this.words,
      mapWords: this.mapWords,
      typing: this.typing,
      refusals: this.refusals,
      replace: (context) => this.replace(context),
      edit: (path, field) => this.edit(path, field),
      known: (path, label, control) => this.known(path, label, control),
    };
  }

  #medicines(): TemplateResult {
    const { context: words } = this.words;
    return html`<div>
      <span class="hint" aria-hidden="true">${words.medicines}</span>
      ${toggles<Medicine>({
        label: words.medicines,
        options: optionsOf(words.medicineOptions),
        value: this.value?.medicines,
        none: words.noMedicines,
        disabled: !this.editable,
        pick: (medicines) => this.edit(['medicines'], medicines),
      })}
    </div>`;
  }

  /** A choice about the whole patient. */
  #one<V extends string>(
    label: string,
    words: Readonly<Record<V, string>>,
    path: readonly string[],
  ): TemplateResult {
    return html`<div>
      <span class="hint" aria-hidden="true">${label}</span>
      ${choices<V>({
        label,
        options: optionsOf(words),
        value: fieldAt(this.value, path) as V | undefined,
        disabled: !this.editable,
        pick: (picked) => this.edit(path, picked),
      })}
    </div>`;
  }

  #diabetes(): TemplateResult {
    const { context: words } = this.words;
    const known = this.value?.diabetes;
    return html`<div>
      <span class="hint" aria-hidden="true">${words.diabetes}</span>
      ${choices<'yes' | 'no'>({
        label: words.diabetes,
        options: optionsOf(words.diabetesOptions),
        value: known === undefined ? undefined : known ? 'yes' : 'no',
        disabled: !this.editable,
        pick: (picked) => this.edit(['diabetes'], picked && picked === 'yes'),
      })}
    </div>`;
  }

  #limb(label: string, kind: Kind, side: Side): string {
    return `${label}, ${this.mapWords.anatomy.limbs[`${side} ${kind}`]}`;
  }

  /** A choice for each side, from all of the words or from some of them. */
  #sided<V extends string>(
    label: string,
    words: Readonly<Record<V, string>>,
    kind: Kind,
    field: string,
    some?: readonly NoInfer<V>[],
  ): SidedRow {
    const options = optionsOf(words).filter(([value]) => !some || some.includes(value));
    return {
      label,
      cell: (side) =>
        this.known([field, side], this.#limb(label, kind, side), () =>
          choices<V>({
            label: this.#limb(label, kind, side),
            options,
            value: fieldAt(this.value, [field, side]) as V | undefined,
            disabled: !this.editable,
            pick: (picked) => this.edit([field, side], picked),
          }),
        ),
    };
  }

  #pain<V extends string>(
    label: string,
    words: Readonly<Record<V, string>>,
    kind: Kind,
    field: string,
    some: readonly NoInfer<V>[],
  ): SidedRow[] {
    return this.noClaudication ? [] : [this.#sided(label, words, kind, field, some)];
  }

  #injury(): SidedRow {
    const { context: words, whole } = this.words;
    return {
      label: words.injury,
      cell: (side) =>
        selectField({
          label: `${words.injury}, ${whole[side].toLocaleLowerCase()}`,
          quiet: true,
          options: optionsOf(words.injuries),
          value: this.value?.injury?.[side],
          empty: words.nothingOf,
          disabled: !this.editable,
          set: (place) => this.edit(['injury', side], place),
        }),
    };
  }

  #missing(): SidedRow {
    const { context: words } = this.words;
    return {
      label: words.missing,
      cell: (side) =>
        toggles({
          label: this.#limb(words.missing, 'leg', side),
          options: optionsOf(words.missingOptions),
          value: this.value?.absentFromBirth?.[side],
          disabled: !this.editable,
          pick: (sites) => this.edit(['absentFromBirth', side], sites),
        }),
    };
  }

  #harvested(): SidedRow {
    const { context: words } = this.words;
    const taken = this.value?.radialHarvested ?? [];
    return {
      label: words.harvested,
      cell: (side) =>
        toggles({
          label: this.#limb(words.harvested, 'arm', side),
          options: optionsOf({ [side]: words.harvestedOption } as Record<Side, string>),
          value: taken.filter((one) => one === side),
          disabled: !this.editable,
          pick: (picked) => {
            const others = taken.filter((one) => one !== side);
            const next = picked?.length ? [...others, side] : others;
            this.edit(['radialHarvested'], next.length ? next : undefined);
          },
        }),
    };
  }

  #repairs(): TemplateResult {
    const { context: words } = this.words;
    const list = this.value?.revascularisations ?? [];
    return html`<div>
      <h4>${words.repaired}</h4>
      <ul part="repairs" aria-label=${words.repaired}>
        ${list.length ? list.map((_, i) => graft(this.#form, i)) : html`<li>${words.noRepairs}</li>`}
      </ul>
      ${this.editable ? this.#adding() : nothing}
    </div>`;
  }

  #adding(): TemplateResult {
    const { context: words } = this.words;
    const { arteries } = this.mapWords.anatomy;
    const sides = this.artery ? sidesOf(ARTERIES[this.artery].occurs) : (['right', 'left'] as const);
    const side = sides.includes(this.side) ? this.side : sides[0]!;
    const list = this.value?.revascularisations ?? [];
    const there = list.some((one) => one.artery === this.artery && one.side === side);
    return html`<div class="adding">
      ${selectField<Revascularisation>({
        label: words.repairKind,
        options: optionsOf(words.repairs),
        value: this.kind,
        disabled: false,
        set: (kind) => kind && (this.kind = kind),
      })}
      ${
        this.kind === 'bypass'
          ? selectField<GraftRoute>({
              label: words.repairRoute,
              options: Object.entries(words.routes) as [GraftRoute, string][],
              value: this.route,
              empty: words.ownCourse,
              disabled: false,
              set: (route) => (this.route = route),
            })
          : nothing
      }
      ${selectField<Laterality>({
        label: words.repairSide,
        options: sides.map((one) => [one, words.sides[one]] as const),
        value: side,
        disabled: sides.length === 1,
        set: (one) => one && (this.side = one),
      })}
      ${selectField<ArteryId>({
        label: words.repairArtery,
        options: ARTERY_IDS.map((artery) => [artery, arteries[artery]] as const),
        value: this.artery,
        empty: words.choose,
        disabled: false,
        set: (artery) => (this.artery = artery),
      })}
      <button
        type="button"
        class="button"
        ?disabled=${!this.artery || there}
        @click=${() => {
          if (!this.artery) return;
          this.edit(
            ['revascularisations'],
            [
              ...list,
              {
                artery: this.artery,
                side,
                kind: this.kind,
                ...(this.kind === 'bypass' && this.route && { route: this.route }),
              },
            ],
          );
          this.artery = undefined;
          this.route = undefined;
        }}
      >
        ${words.add}
      </button>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'limb-context': LimbContext;
  }
}
