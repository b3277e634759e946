import { nothing, type TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import type { Side } from '../../anatomy/index.js';
import { fieldAt, LONGEST_TEXT } from '../../examination/index.js';
import { choices, optionsOf, toggles } from './choices.js';
import { numberField, textField } from './fields.js';
import { PartElement } from './part-element.js';
import { selectField } from './select.js';
import type { SidedRow } from './sided-rows.js';

export type LimbKind = 'leg' | 'arm';
type Cell = TemplateResult | typeof nothing;
/** Where a field stands, for each side. */
type At = (side: Side) => readonly string[];

/** A row of the same field on both sides. */
export interface FieldRow {
  readonly label: string;
  /** The kind of limb whose name is part of the label for assistive technology. */
  readonly kind: LimbKind;
  readonly at: At;
  /** Where the row applies; what is recorded is shown all the same, so that nothing stands in the record unseen. */
  readonly where?: (side: Side) => boolean;
}

/** Above this number of options a select replaces the buttons. */
const MOST_BUTTONS = 6;

/** A part of the examination whose findings stand side by side: rows of words, yes and no, numbers and text. */
export abstract class SidedPart<T extends object> extends PartElement<T> {
  /** The side in sight where there is no room for two. */
  @state() protected shown: Side = 'right';
  protected readonly show = (side: Side): void => void (this.shown = side);

  /** Brings a side into sight where there is no room for two; where there is, nothing changes. */
  showSide(side: Side): void {
    this.shown = side;
  }

  protected limbLabel(what: string, kind: LimbKind, side: Side): string {
    return `${what}, ${this.mapWords.anatomy.limbs[`${side} ${kind}`]}`;
  }

  #row(
    row: FieldRow,
    cell: (path: readonly string[], label: string, side: Side) => TemplateResult,
    known = true,
  ): SidedRow {
    return {
      label: row.label,
      cell: (side): Cell => {
        const path = row.at(side);
        if (row.where && !row.where(side) && fieldAt(this.value, path) === undefined) return nothing;
        const label = this.limbLabel(row.label, row.kind, side);
        return known ? this.known(path, label, () => cell(path, label, side)) : cell(path, label, side);
      },
    };
  }

  /** One word: buttons for few options, a list for many. */
  protected wordRow(
    row: FieldRow,
    words: Readonly<Record<string, string>>,
    pick?: (value: string | undefined, side: Side) => void,
  ): SidedRow {
    const options = optionsOf(words);
    return this.#row(row, (path, label, side) => {
      const value = fieldAt(this.value, path) as string | undefined;
      const disabled = !this.editable;
      const set = (picked: string | undefined): void => {
        if (pick) pick(picked, side);
        else this.edit(path, picked);
      };
      return options.length > MOST_BUTTONS
        ? selectField({
            label,
            quiet: true,
            empty: this.words.whole.notStated,
            options,
            value,
            disabled,
            set,
          })
        : choices({ label, options, value, disabled, pick: set });
    });
  }

  /** Any of some words; with `none`, that there is none of them. */
  protected wordsRow(row: FieldRow, words: Readonly<Record<string, string>>, none?: string): SidedRow {
    return this.#row(row, (path, label) =>
      toggles({
        label,
        options: optionsOf(words),
        value: fieldAt(this.value, path) as readonly string[] | undefined,
        ...(none !== undefined && { none }),
        disabled: !this.editable,
        pick: (picked) => this.edit(path, picked),
      }),
    );
  }

  protected yesNoRow(row: FieldRow): SidedRow {
    return this.#row(row, (path, label) => this.yesNo(path, label));
  }

  /** Yes or no, or neither. */
  protected yesNo(path: readonly string[], label: string): TemplateResult {
    const value = fieldAt(this.value, path) as boolean | undefined;
    return choices<'yes' | 'no'>({
      label,
      options: optionsOf(this.words.inspection.yesNo),
      value: value === undefined ? undefined : value ? 'yes' : 'no',
      disabled: !this.editable,
      pick: (picked) => this.edit(path, picked && picked === 'yes'),
    });
  }

  /** Fields that are there or not, as buttons of one row: `at` is the path of what holds them. */
  protected marksRow<F extends string>(
    row: FieldRow,
    words: Readonly<Record<F, string>>,
    pick?: (picked: readonly F[], side: Side) => void,
  ): SidedRow {
    const fields = Object.keys(words) as F[];
    const on = (side: Side): F[] =>
      fields.filter((field) => fieldAt(this.value, [...row.at(side), field]) !== undefined);
    const { where, ...always } = row;
    return this.#row(
      { ...always, ...(where && { where: (side) => where(side) || on(side).length > 0 }) },
      (path, label, side) =>
        toggles<F>({
          label,
          options: optionsOf(words),
          value: on(side),
          disabled: !this.editable,
          pick: (picked = []) => {
            if (pick) return pick(picked, side);
            const flipped = fields.find((field) => picked.includes(field) !== on(side).includes(field));
            if (flipped) this.edit([...path, flipped], picked.includes(flipped) ? true : undefined);
          },
        }),
      false,
    );
  }

  protected numberRow(
    row: FieldRow,
    unit: string,
    max: number,
    set?: (value: number | undefined, side: Side) => boolean,
  ): SidedRow {
    return this.#row(row, (path, label, side) =>
      this.number(path, label, unit, max, (value) => (set ? set(value, side) : this.edit(path, value)), true),
    );
  }

  /** A number of this part. */
  protected number(
    path: readonly string[],
    label: string,
    unit: string,
    max: number,
    set: (value: number | undefined) => boolean = (value) => this.edit(path, value),
    quiet = false,
  ): TemplateResult {
    const id = path.join('-');
    return numberField({
      id,
      label,
      quiet,
      unit,
      value: fieldAt(this.value, path) as number | undefined,
      shown: this.words.whole.number,
      max,
      disabled: !this.editable,
      refusal: this.refusals.get(id),
      complain: (typed) => this.words.bedside.refusedTime(typed, max, unit),
      typing: this.typing,
      set,
    });
  }

  protected textRow(row: FieldRow): SidedRow {
    return this.#row(row, (path, label) =>
      textField({
        label,
        quiet: true,
        value: fieldAt(this.value, path) as string | undefined,
        longest: LONGEST_TEXT,
        disabled: !this.editable,
        typing: this.typing,
        set: (text) => this.edit(path, text),
      }),
    );
  }
}
