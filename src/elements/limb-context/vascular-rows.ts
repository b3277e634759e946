import type { TemplateResult } from 'lit';
import type { DialysisAccess, PlacedDevice } from '../../examination/index.js';
import { choices, large, optionsOf, toggles } from '../common/choices.js';
import type { SidedRow } from '../common/sided-rows.js';
import type { ContextForm } from './form.js';
import {
  accessOf,
  aneurysmsAt,
  devicesOf,
  PAIRED,
  UNPAIRED,
  withAccess,
  withAneurysms,
  withDevices,
} from './lists.js';

const DEVICES = {
  leg: ['femoral-sheath', 'arterial-line'],
  arm: ['radial-catheter', 'arterial-line'],
} as const satisfies Record<PlacedDevice['limb'], readonly PlacedDevice['kind'][]>;

/** Aneurysms of arteries that are no pair, with the word that none is known. */
export function aneurysms(form: ContextForm): TemplateResult {
  const { context: words } = form.words;
  const list = form.value?.aneurysms;
  const without = aneurysmsAt(list);
  // A paired artery recorded without its side is shown here, so that it can be seen and taken back.
  const places = [...UNPAIRED, ...PAIRED.filter((place) => without.includes(place))];
  return form.known(['aneurysms'], words.aneurysms, () =>
    toggles({
      label: words.aneurysms,
      options: places.map((place) => [place, words.aneurysmOptions[place]] as const),
      value: list?.length === 0 ? [] : without.length ? without : undefined,
      none: words.noAneurysm,
      disabled: !form.editable,
      pick: (picked) =>
        form.edit(['aneurysms'], picked?.length === 0 ? [] : withAneurysms(list, picked ?? [])),
    }),
  );
}

/** Aneurysms of paired arteries, each on its side. */
export function pairedAneurysms(form: ContextForm): SidedRow {
  const { context: words } = form.words;
  const list = form.value?.aneurysms;
  return {
    label: words.aneurysms,
    cell: (side) => {
      const label = `${words.aneurysms}, ${form.words.whole[side].toLocaleLowerCase()}`;
      return form.known(['aneurysms'], label, () =>
        toggles({
          label,
          options: PAIRED.map((place) => [place, words.aneurysmOptions[place]] as const),
          value: aneurysmsAt(list, side),
          disabled: !form.editable,
          pick: (picked) => form.edit(['aneurysms'], withAneurysms(list, picked ?? [], side)),
        }),
      );
    },
  };
}

/** Lines and catheters in an artery of a limb. */
export function devices(form: ContextForm, limb: PlacedDevice['limb']): SidedRow {
  const { context: words } = form.words;
  const list = form.value?.devices;
  return {
    label: words.devices,
    cell: (side) => {
      const label = form.limbLabel(words.devices, limb, side);
      return form.known(['devices'], label, () =>
        toggles<PlacedDevice['kind']>({
          label,
          options: DEVICES[limb].map((kind) => [kind, large(words.deviceOptions[kind])] as const),
          value: devicesOf(list, limb, side),
          disabled: !form.editable,
          pick: (picked) => form.edit(['devices'], withDevices(list, limb, side, picked ?? [])),
        }),
      );
    },
  };
}

/** Dialysis access of an arm, and what is wrong with it. */
export function access(form: ContextForm): SidedRow[] {
  const { context: words } = form.words;
  const list = form.value?.access;
  return [
    {
      label: words.access,
      cell: (side) => {
        const label = form.limbLabel(words.access, 'arm', side);
        const own = accessOf(list, side);
        return form.known(['access'], label, () =>
          choices<DialysisAccess['kind']>({
            label,
            options: optionsOf(words.accessKinds),
            value: own?.kind,
            disabled: !form.editable,
            pick: (kind) => form.edit(['access'], withAccess(list, side, kind && { ...own, side, kind })),
          }),
        );
      },
    },
    {
      label: words.accessSigns,
      cell: (side) => {
        const own = accessOf(list, side);
        const label = form.limbLabel(words.accessSigns, 'arm', side);
        return form.known(['access'], label, () =>
          toggles({
            label,
            options: optionsOf(words.accessSignOptions),
            value: own?.signs,
            none: words.noSigns,
            disabled: !form.editable || !own,
            pick: (signs) => {
              if (!own) return;
              const { signs: _before, ...rest } = own;
              form.edit(['access'], withAccess(list, side, { ...rest, ...(signs && { signs }) }));
            },
          }),
        );
      },
    },
  ];
}
