import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html, type TemplateResult } from 'lit';
import 'pulse-map';
import { emptyExamination, type Examination, setPulse } from 'pulse-map/core';

interface Args {
  text: string;
  examination: Examination;
}

const meta: Meta<Args> = {
  title: 'Examination/Type or dictate',
  component: 'limb-note',
  args: { text: '', examination: emptyExamination() },
  argTypes: { examination: { control: false } },
  render: ({ text, examination }: Args): TemplateResult =>
    html`<div style="padding: 16px; display: grid; gap: 16px">
      <limb-note for="figure" .text=${text}></limb-note>
      <pulse-map id="figure" .value=${examination}></pulse-map>
    </div>`,
};
export default meta;

type Story = StoryObj<Args>;

/** Nothing written yet. */
export const Empty: Story = {};

/** Everything was understood. Invented, as are all the notes here. */
export const Understood: Story = {
  args: {
    text: 'Right leg all normal. Left femoral normal, popliteal and both pedals absent, bruit over left femoral.',
  },
};

/** A scale that is not said, a side that is not named, a word that nobody knows. */
export const Doubtful: Story = {
  args: { text: 'fem 2/4 left, DP present, right popliteal not felt because of oedema, xyzzy' },
};

/** The record says otherwise already: nothing is replaced before it is ticked. */
export const Contradicts: Story = {
  args: {
    text: 'left femoral absent, right femoral normal, left popliteal absent. left popliteal normal',
    examination: (['left', 'right'] as const).reduce(
      (record, side) => setPulse(record, { site: 'femoral', side }, { grade: 'normal' }),
      emptyExamination(),
    ),
  },
};
