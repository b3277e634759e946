import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html, type TemplateResult } from 'lit';
import 'pulse-map';

interface Args {
  value: Record<string, unknown> | undefined;
  readonly: boolean;
  disabled: boolean;
}

const meta: Meta<Args> = {
  title: 'Examination/Clinical background',
  component: 'limb-context',
  args: { value: undefined, readonly: false, disabled: false },
  argTypes: { value: { control: 'object' } },
  render: ({ value, readonly, disabled }: Args): TemplateResult =>
    html`<div style="padding: 16px">
      <limb-context .value=${value} ?readonly=${readonly} ?disabled=${disabled}></limb-context>
    </div>`,
};
export default meta;

type Story = StoryObj<Args>;

/** Nothing known. */
export const Empty: Story = {};

/** An invented smoker with diabetes, a stent, and a foot pulse that was never there. */
export const MuchKnown: Story = {
  args: {
    value: {
      ageBand: '60-79',
      diabetes: true,
      smoking: 'current',
      legClaudication: { left: 'calf-upper' },
      absentFromBirth: { right: ['dorsalis-pedis'] },
      revascularisations: [{ artery: 'common-iliac', side: 'left', kind: 'stent' }],
    },
  },
};

/** An invented patient whose knee went out of joint. */
export const Injury: Story = {
  args: { value: { ageBand: '20-39', mechanism: 'injury', injury: { right: 'knee' } } },
};

/** Shown, not to be changed. */
export const ReadOnly: Story = { args: { ...Injury.args, readonly: true } };
