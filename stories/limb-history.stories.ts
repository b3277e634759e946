import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html, type TemplateResult } from 'lit';
import 'pulse-map';
import { chronic, threatened } from './limb-records.js';

interface Args {
  value: Record<string, unknown> | undefined;
  readonly: boolean;
  disabled: boolean;
}

const meta: Meta<Args> = {
  title: 'Examination/History',
  component: 'limb-history',
  args: { value: undefined, readonly: false, disabled: false },
  argTypes: { value: { control: 'object' } },
  render: ({ value, readonly, disabled }: Args): TemplateResult =>
    html`<div style="padding: 16px">
      <limb-history .value=${value} ?readonly=${readonly} ?disabled=${disabled}></limb-history>
    </div>`,
};
export default meta;

type Story = StoryObj<Args>;

/** Nothing asked yet. */
export const Empty: Story = {};

/** An invented patient whose left leg went cold six hours ago. */
export const AcuteLeg: Story = { args: { value: { onset: threatened.onset, history: threatened.history } } };

/** Years of claudication on the left, a wound on the right. */
export const Chronic: Story = {
  args: { value: { onset: chronic.onset, history: chronic.history, context: chronic.context } },
};

/** Shown, not to be changed. */
export const ReadOnly: Story = { args: { value: { history: chronic.history }, readonly: true } };
