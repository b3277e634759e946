import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html, type TemplateResult } from 'lit';
import 'pulse-map';
import { chronic, laterWords } from './limb-records.js';

interface Args {
  value: object | undefined;
  readonly: boolean;
  disabled: boolean;
}

const meta: Meta<Args> = {
  title: 'Examination/Pressures',
  component: 'limb-pressures',
  args: { value: undefined, readonly: false, disabled: false },
  argTypes: { value: { control: 'object' } },
  render: ({ value, readonly, disabled }: Args): TemplateResult =>
    html`<div style="padding: 16px">
      <limb-pressures .value=${value} ?readonly=${readonly} ?disabled=${disabled}></limb-pressures>
    </div>`,
};
export default meta;

type Story = StoryObj<Args>;

/** Nothing measured yet. */
export const Empty: Story = {};

/** One artery that no cuff closes; the figures used are underlined. */
export const TwoLegs: Story = { args: { value: chronic.pressures } };

/** A missing arm is told, not guessed. */
export const OneArmMissing: Story = {
  args: { value: { brachial: { left: 150 }, 'posterior-tibial': { left: 75 } } },
};

/** The same record shown in kPa. */
export const InKilopascal: Story = { args: { value: { ...chronic.pressures, unit: 'kPa' } } };

/** A fall from thigh to calf points to the femoro-popliteal level. */
export const Segments: Story = {
  args: {
    value: {
      brachial: { right: 140, left: 138 },
      'high-thigh': { right: 150, left: 148 },
      calf: { right: 146, left: 96 },
      'posterior-tibial': { right: 150, left: 90 },
    },
  },
};

/** A reason of a later version in place of a toe pressure: kept and locked, and no index is worked out from it. */
export const Locked: Story = { args: { value: laterWords.pressures } };

/** A criterion chosen for the record, and the shape of a volume curve. */
export const Methods: Story = {
  args: {
    value: {
      ...chronic.pressures,
      volumeCurve: { right: 'rounded', left: 'normal' },
      method: { threat: 'parc-2015', ankle: 'lower' },
    },
  },
};
