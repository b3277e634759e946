import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html, nothing, type TemplateResult } from 'lit';
import { type View, VIEWS } from 'pulse-map';
import type { Examination } from 'pulse-map/core';
import { PAGE_BUTTON } from './page-button.js';
import {
  aneurysm,
  aortoIliac,
  arm,
  contradiction,
  couldNotExamine,
  earlier,
  normal,
  oneBlock,
  several,
  skin,
} from './records.js';

interface Args {
  /** The record as it stands in the `value` attribute: JSON text. */
  value: string;
  label: string;
  required: boolean;
  disabled: boolean;
  readonly: boolean;
  display: 'figure' | 'table';
  view: View | 'auto';
  /** An earlier record to show beside. */
  compare: Examination | null;
}

function map(args: Args): TemplateResult {
  return html`<pulse-map
    name="pulses"
    label=${args.label}
    value=${args.value || nothing}
    display=${args.display}
    view=${args.view}
    .compare=${args.compare}
    ?required=${args.required}
    ?disabled=${args.disabled}
    ?readonly=${args.readonly}
  ></pulse-map>`;
}

const meta: Meta<Args> = {
  title: 'Pulse map',
  component: 'pulse-map',
  args: {
    value: '',
    label: 'Pulses and bruits',
    required: false,
    disabled: false,
    readonly: false,
    display: 'figure',
    view: 'auto',
    compare: null,
  },
  argTypes: {
    display: { control: 'inline-radio', options: ['figure', 'table'] },
    view: { control: 'select', options: ['auto', ...VIEWS] },
    compare: { control: false },
  },
  render: map,
};
export default meta;

type Story = StoryObj<Args>;
const of = (examination: Examination): string => JSON.stringify(examination);

/** Nothing examined: a quiet page of small open rings. */
export const Empty: Story = {};

/** All 23 pulses felt. */
export const Normal: Story = { args: { value: of(normal) } };

/** A left superficial femoral block with a bruit above it. */
export const OneBlock: Story = { args: { value: of(oneBlock) } };

/** A narrowing and a block in the right leg, one artery of the left foot, one of the left wrist. */
export const SeveralBlocks: Story = { args: { value: of(several) } };

/** Both femoral pulses gone: one lesion at the fork, or one on each side. */
export const AortoIliac: Story = { args: { value: of(aortoIliac) } };

/** The inflow of the left arm is narrowed; the left radial pulse comes later. */
export const Arm: Story = { args: { value: of(arm) } };

/** What could not be examined, and why, stays apart from what was not felt. */
export const CouldNotExamine: Story = { args: { value: of(couldNotExamine) } };

/** Full pulses beyond one that was not felt: the map asks to feel again. */
export const Contradiction: Story = { args: { value: of(contradiction) } };

/** Expansile pulses on the 0 to 4 scale. */
export const Expansile: Story = { args: { value: of(aneurysm) } };

/** Drawn on the skin: gangrene, an ulcer, redness, where cold begins, a scar. Each is said in words under the figure. */
export const MarksOnTheSkin: Story = { args: { value: of(skin) } };

/** The same record as a table, trunk first. */
export const Table: Story = { args: { value: of(oneBlock), display: 'table' } };

/** What changed since an earlier visit. */
export const ComparedWithEarlier: Story = { args: { value: of(oneBlock), compare: earlier } };

/** To read, not to change; the form still submits it. */
export const ReadOnly: Story = { args: { value: of(oneBlock), readonly: true } };

/** Neither changed nor submitted. */
export const Disabled: Story = { args: { value: of(oneBlock), disabled: true } };

/** A grade in words of a later version: kept, locked at its site, and never shown as not examined. */
export const Locked: Story = {
  args: {
    value: JSON.stringify({
      format: 'pulse-map/1',
      scale: '0-3',
      pulses: {
        femoral: { left: { grade: 'normal' }, right: { grade: 'normal' } },
        popliteal: { left: { grade: 'bounding-hard' } },
        'dorsalis-pedis': { left: { grade: 'absent' } },
        'posterior-tibial': { left: { couldNotExamine: 'exoskeleton' } },
      },
    }),
  },
};

/** A record of a later version stays as it is and is submitted unchanged; nothing can be entered over it by accident. */
export const Unreadable: Story = { args: { value: '{"format":"pulse-map/2","scale":"0-3"}' } };

/** On a dark page: the map follows the page's `color-scheme`. */
export const Dark: Story = {
  args: { value: of(oneBlock) },
  render: (args) =>
    html`<div style="color-scheme: dark; background: #12151a; padding: 16px">${map(args)}</div>`,
};

/** For the back row of a lecture hall: thicker lines by a custom property, heavier names by a part. */
export const LectureHall: Story = {
  args: { value: of(oneBlock) },
  render: (args) =>
    html`<style>
        .hall pulse-map {
          --pulse-map-stroke: 1.7;
        }
        .hall pulse-map::part(labels) {
          font-weight: 600;
        }
      </style>
      <div class="hall">${map(args)}</div>`,
};

/** Hand, foot, sole, knee and the legs from behind, each a plate of its own, which a button beside the limb opens. */
export const Plates: Story = {
  args: { value: of(oneBlock) },
  render: (args) =>
    html`<div style="display: grid; grid-template-columns: repeat(auto-fill, minmax(340px, 1fr)); gap: 12px">
      ${VIEWS.filter((view) => /hand|foot|sole|knee|behind/.test(view)).map(
        (view) =>
          html`<pulse-map
            no-reading
            no-flags
            readonly
            value=${args.value}
            label=${view}
            view=${view}
          ></pulse-map>`,
      )}
    </div>`,
};

/** In a narrow column arms and legs take turns, with short codes and a legend. */
export const Small: Story = {
  args: { value: of(oneBlock) },
  render: (args) => html`<div style="width: 340px; max-width: 100%">${map(args)}</div>`,
};

/** Among the fields of a form: it submits JSON under its name, is required, resets. */
export const InAForm: Story = {
  args: { required: true },
  render: (args) => {
    const handleSubmit = (event: SubmitEvent): void => {
      event.preventDefault();
      const form = event.currentTarget as HTMLFormElement;
      const shown = form.querySelector('output');
      if (shown) shown.textContent = String(new FormData(form).get('pulses') ?? '');
    };
    return html`<form @submit=${handleSubmit} style="display: grid; gap: 12px; font: 15px/21px system-ui">
      <label>Examiner <input name="examiner" autocomplete="off" /></label>
      ${map(args)}
      <div>
        <button type="submit" style=${PAGE_BUTTON}>Submit</button>
        <button type="reset" style=${PAGE_BUTTON}>Reset</button>
      </div>
      <output style="overflow-wrap: anywhere"></output>
    </form>`;
  },
};
