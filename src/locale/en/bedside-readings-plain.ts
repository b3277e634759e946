import type { ReadingsTable } from '../bedside-readings.js';
import type { Otherwise } from '../terms.js';
import { anatomy } from './anatomy.js';
import { sentence } from './phrases.js';

/** What the tests mean, for a reader who is no clinician. */
export const plainReadings: Otherwise<ReadingsTable> = {
  notes: {
    'pallor-within-seconds': 'Paleness within seconds goes with severe disease.',
    'pallor-minutes': 'Paleness after minutes goes with mild disease.',
    'incompetent-veins': 'The veins leak: filling early says nothing.',
    'rewarming-slow': 'The fingers warm slowly.',
    'rewarming-between': 'The fingers warm more slowly than usual.',
    'rewarming-usual': 'The fingers warm in the usual time.',
    'rewarming-no-limit':
      'The limits for warming belong to ice water for 20 s: there is no limit for this way of testing.',
    'absent-before': 'The pulse was not there before: it cannot go.',
  },
  elevation: {
    keepsColour: (angle) => `Keeps its colour at ${angle}: normal in this way of testing.`,
    belowLimit: (pale, limit) => `${pale}: a sign of severe disease, below ${limit}.`,
    inRange: (pale, limit) =>
      `${pale}: a leg short of blood pales between 15° and 30°; below ${limit} is severe.`,
  },
  colourReturn: {
    prolonged: (time, limit) => `Pink after ${time}: slow, limit ${limit}.`,
    severe: (time, limit) => `Pink after ${time}: very slow, beyond ${limit}.`,
    'not-returned': (time, limit) => `Still pale after ${time}: slow, limit ${limit}.`,
  },
  venousFilling: {
    prolonged: (time, limit) => `Vein full after ${time}: slow, beyond ${limit}.`,
    severe: (time, limit) => `Vein full after ${time}: very slow, beyond ${limit}.`,
    'not-filled': (time, limit) => `Vein still empty after ${time}: slow, beyond ${limit}.`,
    unreliable: (time) => `Vein full after ${time}: says nothing, because the veins leak.`,
  },
  rubor: { seen: (after) => `Dusky red${after}: goes with diseased arteries.` },
  hand: {
    artery: (artery) => anatomy.arteries[artery],
    released: {
      blocked: (artery) =>
        `${artery} let go: palm stays white, so this artery or the arch in the palm may be blocked`,
    },
    tracingLost: (pressed) =>
      `The finger clip shows no beat for two minutes (class D) while the ${pressed} is pressed: the other may not feed the hand alone.`,
    tracingKept:
      'The finger clip shows a beat, or shows it again within two minutes: the other artery feeds the hand.',
  },
  cold: { noChange: 'The colour does not change.' },
  position: {
    pulse: { lost: 'gone' },
    both: (pulse, symptoms) => `Pulse ${pulse}, with ${symptoms}: the test brings on the symptoms.`,
    symptoms: (symptoms) => `${sentence(symptoms)}: the test brings on the symptoms.`,
    lost: 'Pulse gone without symptoms: common in healthy people.',
    negative: 'Pulse stays, no symptoms: normal.',
  },
  stress: {
    stoppedEarly: (time, of, why) =>
      `Stopped at ${time} of ${of} for ${why}: the test brings on the symptoms.`,
    symptomsEarly: (time, of, symptoms) =>
      `Stopped at ${time} of ${of} with ${symptoms}: the test brings on the symptoms.`,
    symptoms: (symptoms) => `Completed, with ${symptoms}: the test brings on the symptoms.`,
    fatigueOnly: (time) =>
      `Stopped at ${time} only because the arms were tired: this decides nothing; the test was not completed.`,
    completed: (time) => `${time} completed without symptoms: normal.`,
  },
};
