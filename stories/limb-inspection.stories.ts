import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html, type TemplateResult } from 'lit';
import 'pulse-map';
import { chronic, laterWords, threatened } from './limb-records.js';

interface Args {
  value: object | undefined;
  readonly: boolean;
  disabled: boolean;
}

const meta: Meta<Args> = {
  title: 'Examination/Inspection',
  component: 'limb-inspection',
  args: { value: undefined, readonly: false, disabled: false },
  argTypes: { value: { control: 'object' } },
  render: ({ value, readonly, disabled }: Args): TemplateResult =>
    html`<div style="padding: 16px">
      <limb-inspection .value=${value} ?readonly=${readonly} ?disabled=${disabled}></limb-inspection>
    </div>`,
};
export default meta;

type Story = StoryObj<Args>;

/** Nothing seen yet. */
export const Empty: Story = {};

/** A pale, cold, weak leg. */
export const AcuteLeg: Story = { args: { value: threatened.inspection } };

/** A deep ulcer with signs of infection: what depends on a finding appears with it. */
export const Ulcer: Story = { args: { value: chronic.inspection } };

/** Not to be changed, and not submitted. */
export const Disabled: Story = { args: { value: chronic.inspection, disabled: true } };

/** Words of a later version: told where they stand, kept, and not to be changed; the rest can be. */
export const Locked: Story = { args: { value: laterWords.inspection } };

/** A value of a form that this version cannot read at all. */
export const Sealed: Story = { args: { value: { leg: 'left' } } };
