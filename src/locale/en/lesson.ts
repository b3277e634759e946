import type { BedsideTestId } from '../../examination/index.js';
import { type LessonWords, type Meaning, usualLimit } from '../lesson.js';
import { anatomy } from './anatomy.js';
import { bedsideHow } from './bedside-how.js';
import { sentence } from './phrases.js';

/** What else an absent or weak pulse means at some sites. Common practice, no source. */
const AT_SITE: Readonly<Record<string, string>> = {
  'dorsalis-pedis': 'Absent from birth in some healthy people: look at the posterior tibial too.',
  'posterior-tibial': 'Swelling hides it. Rarely absent in health.',
  popliteal: 'Hard to feel even in health: try both hands before you call it absent.',
  'abdominal-aorta': 'Not felt in a large abdomen: that is no sign of disease.',
  radial: 'Absent on one side: look at the ulnar and the brachial.',
};

const pulses: readonly Meaning[] = [
  { name: 'Normal', says: 'easy to find, even, alike on both sides' },
  {
    name: 'Reduced',
    says: 'there, but weaker than the other side: stenosis above, or collaterals',
  },
];
const bruits: readonly Meaning[] = [
  { name: 'No bruit', says: 'normal, or no flow at all' },
  { name: 'Systolic', says: 'stenosis here or just above' },
  { name: 'Continuous', says: 'tight stenosis, or a fistula' },
];

/** Of tests; figures are their usual limits. */
const tests: Readonly<Partial<Record<BedsideTestId, readonly [normal: string, abnormal: string]>>> = {
  elevation: [
    'the sole keeps its colour up to 90°',
    `pallor; below ${usualLimit('elevation')}° the ischaemia is severe`,
  ],
  'colour-return': [`pink again within ${usualLimit('colour-return')} s`, 'later: the longer, the worse'],
  'dependent-rubor': ['colour unchanged', 'dusky red: chronic ischaemia'],
  'venous-filling': [`veins full within ${usualLimit('venous-filling')} s`, 'later: arterial inflow is poor'],
  'hand-arch': [
    `palm pink within ${usualLimit('hand-arch')} s of each artery alone`,
    'white beyond that: this artery does not supply the hand alone',
  ],
  'cold-provocation': ['no change of colour', 'white, blue, then red: vasospasm'],
};

const how = {
  history: 'Ask where it hurts, after which distance, how soon it settles at rest, and how it began.',
  inspection:
    'Both limbs bare and level, in good light: colour, warmth, hair, nails, veins, wounds, between the toes.',
  delays: 'Feel two pulses at the same time: both radials, then a radial with each femoral.',
  listen: 'Stethoscope lightly over the artery, both sides, the patient holding their breath. ',
  pressures:
    'Lying for ten minutes, cuff above the ankle, Doppler probe at 60°: arms first, then both arteries of each ankle.',
  conclusion: 'Name the side, the level and the cause; say how urgent it is and what comes first.',
};

export const lesson: LessonWords = {
  title: 'Lesson',
  slides: 'Slides of the lesson',
  step: (number, of) => `Step ${number} of ${of}`,
  patient: 'The patient is invented',
  real: 'A record without name, dates and notes',
  minutes: (count) => `About ${count} minutes`,
  act: (act) => {
    if (act.kind === 'pulse') return `Feel the ${anatomy.place(act.place)}`;
    if (act.kind === 'listen') return `Listen: ${anatomy.sites[act.site]}`;
    if (act.kind === 'test') return bedsideHow[act.test].name;
    return {
      history: 'History',
      inspection: 'Look and touch',
      delays: 'Compare in time',
      pressures: 'Pressures',
      conclusion: 'Conclusion',
    }[act.kind];
  },
  how: (act) => {
    if (act.kind === 'pulse') return sentence(anatomy.technique[act.place.site]);
    if (act.kind === 'listen') return how.listen + anatomy.technique[act.site];
    return act.kind === 'test' ? bedsideHow[act.test].steps.join(' ') : how[act.kind];
  },
  meanings: (act) => {
    if (act.kind === 'pulse')
      return [
        ...pulses,
        {
          name: 'Absent',
          says: AT_SITE[act.place.site] ?? 'occlusion here or above; feel again',
        },
      ];
    if (act.kind === 'listen') return bruits;
    if (act.kind === 'test') {
      const [normal, abnormal] = tests[act.test] ?? [
        'pulse unchanged, nothing felt',
        'pulse lost together with the symptoms; lost alone it means little',
      ];
      return [
        { name: 'Normal', says: normal },
        { name: 'Abnormal', says: abnormal },
      ];
    }
    if (act.kind === 'pressures')
      return [
        { name: 'Ankle to arm 1.00 to 1.40', says: 'normal' },
        { name: '0.90 or less', says: 'arterial disease' },
        { name: 'Above 1.40', says: 'arteries too stiff for the cuff: take the toe' },
      ];
    if (act.kind === 'delays')
      return [
        { name: 'Together', says: 'normal' },
        { name: 'Late', says: 'narrowing on the way to the later pulse' },
      ];
    return [];
  },
  cautions: {
    inspection:
      'Cold, pale, painful, numb or weak within hours: call the vascular team by your acute-limb pathway first.',
    pulse: 'A pulse that pushes your fingers apart is expansile: stop pressing and think of an aneurysm.',
    pressures: 'No cuff over a graft, a deep vein thrombosis or an open wound.',
    conclusion: 'A felt pulse does not exclude disease. Your local pathway decides what happens next.',
    carotid: 'Never both sides at once; listen before you press.',
    elevation: bedsideHow.elevation.caution,
    'colour-return': bedsideHow['colour-return'].caution,
    'hand-arch': bedsideHow['hand-arch'].caution,
  },
  question: 'Question',
  finding: 'Finding',
  hidden: 'Not revealed yet',
  nothing: 'Not examined in this patient; that is not the same as normal.',
  reading: 'So far',
  nothingYet: 'The findings so far name no occlusion.',
  answer: 'Answer',
  agrees: (limb) => `${sentence(anatomy.limbs[limb])}: the reading of all findings agrees.`,
  differs: (limb) => `${sentence(anatomy.limbs[limb])}: the reading of all findings concludes otherwise.`,
  caution: 'Caution',
  sequence: 'The sequence',
  goTo: 'Go to a step by its name',
  black: 'The screen is black.',
  running: 'Running',
  left: (minutes) => (minutes < 0 ? `${-minutes} min over` : `${minutes} min left`),
  time: 'Time',
  onScreen: 'On the screen',
  upNext: 'Next',
  end: 'End of the lesson',
  notes: 'Notes',
  noNotes: 'No notes for this step.',
  next: 'Next',
  back: 'Back',
  reveal: 'Reveal',
  hide: 'Hide',
  overview: 'Overview',
  blackScreen: 'Black',
  spotlight: 'Spotlight',
  ink: 'Ink',
  wipe: 'Wipe',
  fullScreen: 'Full screen',
  fullRefused: 'The browser did not fill the screen. Its own menu may have a command for that.',
  restart: 'Restart the clock',
  keys: 'Page Down and Page Up or the arrows step, B or period blackens, O shows the sequence, P the pulse wave, M a map to mark on, H lets a site be heard, R reveals, S the spotlight, I draws, W wipes, F fills the screen, Escape leads back.',
  controls: 'Lesson',
  loading: 'The lesson is being fetched.',
  failed: 'The lesson could not be fetched. Check the connection and load the page again.',
  handOut: {
    title: 'Hand-out',
    notice:
      'The patient and all findings are invented. For teaching; no substitute for your local pathway or the decision of a licensed clinician.',
    real: 'Findings of a record without name, dates and notes. For teaching; no substitute for your local pathway or the decision of a licensed clinician.',
    first: 'Red flags first',
    pulses: 'Feel every pulse, right and left',
    listen: 'Listen along each artery',
  },
  wave: {
    title: 'The pulse wave',
    ofPatient: 'This patient’s pulse, as computed.',
    ofSound:
      'The pulse of a sound person of this age. The patient’s own follows once the conclusion is revealed.',
    ofNobody: 'The pulse of a sound adult: no patient is simulated in this lesson.',
    still: 'It stands still, as your device asks for less motion: wide lines are strong pulses.',
    slower: (times) => (times === 1 ? 'At its own speed.' : `Slowed down ${times} times.`),
    speed: (times) => (times === 1 ? 'Real speed' : `1/${times}`),
    play: 'Run',
    pause: 'Hold',
    rate: 'Heart rate',
    beats: (aMinute) => `${aMinute} a minute`,
    table: 'When the pulse arrives at each site, in milliseconds after the heart',
    site: 'After the heart',
    arrives: (ms) => `${ms} ms`,
    lost: 'no pulse',
    listen: 'Listen with',
    by: { doppler: 'Doppler', bruit: 'Stethoscope' },
    bruits: { systolic: 'bruit', continuous: 'continuous bruit', none: 'no bruit' },
    sounds: 'What the stethoscope hears at each site',
    press: {
      doppler: 'Press a site to hear its Doppler signal.',
      bruit: 'Press a site to hear what the stethoscope hears.',
    },
  },
  marks: {
    name: 'Mark',
    title: 'Marked in the room',
    whose:
      'Mark a pulse or bruit as on any map. It stays apart from the findings of the lesson. Page Down leads back.',
    mirror: 'What is being marked on the screen; it can only be watched here.',
    wipe: 'Wipe all marks',
    loading: 'The map is being fetched.',
    failed: 'The map could not be fetched. Go back, check the connection and try again.',
  },
  sound: {
    doppler: (place) => `Doppler: ${anatomy.place(place)}`,
    bruit: (place) => `Stethoscope: ${anatomy.place(place)}`,
    playing: 'Playing',
  },
};
