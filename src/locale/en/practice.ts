import type { PracticeWords } from '../practice.js';
import { anatomy } from './anatomy.js';
import { bedsideHow } from './bedside-how.js';
import { percent } from './phrases.js';

const clock = (minutes: number, seconds: number): string => `${minutes}:${String(seconds).padStart(2, '0')}`;

const cuffs = {
  arm: 'upper arm',
  wrist: 'wrist and finger',
  ankle: 'ankle, both arteries',
  toe: 'great toe',
  thigh: 'thigh and calf',
};

export const practice: PracticeWords = {
  title: 'Practice',
  patient: (code) => `Patient ${code}`,
  invented: 'Invented and simulated. For practice only: nothing here is advice about a real person.',
  wristSignal:
    'The simulated hand is warm and at rest: a monophasic signal at the wrist is usual there, and by itself no sign of disease.',
  brief: (age, complaint, side) => {
    const of = side ? `${side} ` : '';
    const story = {
      'leg-sudden': side
        ? `The ${of}leg became painful and cold today.`
        : 'Both legs became painful and cold today.',
      'arm-sudden': side
        ? `The ${of}arm became painful and cold today.`
        : 'Both arms became painful and cold today.',
      'foot-wound': `A sore on ${side ? `the ${of}foot` : 'both feet'} has not healed for weeks.`,
      'night-pain': `Pain in ${side ? `the ${of}foot` : 'both feet'} at night; it eases when the leg hangs out of bed.`,
      'leg-walking': `Pain in ${side ? `the ${of}leg` : 'both legs'} on walking.`,
      'arm-tires': `${side ? `The ${of}arm tires` : 'Both arms tire'} with work.`,
      faint: 'Faint, weak, and cold to the touch.',
      'cold-limbs': 'Hands and feet are often cold and change colour.',
      'high-pressure': 'High blood pressure in someone young.',
      check: 'Here for a check of the arteries, with no complaint of the limbs.',
    }[complaint];
    return `Age ${age}. ${story}`;
  },
  choose: 'Choose a patient',
  number: 'Number, 1 to 9999, or a code',
  unknownNumber: 'There is no such patient. Type a number from 1 to 9999, or a code such as hard-12.',
  difficulty: 'Difficulty',
  difficulties: {
    clear: 'Clear: one limb, a sure hand',
    usual: 'Usual: your hand may err',
    hard: 'Hard: anything',
  },
  level: 'Level to practise',
  anyLevel: 'Any',
  begin: 'Begin',
  another: 'Any patient',
  act: (act) => {
    switch (act.kind) {
      case 'ask':
        return {
          onset: 'Ask how and when it began',
          walking: 'Ask about pain, walking and wounds',
          background: 'Ask about risks, habits and operations',
        }[act.about];
      case 'rhythm':
        return 'Count the pulse for a minute';
      case 'circulation':
        return 'Blood pressure and heart rate';
      case 'exercise':
        return 'Walk, then ankle pressures again';
      case 'look':
        return `Look at and touch the ${act.limb.side} ${act.limb.kind}`;
      case 'feeling':
        return `Test feeling and movement of the ${act.limb.side} ${act.limb.kind}`;
      case 'feel':
        return `Feel the ${anatomy.place(act.place)}`;
      case 'listen':
        return `Listen over the ${anatomy.place(act.place)}`;
      case 'doppler':
        return `Doppler on the ${anatomy.place(act.place)}`;
      case 'vertebral':
        return `Doppler on the ${act.side} vertebral artery`;
      case 'delay':
        return act.of === 'radio-radial' ? 'Feel both radials together' : 'Feel radial and femorals together';
      case 'cuff':
        return `Cuff, ${act.side} ${cuffs[act.cuff]}`;
      case 'test':
        return `${bedsideHow[act.test].name}, ${act.side}`;
    }
  },
  groups: {
    ask: 'Ask',
    look: 'Look and touch',
    hand: 'Count and compare',
    pressures: 'Pressures',
    tests: 'Timed tests and positions',
  },
  tools: 'What a touch on the map does',
  tool: { feel: 'Feel', listen: 'Listen', doppler: 'Doppler' },
  views: 'Part shown',
  view: { whole: 'Whole', arms: 'Arms', legs: 'Legs' },
  time: clock,
  bedside: 'Time at the bedside',
  takes: 'takes',
  acts: 'What else you can do',
  touch:
    'Touch a site on the map, or choose below. Everything takes time, and what you know you cannot forget.',
  found: 'Found so far',
  nothingFound: 'Nothing is recorded here of this patient; that is not the same as normal.',
  nothingYet: 'Nothing examined yet.',
  hereToo: 'Here too',
  close: 'Close',
  nameIt: 'Name it',
  back: 'Back to the patient',
  where: 'Where is the disease? One or more',
  noDisease: 'No arterial disease of arms or legs',
  cause: 'Cause',
  causes: {
    atherosclerosis: 'Atherosclerosis',
    thrombosis: 'Thrombosis in place',
    embolism: 'Embolism',
    aneurysm: 'Aneurysm',
    dissection: 'Dissection',
    entrapment: 'Pressed from outside (outlet, entrapment)',
    injury: 'Injury or catheter',
    'small-artery': 'Small arteries (Buerger)',
    'large-vessel': 'Large-vessel vasculitis',
    coarctation: 'Coarctation of the aorta',
    'low-flow': 'Low flow of the whole body',
    cold: 'Cold or spasm',
    none: 'None of the arteries',
  },
  stage: 'Stage of the worst limb',
  acuteStage: 'Acute',
  urgency: 'How urgent',
  urgencies: { none: 'Not urgent', soon: 'Within days', today: 'The same day', now: 'At once' },
  first: 'What first',
  firsts: {
    'call-now': 'Call the vascular or emergency team at once',
    circulation: 'Treat the circulation first',
    'same-day': 'Have a specialist see it the same day',
    refer: 'Refer within days',
    'risk-and-walking': 'Risk factors and walking exercise',
    'look-elsewhere': 'Look for a cause outside the arteries',
    'imaging-first': 'Arrange a scan, then decide whom to call',
    compress: 'Compression stockings',
    'raise-and-warm': 'Raise and warm the limb',
  },
  once: 'You answer once. After that nothing more can be examined.',
  show: 'Show the truth',
  sheet: 'Mark sheet',
  points: (points, of) => `${points} of ${of}`,
  parts: {
    side: 'Side',
    level: 'Level',
    cause: 'Cause',
    stage: 'Stage',
    urgency: 'Urgency',
    first: 'First step',
    thrift: 'Within 20 minutes',
  },
  ungrounded: 'not examined, so not counted',
  openPart: (of) => `open, of ${of}`,
  causesFit: (own) =>
    `The findings do not tell these causes apart, so each counts as right. Here it was: ${own}.`,
  causeUntold: 'The author of this patient names no cause, so yours is not marked.',
  taken: (points) => `${points} taken for missed red flags and ignored cautions`,
  truth: 'Truth',
  yours: 'Your answer',
  unanswered: 'not answered',
  silent: 'There too, though nothing at the bedside shows it',
  or: 'or',
  flags: 'Red flags',
  flag: 'Red flag',
  flagMissed: 'Missed',
  flagFound: 'Found',
  noFlags: 'This patient has none.',
  cautions: 'Cautions ignored',
  noCautions: 'None ignored.',
  caution: (code, act, minutes, seconds) =>
    ({
      cuff: `${act}: something stood against a cuff there.`,
      raised: `${act}: a limb that starves for blood is not raised.`,
      walked: `${act}: no walk with pain at rest, a wound or an acute limb.`,
      'late-call': `The findings called for help at ${clock(minutes, seconds)}; the examination went on.`,
      first: `${act}: it may harm here.`,
    })[code],
  told: 'What told most',
  noneTold: 'Nothing you did told where it lies.',
  toldNothing: 'Told nothing of where it lies',
  allTold: 'All that you did told something of it.',
  undone: 'Not done, and would have told most',
  noneUndone: 'No further act was expected to tell more.',
  undoneUnknown:
    'From your findings nothing can be expected: they contradict each other, or say nothing of an artery.',
  nothingDone: 'Nothing was examined.',
  rule: 'What the bedside rule says of your findings',
  ruleNothing: 'The rule needs a pulse.',
  expected: 'What was there',
  done: 'What you did',
  erred: 'your hand erred',
  print: 'Print',
  again: 'The same patient again',
  next: 'Next patient',
  present: 'Present your findings',
  presentHow:
    'Say or type your summary, side and site by side and site. Pulses and bruits are held against the truth.',
  check: 'Check',
  verdicts: {
    right: 'Right',
    wrong: 'Wrong',
    claimed: 'Claimed without examining',
    missed: 'Found and not said',
  },
  unread: 'Not understood',
  vote: 'Vote of the room',
  voteOn: 'Question',
  voteHow: (choices) => `Hands for the ${choices} choices, in their order, in one line: 12 3 0`,
  voteWrong: 'Type whole numbers with spaces between them, no more than there are choices.',
  count: 'Count',
  hands: 'hands',
  voteHidden: 'The right choice is marked once the answer is given.',
  progress: 'Your patients so far',
  trend: (last, share, before, shareBefore) =>
    last === 1
      ? `The one patient brought ${percent(share)} of the points.`
      : `The last ${last} patients brought ${percent(share)} of the points${before ? `, the ${before === 1 ? 'one' : before} before them ${percent(shareBefore)}` : ''}.`,
  byLevel: 'By level',
  rightOf: (right, tried) => `${right} of ${tried} right`,
  noLevelNamed: 'No level was named yet.',
  keyRight: 'right',
  keyWrong: 'not right',
  oldestFirst: (leftOut) => `oldest on the left${leftOut ? `; ${leftOut} earlier not drawn` : ''}`,
  byPart: 'By part of the answer',
  latest: 'The latest',
  keptHere: 'Kept in this browser on this machine, nowhere else.',
  keptNowhere: 'Kept nowhere: gone when this page is closed.',
  forgotten: (count) => `${count === 1 ? '1 patient' : `${count} patients`} forgotten.`,
  bringBack: 'Bring back',
  download: 'Download as CSV',
  forget: 'Forget all',
  examiner: 'Examiner’s sheet',
  candidateDoes: 'The candidate',
  examinerHow: 'It tells the truth: not for the candidate. Tick what the candidate does and finds.',
  mark: 'Mark',
  loading: 'The patient is being made.',
  failed: 'The patient could not be made. Load the page again.',
  notAdvice: 'Local pathways and a licensed clinician decide about real people.',
};
