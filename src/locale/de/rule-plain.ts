import type { RuleTable } from '../rule.js';
import type { Otherwise } from '../terms.js';
import { anatomy } from './anatomy.js';
import { toward } from './spots.js';

/** What the pulses alone say, for a reader who is no clinician. */
export const plainRule: Otherwise<RuleTable> = {
  heading: 'Was die Pulse allein sagen',
  felt: {
    absent: 'nicht zu tasten',
    reduced: 'schwach zu tasten',
    normal: 'zu tasten',
    bounding: 'auffallend kräftig',
  },
  kinds: { block: 'Verschluss', narrowing: 'Engstelle' },
  beyond: {
    weakly: (place) => `, dahinter ist der Puls schwach zu tasten: ${anatomy.place(place)}`,
    'in-full': (place) => `, denn dahinter ist der Puls voll zu tasten: ${anatomy.place(place)}`,
  },
  fromHeart: (to) =>
    `Näher am Herzen ist kein Puls zu tasten: Der Abschnitt reicht vom Herzen bis ${toward(to)}.`,
  noPulseAnywhere:
    'An keiner geprüften Stelle ist ein Puls zu tasten: Zuerst geht es um den ganzen Kreislauf',
  reducedEverywhere:
    'Jeder Puls ist schwach: Ein schwacher Kreislauf oder Kälte erklärt das eher als viele Engstellen',
  allFelt: (pulses) => `Alle ${pulses} Pulse zu tasten, keiner schwach: kein Verschluss erkennbar`,
  limbFelt: (limb) => `${limb}: alle Pulse zu tasten, keiner schwach`,
  limbFeltTo: (limb, to, ungraded) =>
    `${limb}: zu tasten bis ${toward(to)}; ${ungraded} ${ungraded === 1 ? 'Stelle' : 'Stellen'} nicht geprüft`,
  limbUngraded: (limb) => `${limb}: kein Puls geprüft`,
  aortaOnly: 'Bauchschlagader zu tasten, darunter nichts geprüft',
  notExcluded: 'Auch wenn ein Puls zu tasten ist, kann eine Gefäßerkrankung vorliegen',
  missing: {
    'dorsalis-pedis': 'Bei manchen Gesunden ist auf dem Fußrücken kein Puls zu tasten.',
    'posterior-tibial': 'Bei wenigen Gesunden ist am Innenknöchel kein Puls zu tasten.',
  },
  outOfReach: 'Eine nicht zu tastende Bauchschlagader sagt für sich allein wenig.',
  contradiction: (stronger, weaker) =>
    `${anatomy.place(stronger)} ist kräftiger tastbar als ${anatomy.place(weaker)} darüber: Vielleicht ist einer falsch beurteilt, oder Umgehungsgefäße füllen den unteren. Beide noch einmal tasten.`,
};
