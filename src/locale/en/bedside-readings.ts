import { bedsideReadingsFrom, type ReadingsTable } from '../bedside-readings.js';
import { inRegisters } from '../terms.js';
import { plainReadings } from './bedside-readings-plain.js';
import { examination } from './examination.js';
import { sentence, speech } from './phrases.js';

const table: ReadingsTable = {
  symptoms: {
    heaviness: 'heaviness',
    tingling: 'tingling',
    pain: 'pain',
    fatigue: 'tiredness',
  },
  ways: {
    toward: 'head to the side tested',
    away: 'head turned away',
    traction: 'arm drawn down',
  },
  stops: {
    pain: 'pain',
    tingling: 'tingling',
    fatigue: 'tiredness',
    other: 'something else',
  },
  phases: { white: 'white', blue: 'blue', red: 'red' },
  notes: {
    'pallor-within-seconds': 'Pallor within seconds goes with severe disease.',
    'pallor-minutes': 'Pallor after minutes goes with mild disease.',
    'incompetent-veins': 'The veins are incompetent: an early filling says nothing.',
    'rewarming-slow': 'Rewarming is slow.',
    'rewarming-between': 'Rewarming is slower than usual.',
    'rewarming-usual': 'Rewarming takes the usual time.',
    'rewarming-no-limit': 'The rewarming limits belong to ice water for 20 s: no limit for this protocol.',
    'absent-before': 'The pulse was absent before: it cannot be lost.',
    'symptoms-not-asked': 'Symptoms not asked for.',
    'pulse-not-compared': 'Pulse not compared.',
  },
  notDone: (reason) => `Not done: ${reason}.`,
  incomplete: 'Not complete yet.',
  after: (time) => ` after ${time}`,
  held: (time) => ` for ${time}`,
  watchedTooShort: (time, limit) => `Watched for ${time} only; the limit is ${limit}.`,
  elevation: {
    keepsColour: (angle) => `Keeps its colour at ${angle}: normal by this protocol.`,
    notRaisedFully: (angle) =>
      `Keeps its colour at ${angle}; hold it at 60° for 60 s, or raise it to 90°, to call it normal.`,
    paleAt: (angle) => `Pale at ${angle}`,
    belowLimit: (pale, limit) => `${pale}: severe, below ${limit}.`,
    inRange: (pale, limit) =>
      `${pale}: an ischaemic leg pales between 15° and 30°; below ${limit} is severe.`,
    high: (pale, limit) => `${pale}: a normal leg keeps its colour; below ${limit} is severe.`,
  },
  colourReturn: {
    usual: (time) => `Pink after ${time}: usual is about 10 s.`,
    'slower-than-usual': (time, limit) => `Pink after ${time}: slower than usual, within ${limit}.`,
    prolonged: (time, limit) => `Pink after ${time}: prolonged, limit ${limit}.`,
    severe: (time, limit) => `Pink after ${time}: severe, beyond ${limit}.`,
    'not-returned': (time, limit) => `Still pale after ${time}: prolonged, limit ${limit}.`,
  },
  venousFilling: {
    usual: (time) => `Vein full after ${time}: usual is about 15 s.`,
    'slower-than-usual': (time, limit) => `Vein full after ${time}: slower than usual, within ${limit}.`,
    prolonged: (time, limit) => `Vein full after ${time}: prolonged, beyond ${limit}.`,
    severe: (time, limit) => `Vein full after ${time}: severe, beyond ${limit}.`,
    'not-filled': (time, limit) => `Vein still empty after ${time}: prolonged, beyond ${limit}.`,
    unreliable: (time) => `Vein full after ${time}: says nothing with incompetent veins.`,
  },
  rubor: {
    seen: (after) => `Dusky red${after}: goes with arterial disease.`,
    none: (time) => `No redness in ${time}`,
    noneSoFar: 'No redness so far',
    letHang: (none, limit) => `${none}; let it hang for ${limit}.`,
  },
  hand: {
    artery: (artery) => artery,
    released: {
      'not-yet': (artery) => `${artery} not yet let go`,
      blocked: (artery) =>
        `${artery} let go: palm stays white, so the ${artery} artery or the arch may be blocked`,
      incomplete: (artery) => `${artery}: watched too short`,
      patent: (artery, after) => `${artery} let go: pink${after}`,
      slow: (artery, after) => `${artery} let go: pink${after}`,
    },
    limit: (limit) => `Limit ${limit}.`,
    slow: (arteries) => `Slow. ${arteries}`,
    tracingLost: (pressed) =>
      `Tracing lost for two minutes (class D) while the ${pressed} artery is pressed: the other may not feed the hand alone.`,
    tracingKept: 'Tracing kept or back within two minutes: the other artery feeds the hand.',
  },
  cold: {
    threePhases: 'White, blue and red in turn: a full attack.',
    twoPhases: 'White and blue: enough for an attack.',
    only: (phases) => `Only ${phases}: white and blue are the least that counts.`,
    slow: (minutes, limit) => `Warm again after ${minutes} min: slow, beyond ${limit} min.`,
    noChange: 'No change of colour.',
    warm: (minutes) => `Warm again after ${minutes} min.`,
  },
  position: {
    pulse: { lost: 'lost', reduced: 'weaker' },
    both: (pulse, symptoms) => `Pulse ${pulse}, with ${symptoms}: positive.`,
    symptoms: (symptoms) => `${sentence(symptoms)} brought on: positive.`,
    lost: 'Pulse lost without symptoms: common in healthy people.',
    reduced: 'Pulse weaker without symptoms: common in healthy people.',
    negative: 'Pulse kept, no symptoms: negative.',
    inWays: (ways, found) => `${ways}: ${found.charAt(0).toLowerCase()}${found.slice(1)}`,
  },
  stress: {
    stoppedEarly: (time, of, why) => `Stopped at ${time} of ${of} for ${why}: positive.`,
    symptomsEarly: (time, of, symptoms) => `Stopped at ${time} of ${of} with ${symptoms}: positive.`,
    symptoms: (symptoms) => `Completed, with ${symptoms}: positive.`,
    fatigueOnly: (time) => `Stopped at ${time} by fatigue alone: indeterminate; the test was not completed.`,
    tooShort: (time, of) => `Stopped at ${time} of ${of} without a symptom: says nothing.`,
    completed: (time) => `${time} completed without symptoms: negative.`,
  },
};

export const readings = bedsideReadingsFrom(inRegisters(table, plainReadings), { examination, speech });
