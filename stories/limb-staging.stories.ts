import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html, type TemplateResult } from 'lit';
import 'pulse-map';
import { emptyExamination, type Examination } from 'pulse-map/core';
import { chronic, threatened, venous } from './limb-records.js';

interface Args {
  examination: Examination;
}

const meta: Meta<Args> = {
  title: 'Examination/Stages',
  component: 'limb-staging',
  args: { examination: emptyExamination() },
  argTypes: { examination: { control: false } },
  render: ({ examination }: Args): TemplateResult =>
    html`<div style="padding: 16px">
      <limb-staging .examination=${examination} .value=${examination.staging}></limb-staging>
    </div>`,
};
export default meta;

type Story = StoryObj<Args>;

/** Nothing to stage by. */
export const Empty: Story = {};

/** An acutely threatened leg: the class, what it rests on, how soon. */
export const AcuteClass: Story = { args: { examination: threatened } };

/** A wound, all three grades, and a category the clinician set against the derived one. */
export const Overruled: Story = { args: { examination: chronic } };

/** Diseased veins: whether compression is within the limits, and what must be known first. */
export const Compression: Story = { args: { examination: venous } };
