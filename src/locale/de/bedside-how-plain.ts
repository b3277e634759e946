import type { BedsideTestId } from '../../examination/index.js';
import type { BedsideHow } from '../en/bedside-how.js';
import type { Otherwise } from '../terms.js';

/** How each test is done, for the person it is done with. */
export const plainHow: Otherwise<Record<BedsideTestId, BedsideHow>> = {
  elevation: {
    name: 'Beine heben',
    purpose: 'Wie hoch sich das Bein heben lässt, bis der Fuß blass wird, und nach welcher Zeit.',
    steps: [
      'Sie liegen auf dem Rücken, Beine frei, Raum und Füße warm.',
      'Beide Beine werden gemeinsam an den Fersen gehalten und langsam gehoben: 1 bis 2 Minuten bei 45°, dann bis 90°.',
      'Beide Fußsohlen werden beobachtet. Höhe und Zeit werden festgehalten, wenn eine blass wird oder ihre Venen leer sind.',
    ],
    caution:
      'Nicht, wenn das Heben einen Schmerz verstärkt, der schon in Ruhe da ist; bei Schmerz sofort senken. Sagen Sie, wenn Hüfte oder Rücken Beschwerden machen.',
  },
  'colour-return': {
    name: 'Wie schnell die Farbe zurückkommt',
    purpose: 'Wie lange die Sohle blass bleibt, wenn die Beine hängen.',
    steps: [
      'Gleich nach dem Heben setzen Sie sich auf und lassen beide Füße hängen.',
      'Die Zeit läuft, sobald der Fuß unten ist, bis die Sohle rosig ist.',
    ],
    caution: 'Beim Aufsetzen kann Ihnen schwindlig werden: Jemand sollte Sie stützen.',
  },
  'dependent-rubor': {
    name: 'Rötung des hängenden Fußes',
    purpose: 'Ob der hängende Fuß düster rot wird.',
    steps: [
      'Beide Füße hängen 2 bis 3 Minuten.',
      'Es wird festgehalten, ob sich von den Zehen her eine düstere Rötung ausbreitet.',
    ],
    caution: 'Entzündete Haut und Haut bei Venenleiden rötet sich ebenfalls, auch hochgelagert.',
  },
  'venous-filling': {
    name: 'Wie schnell sich die Venen füllen',
    purpose: 'Wie schnell sich eine Vene auf dem Fußrücken füllt.',
    steps: [
      'Das Bein wird gehoben, bis die Venen leer sind.',
      'Sie setzen sich auf und lassen die Füße hängen; die Zeit läuft.',
      'Sie endet, wenn eine Vene über die Haut tritt.',
    ],
    caution:
      'Beim Aufsetzen kann Ihnen schwindlig werden: Jemand sollte Sie stützen. Undichte Venen füllen sich von oben und verkürzen die Zeit.',
  },
  'hand-arch': {
    name: 'Durchblutung der Hand',
    purpose: 'Ob jede der beiden Schlagadern am Handgelenk die Hand allein versorgen kann.',
    steps: [
      'Sie heben die Hand und machen 30 s lang eine Faust; beide Schlagadern werden am Handgelenk abgedrückt.',
      'Sie senken die Hand und öffnen sie locker, ohne das Handgelenk zu überstrecken.',
      'Eine Schlagader wird losgelassen und die Zeit gemessen, bis die Handfläche rosig ist; dann dasselbe mit der anderen.',
    ],
    caution:
      'Nicht bei schlecht durchbluteter Hand, einem Zugang in der Schlagader, einer Wunde oder einem Dialysezugang am Handgelenk. Ein überstrecktes Handgelenk oder gespreizte Finger verlängern die Zeit. Ein normaler Test allein heißt nicht, dass eine Schlagader am Handgelenk benutzt oder entnommen werden darf.',
  },
  'cold-provocation': {
    name: 'Kältetest der Finger',
    purpose: 'Ob Kälte die Finger weiß, blau und rot macht und wie lange sie zum Erwärmen brauchen.',
    steps: [
      'Die Hand kommt so lange ins kalte Wasser, wie es zum Grenzwert gehört.',
      'Es wird festgehalten, wann welche Farbe auftritt.',
      'Die Zeit wird gemessen, bis die Finger wieder warm sind.',
    ],
    caution:
      'Nicht bei offener Wunde, abgestorbenem Gewebe, infiziertem Finger, plötzlich schlecht durchbluteter Hand, einer Blutkrankheit oder einem Hautausschlag durch Kälte oder Brustschmerz in der Kälte; bei Schmerz abbrechen.',
  },
  scalene: {
    name: 'Kopf drehen',
    purpose: 'Ob Muskeln an der Seite des Halses auf die Schlagader zum Arm drücken.',
    steps: [
      'Der Puls am Handgelenk wird bei hängendem Arm getastet.',
      'Hals nach hinten gestreckt, Kinn zur geprüften Seite, tief einatmen und halten; 30 s.',
      'Dasselbe mit abgewandtem Kinn und mit Zug am Arm nach unten.',
    ],
    caution:
      'Nicht bei instabilem Hals oder instabiler Schulter, frischem Knochenbruch, kürzlichem Schlaganfall oder kurzem Schlaganfall (der Kopf wird gedreht). Verschwindet der Puls ohne Beschwerden, ist der Test nicht auffällig.',
  },
  hyperabduction: {
    name: 'Arm heben',
    purpose: 'Ob der kleine Brustmuskel bei erhobenem Arm auf die Achselarterie drückt.',
    steps: [
      'Der Puls am Handgelenk wird bei gesenktem Arm getastet.',
      'Der Arm wird seitlich erst bis 90° gehoben, dann ganz nach oben, Ellenbogen gebeugt; 60 s halten.',
    ],
    caution:
      'Nicht bei instabiler Schulter oder frischem Knochenbruch. Verschwindet der Puls ohne Beschwerden, ist der Test nicht auffällig.',
  },
  costoclavicular: {
    name: 'Schultern zurück',
    purpose: 'Ob Schlüsselbein und erste Rippe auf die Schlagader zum Arm drücken.',
    steps: [
      'Der Puls am Handgelenk wird im Sitzen getastet.',
      'Schultern nach hinten und unten, Brust heraus; 30 s halten.',
    ],
    caution:
      'Nicht bei instabiler Schulter oder frisch gebrochenem Schlüsselbein oder gebrochener Rippe. Verschwindet der Puls ohne Beschwerden, ist der Test nicht auffällig.',
  },
  'arm-stress': {
    name: 'Arbeit mit erhobenen Armen',
    purpose: 'Ob Arbeit mit erhobenen Armen die Beschwerden auslöst.',
    steps: [
      'Arme zur Seite und nach außen gedreht, Ellenbogen rechtwinklig.',
      'Sie öffnen und schließen beide Hände 3 Minuten lang im Takt.',
      'Jede Beschwerde wird beim ersten Auftreten markiert.',
    ],
    caution:
      'Nicht bei plötzlich schlecht durchblutetem Arm oder wenn Herz oder Schulter es nicht erlauben. Bei Schmerz abbrechen; müde Arme allein machen den Test nicht auffällig.',
  },
};
