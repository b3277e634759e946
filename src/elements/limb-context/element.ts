import { css, html, nothing, type TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import type * as z from 'zod/mini';
import {
  ARTERIES,
  ARTERY_IDS,
  type ArteryId,
  type Laterality,
  type Side,
  sidesOf,
} from '../../anatomy/index.js';
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
import { partStyles } from '../common/part-styles.js';
import { property } from '../common/property.js';
import { type LimbKind, SidedPart } from '../common/sided-part.js';
import { selectField } from '../common/select.js';
import { type SidedRow, sidedRows, sidedRowStyles } from '../common/sided-rows.js';
import { controlStyles, tokenStyles } from '../common/tokens.js';
import { unreadStyles } from '../common/unread-notice.js';
import { coldInjury } from './cold-injury.js';
import type { ContextForm } from './form.js';
import { graft } from './graft.js';
import { access, aneurysms, devices, pairedAneurysms } from './vascular-rows.js';

/** The bypass or stent being entered. */
interface Repair {
  readonly artery?: ArteryId | undefined;
  readonly side: Laterality;
  readonly kind: Revascularisation;
  readonly route?: GraftRoute | undefined;
}
const NEW_REPAIR: Repair = { side: 'right', kind: 'bypass' };

/**
 * What is known about the patient before a pulse is felt: age, diabetes, smoking, the cause, an injury, pain on exertion,
 * amputations, pulses that were never there, medicines, aneurysms, dialysis access, lines, cold injury, bypasses and stents. Nothing is compulsory; what is left open is not known.
 *
 * @tag limb-context
 * @attr value - The context as JSON; what a form reset returns to.
 * @csspart repairs - The list of bypasses and stents.
 */
export class LimbContext extends SidedPart<Context> {
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

  @state() private repair = NEW_REPAIR;

  protected override get schema(): z.ZodMiniType<Context> {
    return contextSchema;
  }

  protected override taken(): void {
    this.repair = NEW_REPAIR;
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
        this.show,
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
      limbLabel: (what, kind, side) => this.limbLabel(what, kind, side),
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
    const { diabetes } = this.words.context;
    return html`<div>
      <span class="hint" aria-hidden="true">${diabetes}</span>
      ${this.yesNo(['diabetes'], diabetes)}
    </div>`;
  }

  /** A choice for each side, from all of the words or from some of them. */
  #sided<V extends string>(
    label: string,
    words: Readonly<Record<V, string>>,
    kind: LimbKind,
    field: string,
    some?: readonly NoInfer<V>[],
  ): SidedRow {
    const options = optionsOf(words).filter(([value]) => !some || some.includes(value));
    return {
      label,
      cell: (side) =>
        this.known([field, side], this.limbLabel(label, kind, side), () =>
          choices<V>({
            label: this.limbLabel(label, kind, side),
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
    kind: LimbKind,
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
          label: this.limbLabel(words.missing, 'leg', side),
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
          label: this.limbLabel(words.harvested, 'arm', side),
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
    const { artery, kind, route, side: wanted } = this.repair;
    const sides = artery ? sidesOf(ARTERIES[artery].occurs) : (['right', 'left'] as const);
    const side = sides.includes(wanted) ? wanted : sides[0]!;
    const list = this.value?.revascularisations ?? [];
    const there = list.some((one) => one.artery === artery && one.side === side);
    const change = (fields: Partial<Repair>): void => void (this.repair = { ...this.repair, ...fields });
    return html`<div class="adding">
      ${selectField<Revascularisation>({
        label: words.repairKind,
        options: optionsOf(words.repairs),
        value: kind,
        disabled: false,
        set: (picked) => picked && change({ kind: picked }),
      })}
      ${
        kind === 'bypass'
          ? selectField<GraftRoute>({
              label: words.repairRoute,
              options: Object.entries(words.routes) as [GraftRoute, string][],
              value: route,
              empty: words.ownCourse,
              disabled: false,
              set: (picked) => change({ route: picked }),
            })
          : nothing
      }
      ${selectField<Laterality>({
        label: words.repairSide,
        options: sides.map((one) => [one, words.sides[one]] as const),
        value: side,
        disabled: sides.length === 1,
        set: (picked) => picked && change({ side: picked }),
      })}
      ${selectField<ArteryId>({
        label: words.repairArtery,
        options: ARTERY_IDS.map((one) => [one, arteries[one]] as const),
        value: artery,
        empty: words.choose,
        disabled: false,
        set: (picked) => change({ artery: picked }),
      })}
      <button
        type="button"
        class="button"
        ?disabled=${!artery || there}
        @click=${() => {
          if (!artery) return;
          const added = { artery, side, kind, ...(kind === 'bypass' && route && { route }) };
          this.edit(['revascularisations'], [...list, added]);
          change({ artery: undefined, route: undefined });
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
