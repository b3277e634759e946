import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html, type TemplateResult } from 'lit';
import 'pulse-map/elements/limb-observations/define';
import {
  emptyChart,
  type LimbObservation,
  type ObservationChart,
} from 'pulse-map/elements/limb-observations';

interface Args {
  chart: ObservationChart;
}

const meta: Meta<Args> = {
  title: 'Examination/Observations by the hour',
  component: 'limb-observations',
  args: { chart: emptyChart({ kind: 'leg', side: 'left' }) },
  argTypes: { chart: { control: false } },
  render: ({ chart }: Args): TemplateResult =>
    html`<div style="padding: 16px"><limb-observations .chart=${chart}></limb-observations></div>`,
};
export default meta;

type Story = StoryObj<Args>;

const well: LimbObservation = {
  at: '2026-10-28T13:00Z',
  signal: 'triphasic',
  colour: 'normal',
  sensation: 'normal',
  movement: 'normal',
  refill: 2,
  pain: 3,
};
const bypass: ObservationChart = {
  ...emptyChart({ kind: 'leg', side: 'left' }),
  graft: { artery: 'superficial-femoral', side: 'left', kind: 'bypass' },
  observations: [well, { ...well, at: '2026-10-28T14:00Z', signal: 'biphasic' }],
};

/** No round yet. */
export const Empty: Story = {};

/** Two rounds after a bypass, all well. Invented. */
export const Well: Story = { args: { chart: bypass } };

/** The signal of the graft was lost: the flag stands until it is heard again. */
export const SignalLost: Story = {
  args: {
    chart: {
      ...bypass,
      observations: [
        ...bypass.observations,
        {
          at: '2026-10-28T15:00Z',
          signal: 'absent',
          colour: 'pale',
          sensation: 'digits',
          refill: 8,
          pain: 8,
        },
        { at: '2026-10-28T16:00Z', pain: 8 },
      ],
    },
  },
};

const overnight = Array.from({ length: 26 }, (_, hour): LimbObservation => {
  const at = new Date(Date.UTC(2026, 9, 28, 18 + hour)).toISOString();
  if (hour === 11) return { at, note: 'asleep, left in peace' };
  const late = hour > 19;
  return {
    at,
    signal: late ? 'absent' : hour > 17 ? 'monophasic' : hour > 6 ? 'biphasic' : 'triphasic',
    colour: late ? 'pale' : 'normal',
    sensation: hour > 21 ? 'digits' : 'normal',
    movement: 'normal',
    refill: late ? 6 : 2,
    pain: hour < 4 ? 6 - hour : late ? hour - 16 : 2,
  };
});

/** A night and a day: the course over the hours shows when the signal went. Invented. */
export const Overnight: Story = { args: { chart: { ...bypass, observations: overnight } } };
