import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html, type TemplateResult } from 'lit';
import 'pulse-map';
import { emptyExamination, type Examination } from 'pulse-map/core';
import { LETTER_LENGTHS, type LetterLength } from 'pulse-map/letter';
import { chronic, threatened } from './limb-records.js';

interface Args {
  examination: Examination;
  length: LetterLength;
  subject: string;
}

const meta: Meta<Args> = {
  title: 'Examination/Letter',
  component: 'limb-letter',
  args: { examination: chronic, length: 'short', subject: 'Marta Lindqvist' },
  argTypes: {
    examination: { control: false },
    length: { control: 'inline-radio', options: LETTER_LENGTHS },
  },
  render: ({ examination, length, subject }: Args): TemplateResult =>
    html`<div style="padding: 16px; max-inline-size: 900px">
      <limb-letter .examination=${examination} .length=${length} subject=${subject}></limb-letter>
    </div>`,
};
export default meta;

type Story = StoryObj<Args>;

export const Summary: Story = {};
export const Letter: Story = { args: { length: 'letter' } };
export const Line: Story = { args: { length: 'line' } };
/** The flags stand first, and the recommendations are theirs alone. */
export const Handover: Story = {
  args: { length: 'handover', examination: threatened, subject: 'Chidi Okafor' },
};
export const NothingRecorded: Story = { args: { examination: emptyExamination() } };
