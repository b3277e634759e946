import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html, type TemplateResult } from 'lit';
import 'pulse-map';
import type { BedsideTestId } from 'pulse-map/core';
import { armTests, chronic } from './limb-records.js';

interface Args {
  test: BedsideTestId;
  side: 'right' | 'left';
  value: object | undefined;
  readonly: boolean;
}

const meta: Meta<Args> = {
  title: 'Examination/Bedside test',
  component: 'bedside-test',
  args: { test: 'elevation', side: 'right', value: undefined, readonly: false },
  argTypes: { value: { control: 'object' } },
  render: ({ test, side, value, readonly }: Args): TemplateResult =>
    html`<div style="padding: 16px; max-inline-size: 760px">
      <bedside-test .test=${test} .side=${side} .value=${value} ?readonly=${readonly}></bedside-test>
    </div>`,
};
export default meta;

type Story = StoryObj<Args>;

/** A leg in profile, dragged to the angle at which it pales. */
export const LegRaise: Story = {
  args: { test: 'elevation', side: 'right', value: chronic.bedside?.elevation },
};

/** A stopwatch, both legs apart. */
export const ColourReturn: Story = {
  args: { test: 'colour-return', side: 'right', value: chronic.bedside?.['colour-return'] },
};

/** Whether the hanging foot turns red. */
export const Redness: Story = {
  args: { test: 'dependent-rubor', side: 'left', value: chronic.bedside?.['dependent-rubor'] },
};

/** Not done, and why. */
export const VenousFillingNotDone: Story = {
  args: { test: 'venous-filling', side: 'right', value: chronic.bedside?.['venous-filling'] },
};

/** A palm that stays white. */
export const HandArch: Story = {
  args: { test: 'hand-arch', side: 'right', value: armTests.bedside?.['hand-arch'] },
};

/** Three colour phases with their times. */
export const Cold: Story = {
  args: { test: 'cold-provocation', side: 'left', value: armTests.bedside?.['cold-provocation'] },
};

/** Three ways, with the rates in healthy people. */
export const Scalene: Story = { args: { test: 'scalene', side: 'left', value: armTests.bedside?.scalene } };

/** A position with symptoms. */
export const Hyperabduction: Story = {
  args: { test: 'hyperabduction', side: 'left', value: armTests.bedside?.hyperabduction },
};

/** A negative test. */
export const Costoclavicular: Story = {
  args: { test: 'costoclavicular', side: 'left', value: armTests.bedside?.costoclavicular },
};

/** Three minutes on the beat, stopped by tingling. */
export const ArmStress: Story = {
  args: { test: 'arm-stress', side: 'left', value: armTests.bedside?.['arm-stress'] },
};

/** Nothing measured yet. */
export const Empty: Story = {};

/** Shown, not to be changed. */
export const ReadOnly: Story = { args: { value: chronic.bedside?.elevation, readonly: true } };
