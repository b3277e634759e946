import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html, type TemplateResult } from 'lit';
import 'pulse-map';
import { emptyExamination, type Examination, type Pathway } from 'pulse-map/core';
import { chronic, threatened } from './limb-records.js';

interface Args {
  examination: Examination;
  open: boolean;
  pathway?: Pathway;
}

const meta: Meta<Args> = {
  title: 'Examination/Red flags',
  component: 'limb-flags',
  args: { examination: emptyExamination(), open: false },
  argTypes: { examination: { control: false }, pathway: { control: false } },
  render: ({ examination, open, pathway }: Args): TemplateResult =>
    html`<div style="padding: 16px">
      <limb-flags .examination=${examination} .pathway=${pathway} ?open=${open}></limb-flags>
    </div>`,
};
export default meta;

type Story = StoryObj<Args>;

/** Nothing to warn of: nothing is shown. */
export const None: Story = {};

/** An acutely threatened leg. */
export const Threatened: Story = { args: { examination: threatened } };

/** The same opened, in a hospital that says whom its flags call. The number is invented. */
export const Opened: Story = {
  args: {
    examination: threatened,
    open: true,
    pathway: {
      name: 'Acute limb, Alder Row',
      calls: { vascular: { name: 'Vascular registrar', telephone: '+44 1632 960961' } },
    },
  },
};

/** No foot pulse on one side and nothing else: no flag, but the question when it began. */
export const Question: Story = {
  args: {
    examination: {
      ...emptyExamination(),
      pulses: {
        'posterior-tibial': { left: { grade: 'absent' } },
        'dorsalis-pedis': { left: { grade: 'absent' } },
      },
    },
  },
};

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
