import type { BedsideTestId } from '../../examination/index.js';
import type { BedsideHow } from '../en/bedside-how.js';

const COMMON = 'Ein verschwindender Puls ist bei Gesunden häufig.';

/** How each bedside test is done: textbook knowledge, own words. */
export const bedsideHow: Record<BedsideTestId, BedsideHow> = {
  elevation: {
    name: 'Anheben des Beins',
    purpose: 'In welcher Höhe der Fuß blass wird, und wie bald.',
    steps: [
      'Patient flach auf dem Rücken, Beine frei und warm.',
      'Das gestreckte Bein an der Ferse langsam bis 90° heben.',
      'Die Sohle beobachten; Winkel und Zeit festhalten, wenn sie blass wird.',
    ],
    caution: 'Nicht bei Ruheschmerz, den das gehobene Bein verschlimmert; bei Schmerz sofort wieder ablegen.',
  },
  'colour-return': {
    name: 'Rückkehr der Farbe',
    purpose: 'Wie lange die Sohle blass bleibt, wenn das Bein hängt.',
    steps: [
      'Nach dem Anheben aufsetzen lassen, die Füße hängen.',
      'Start, sobald der Fuß unten ist; Stopp, wenn die Sohle rosig ist.',
    ],
    caution: 'Auf Schwindel beim Aufsetzen achten.',
  },
  'dependent-rubor': {
    name: 'Rötung beim Hängen',
    purpose: 'Ob der hängende Fuß düster rot wird.',
    steps: [
      'Die Füße zwei bis drei Minuten hängen lassen.',
      'Festhalten, ob sich von den Zehen her eine düstere Röte ausbreitet.',
    ],
    caution: 'Auch Entzündung und Venenleiden röten einen Fuß, und das auch, wenn er hochliegt.',
  },
  'venous-filling': {
    name: 'Venenfüllung',
    purpose: 'Wie bald sich eine Vene auf dem Fußrücken füllt.',
    steps: [
      'Das Bein heben, bis die Venen leer sind.',
      'Aufsetzen lassen, die Füße hängen; Start.',
      'Stopp, wenn eine Vene über der Haut steht.',
    ],
    caution: 'Krampfadern füllen sich von oben und verkürzen die Zeit.',
  },
  'hand-arch': {
    name: 'Durchgängigkeit des Hohlhandbogens',
    purpose: 'Ob jede Arterie des Handgelenks die Hand allein versorgen kann.',
    steps: [
      'Eine halbe Minute Faust, beide Arterien am Handgelenk abgedrückt.',
      'Hand öffnen, locker, das Handgelenk nicht überstreckt.',
      'Eine Arterie freigeben und die Zeit nehmen, bis die Handfläche rosig ist; mit der anderen wiederholen.',
    ],
    caution:
      'Ein überstrecktes Handgelenk oder weit gespreizte Finger lassen eine gesunde Hand langsam erscheinen.',
  },
  'cold-provocation': {
    name: 'Kälteprovokation',
    purpose: 'Ob Kälte weiße, blaue und rote Finger auslöst, und wie lange sie zum Erwärmen brauchen.',
    steps: [
      'Die Hand eine Minute in kühles Wasser.',
      'Festhalten, wann jede Farbe erscheint.',
      'Die Zeit nehmen, bis die Finger wieder warm sind.',
    ],
    caution: 'Nicht bei Ulzera, Gangrän oder akuter Ischämie der Hand; bei Schmerz abbrechen.',
  },
  scalene: {
    name: 'Skalenusmanöver',
    purpose: 'Ob die Halsmuskeln auf die Armarterie drücken.',
    steps: [
      'Den Radialispuls am hängenden Arm tasten.',
      'Hals gestreckt, Kopf zur getesteten Seite gedreht, tief eingeatmet die Luft anhalten.',
      'Mit abgewandtem Kopf wiederholen, und mit herabgezogenem Arm.',
    ],
    caution: `Nicht bei instabiler Halswirbelsäule. ${COMMON}`,
  },
  hyperabduction: {
    name: 'Hyperabduktion',
    purpose: 'Ob der kleine Brustmuskel bei erhobenem Arm auf die Arterie drückt.',
    steps: [
      'Den Radialispuls am gesenkten Arm tasten.',
      'Den Arm seitlich bis ganz nach oben führen, Ellenbogen gebeugt; eine Minute halten.',
    ],
    caution: `Nicht bei einer Schulter, die luxiert. ${COMMON}`,
  },
  costoclavicular: {
    name: 'Kostoklavikuläres Manöver',
    purpose: 'Ob Schlüsselbein und erste Rippe auf die Arterie drücken.',
    steps: [
      'Den Radialispuls im Sitzen tasten.',
      'Schultern nach hinten unten, Brust heraus; eine halbe Minute halten.',
    ],
    caution: COMMON,
  },
  'arm-stress': {
    name: 'Drei-Minuten-Armtest',
    purpose: 'Ob Arbeiten mit erhobenen Armen die Beschwerden auslöst.',
    steps: [
      'Arme seitlich angehoben, Ellenbogen rechtwinklig gebeugt.',
      'Drei Minuten lang beide Hände im Takt öffnen und schließen.',
      'Jede Beschwerde festhalten, wenn sie zum ersten Mal auftritt.',
    ],
    caution: 'Bei Schmerz abbrechen. Müde Arme allein sind normal.',
  },
};
