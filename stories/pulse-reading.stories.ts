import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html, type TemplateResult } from 'lit';
import 'pulse-map';
import { emptyExamination, type Examination } from 'pulse-map/core';
import {
  aortoIliac,
  arm,
  contradiction,
  couldNotExamine,
  examined,
  normal,
  oneBlock,
  several,
} from './records.js';

interface Args {
  examination: Examination;
  numbers: boolean;
}

const meta: Meta<Args> = {
  title: 'Reading',
  component: 'pulse-reading',
  args: { examination: emptyExamination(), numbers: false },
  argTypes: { examination: { control: false } },
  render: ({ examination, numbers }: Args): TemplateResult =>
    html`<div style="max-inline-size: 420px; padding: 20px">
      <h2 style="font: 600 15px system-ui; margin: 0 0 12px">Reading of an invented examination</h2>
      <pulse-reading .examination=${examination} ?numbers=${numbers}></pulse-reading>
    </div>`,
};
export default meta;

type Story = StoryObj<Args>;

/** Nothing examined: nothing is claimed, and where to start. */
export const NothingExamined: Story = {};

/** Every pulse felt. */
export const AllNormal: Story = { args: { examination: normal } };

/** One clear block; rule and probabilities agree. */
export const OneClearBlock: Story = { args: { examination: oneBlock } };

/** The same with the figures behind the words. */
export const WithNumbers: Story = { args: { examination: oneBlock, numbers: true } };

/** Lesions in several limbs. */
export const SeveralLesions: Story = { args: { examination: several } };

/** Both femorals gone: the fork, or both sides. */
export const BothLegs: Story = { args: { examination: aortoIliac } };

/** A weak left arm. */
export const AnArm: Story = { args: { examination: arm } };

/** A pulse felt beyond one that was not: which to check again. */
export const FindingsContradict: Story = { args: { examination: contradiction } };

/** Sites that could not be examined leave the stretch wide. */
export const CouldNotExamine: Story = { args: { examination: couldNotExamine } };

/** Only one foot pulse missing. */
export const OneFootArtery: Story = {
  args: { examination: examined({ 'left dorsalis-pedis': 'absent' }, normal) },
};
