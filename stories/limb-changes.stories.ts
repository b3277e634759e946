import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html, type TemplateResult } from 'lit';
import 'pulse-map';
import { emptyExamination, type Examination } from 'pulse-map/core';
import { chronic, threatened } from './limb-records.js';

interface Args {
  earlier: Examination | null;
  examination: Examination;
}

const meta: Meta<Args> = {
  title: 'Examination/Changes since the earlier visit',
  component: 'limb-changes',
  args: { earlier: null, examination: emptyExamination() },
  argTypes: { earlier: { control: false }, examination: { control: false } },
  render: ({ earlier, examination }: Args): TemplateResult =>
    html`<div style="padding: 16px">
      <limb-changes .earlier=${earlier} .examination=${examination}></limb-changes>
    </div>`,
};
export default meta;

type Story = StoryObj<Args>;

const spring: Examination = {
  ...emptyExamination(),
  examinedAt: '2026-05-19T09:40:00Z',
  context: {
    revascularisations: [
      { artery: 'superficial-femoral', side: 'left', kind: 'bypass', graftPulse: 'present' },
    ],
  },
  pulses: {
    femoral: { right: { grade: 'normal' }, left: { grade: 'normal' } },
    popliteal: { right: { grade: 'normal' }, left: { grade: 'reduced' } },
    'dorsalis-pedis': { right: { grade: 'reduced' }, left: { grade: 'reduced', doppler: 'biphasic' } },
  },
  bruits: { femoral: { left: { bruit: 'none' } } },
  pressures: {
    brachial: { right: 130, left: 130 },
    'dorsalis-pedis': { right: 128, left: 122 },
    'posterior-tibial': { right: 126, left: 118 },
  },
};
const autumn: Examination = {
  ...spring,
  examinedAt: '2026-10-06T14:05:00Z',
  context: {
    revascularisations: [
      { artery: 'superficial-femoral', side: 'left', kind: 'bypass', graftPulse: 'absent' },
    ],
  },
  pulses: {
    femoral: { right: { grade: 'normal' }, left: { grade: 'normal' } },
    popliteal: { left: { grade: 'absent' } },
    'dorsalis-pedis': { right: { grade: 'normal' }, left: { grade: 'absent', doppler: 'monophasic' } },
  },
  bruits: { femoral: { left: { bruit: 'systolic' } } },
  pressures: {
    brachial: { right: 130, left: 130 },
    'dorsalis-pedis': { right: 124, left: 78 },
    'posterior-tibial': { right: 122, left: 70 },
  },
};

/** No earlier visit: nothing is shown. */
export const None: Story = {};

/** A graft that went quiet since spring. Invented. */
export const Worse: Story = { args: { earlier: spring, examination: autumn } };

/** The same visits in the other order. */
export const Better: Story = { args: { earlier: autumn, examination: spring } };

/** Twice the same findings. */
export const Same: Story = { args: { earlier: spring, examination: spring } };

/** Two different sets of findings that share little. */
export const Apart: Story = { args: { earlier: chronic, examination: threatened } };
