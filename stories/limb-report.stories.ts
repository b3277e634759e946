import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html, type TemplateResult } from 'lit';
import 'pulse-map';
import { emptyExamination, type Examination } from 'pulse-map/core';
import { chronic, threatened } from './limb-records.js';

interface Args {
  examination: Examination;
  subject: string;
  details: string;
}

const meta: Meta<Args> = {
  title: 'Examination/Report',
  component: 'limb-report',
  args: {
    examination: emptyExamination(),
    subject: 'Marta Lindqvist',
    details: 'AR-1041, born 11 February 1958 (invented patient)',
  },
  argTypes: { examination: { control: false } },
  render: ({ examination, subject, details }: Args): TemplateResult =>
    html`<div style="padding: 16px">
      <limb-report .examination=${examination} subject=${subject} details=${details}></limb-report>
    </div>`,
};
export default meta;

type Story = StoryObj<Args>;

/** A limb that may be lost: the flag stands above everything, on paper too. Invented. */
export const Threatened: Story = { args: { examination: { ...threatened, examiner: 'L. Brandt' } } };

/** Two legs, tests, pressures and stages: more than a page. Invented. */
export const Chronic: Story = { args: { examination: chronic } };

/** Nothing recorded. */
export const Empty: Story = {};

/** The page does not name the patient. */
export const NotNamed: Story = { args: { examination: threatened, subject: '', details: '' } };

/** Belongs to another patient: marked before everything else, kept with all that it says. */
export const EnteredInError: Story = {
  args: {
    examination: {
      ...threatened,
      status: 'final',
      amendments: [
        { kind: 'amended', at: '2026-11-02T21:34+01:00', by: 'R. Haddad', why: 'Side corrected' },
        { kind: 'entered-in-error', at: '2026-11-03T08:00+01:00', by: 'L. Brandt', why: 'Other patient' },
      ],
    },
  },
};
