import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html, type TemplateResult } from 'lit';
import 'pulse-map';
import { emptyExamination, type Examination } from 'pulse-map/core';
import { chronic, threatened } from './limb-records.js';

interface Args {
  examination: Examination;
  folded: boolean;
}

const meta: Meta<Args> = {
  title: 'Examination/Red flags',
  component: 'limb-flags',
  args: { examination: emptyExamination(), folded: false },
  argTypes: { examination: { control: false } },
  render: ({ examination, folded }: Args): TemplateResult =>
    html`<div style="padding: 16px">
      <limb-flags .examination=${examination} ?folded=${folded}></limb-flags>
    </div>`,
};
export default meta;

type Story = StoryObj<Args>;

/** Nothing to warn of: nothing is shown. */
export const None: Story = {};

/** An acutely threatened leg. */
export const Threatened: Story = { args: { examination: threatened } };

/** A wound with low toe pressure. */
export const Chronic: Story = { args: { examination: chronic } };

/** Several at once, the most urgent first. */
export const Several: Story = {
  args: {
    examination: {
      ...threatened,
      pulses: { ...threatened.pulses, 'abdominal-aorta': { midline: { expansile: true } } },
      inspection: {
        leg: { ...threatened.inspection?.leg, right: { gangrene: 'wet', gangreneExtent: 'digits' } },
      },
    },
  },
};
