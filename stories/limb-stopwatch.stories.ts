import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html, type TemplateResult } from 'lit';
import 'pulse-map';

interface Args {
  label: string;
  countdown: number | undefined;
  plain: boolean;
}

const meta: Meta<Args> = {
  title: 'Examination/Stopwatch',
  component: 'limb-stopwatch',
  args: { label: 'Left, since lowering', countdown: undefined, plain: false },
  render: ({ label, countdown, plain }: Args): TemplateResult =>
    html`<div style="padding: 16px; max-inline-size: 420px">
      <limb-stopwatch .label=${label} .countdown=${countdown} ?plain=${plain}></limb-stopwatch>
    </div>`,
};
export default meta;

type Story = StoryObj<Args>;

/** A stopwatch with laps and correction by hand. */
export const CountsUp: Story = {};

/** Three minutes. */
export const CountsDown: Story = { args: { label: 'Arms up', countdown: 180 } };

/** One button only. */
export const Plain: Story = { args: { plain: true } };
