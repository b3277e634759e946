import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html, type TemplateResult } from 'lit';
import 'pulse-map';
import 'pulse-map/elements/limb-unconfirmed/define';
import { emptyExamination, type Examination } from 'pulse-map/core';
import { chronic } from './limb-records.js';

interface Args {
  earlier: Examination | null;
}

const meta: Meta<Args> = {
  title: 'Examination/From the last visit',
  component: 'limb-unconfirmed',
  args: { earlier: null },
  argTypes: { earlier: { control: false } },
  render: ({ earlier }: Args): TemplateResult =>
    html`<div style="padding: 16px; display: grid; gap: 16px">
      <limb-unconfirmed for="map" .earlier=${earlier}></limb-unconfirmed>
      <pulse-map id="map" .compare=${earlier}></pulse-map>
    </div>`,
};
export default meta;

type Story = StoryObj<Args>;

/** No earlier visit: nothing is shown. */
export const None: Story = {};

/** What the visit before found stands beside the record until it is found again. */
export const FromTheLast: Story = { args: { earlier: chronic } };

/** An earlier visit that recorded nothing. */
export const Nothing: Story = { args: { earlier: emptyExamination() } };
