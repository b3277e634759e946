import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html, type TemplateResult } from 'lit';
import 'pulse-map';
import { emptyExamination, type Examination } from 'pulse-map/core';
import { chronic, laterRecord, laterWords, threatened } from './limb-records.js';
import { PAGE_BUTTON } from './page-button.js';

interface Args {
  examination: Examination;
  readonly: boolean;
}

const meta: Meta<Args> = {
  title: 'Examination/Whole examination',
  component: 'limb-examination',
  args: { examination: emptyExamination(), readonly: false },
  argTypes: { examination: { control: false } },
  render: ({ examination, readonly }: Args): TemplateResult =>
    html`<div style="padding: 16px">
      <limb-examination .examination=${examination} ?readonly=${readonly}></limb-examination>
    </div>`,
};
export default meta;

type Story = StoryObj<Args>;

/** The first part is open; the others open from the row above. */
export const Empty: Story = {};

/** A threatened leg: the flag stands above everything. */
export const Threatened: Story = { args: { examination: threatened } };

/** Both legs, every part. */
export const Chronic: Story = { args: { examination: chronic } };

/** Shown, not to be changed. */
export const ReadOnly: Story = { args: { examination: chronic, readonly: true } };

/** A record of a later version: one sentence, nothing to enter, and the text is submitted as it came. */
export const Sealed: Story = {
  render: () =>
    html`<div style="padding: 16px">
      <limb-examination .value=${laterRecord}></limb-examination>
    </div>`,
};

/** Words of a later version in known fields: each is kept and locked where it stands, everything else can be edited. */
export const Locked: Story = {
  render: () =>
    html`<div style="padding: 16px">
      <limb-examination .value=${JSON.stringify(laterWords)}></limb-examination>
    </div>`,
};

/** In a form: one value, one reset. */
export const InAForm: Story = {
  render: () =>
    html`<form
      style="padding: 16px"
      @submit=${(event: SubmitEvent) => {
        event.preventDefault();
        const form = event.currentTarget as HTMLFormElement;
        const output = form.querySelector('output') as HTMLOutputElement;
        output.textContent = String(new FormData(form).get('examination'));
      }}
    >
      <limb-examination name="examination"></limb-examination>
      <p>
        <button style=${PAGE_BUTTON}>Submit</button> <button type="reset" style=${PAGE_BUTTON}>Reset</button>
      </p>
      <output></output>
    </form>`,
};
