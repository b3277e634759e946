import { nothing } from 'lit';
import type { Side } from '../../anatomy/index.js';
import type { ColdInjury } from '../../examination/index.js';
import { optionsOf, toggles } from '../common/choices.js';
import { numberField } from '../common/fields.js';
import type { LimbKind } from '../common/sided-part.js';
import type { SidedRow } from '../common/sided-rows.js';
import type { ContextForm } from './form.js';

/** Hours since a cold injury that the record takes. */
const LONGEST = 10_000;

/** An injury of unknown time is an empty entry, which a patch of one field would sweep away. */
function setInjury(
  { value, replace }: ContextForm,
  kind: LimbKind,
  side: Side,
  injury: ColdInjury | undefined,
): boolean {
  const { coldInjury: all, ...context } = value ?? {};
  const { [side]: _own, ...other } = all?.[kind] ?? {};
  const both = { ...other, ...(injury && { [side]: injury }) };
  const { [kind]: _limbs, ...rest } = all ?? {};
  const next = { ...rest, ...(Object.keys(both).length && { [kind]: both }) };
  return replace({ ...context, ...(Object.keys(next).length && { coldInjury: next }) });
}

/** Frostbite of a hand or foot, and how long ago. */
export function coldInjury(form: ContextForm, kind: LimbKind): SidedRow[] {
  const { context: words, bedside, whole } = form.words;
  const injuryOf = (side: Side): ColdInjury | undefined => form.value?.coldInjury?.[kind]?.[side];
  return [
    {
      label: words.coldInjury,
      cell: (side) =>
        toggles<'there'>({
          label: form.limbLabel(words.coldInjury, kind, side),
          options: optionsOf({ there: words.coldInjuryThere }),
          value: injuryOf(side) ? ['there'] : undefined,
          disabled: !form.editable,
          pick: (picked) => setInjury(form, kind, side, picked ? {} : undefined),
        }),
    },
    {
      label: words.coldHours,
      cell: (side) => {
        const injury = injuryOf(side);
        if (!injury) return nothing;
        const id = `cold-${kind}-${side}`;
        return numberField({
          id,
          label: form.limbLabel(words.coldHours, kind, side),
          quiet: true,
          unit: words.hoursUnit,
          value: injury.hours,
          shown: whole.number,
          max: LONGEST,
          disabled: !form.editable,
          refusal: form.refusals.get(id),
          complain: (typed) => bedside.refusedTime(typed, LONGEST, words.hoursUnit),
          typing: form.typing,
          set: (hours) => setInjury(form, kind, side, hours === undefined ? {} : { hours }),
        });
      },
    },
  ];
}
