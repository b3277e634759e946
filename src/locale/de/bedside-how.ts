import type { BedsideTestId } from '../../examination/index.js';
import type { BedsideHow } from '../en/bedside-how.js';

/** How each bedside test is done: and when not to. Sources stand in `bedside/`; cautions are common practice. */
export const bedsideHow: Record<BedsideTestId, BedsideHow> = {
  elevation: {
    name: 'Beinelevation',
    purpose: 'Winkel und Zeit, bei denen der Fuß abblasst (Buerger-Winkel).',
    steps: [
      'Rückenlage, Beine frei, Raum und Füße warm.',
      'Beide Beine gemeinsam an den Fersen gestützt langsam heben; bei 45° 1 bis 2 Minuten halten, dann bis 90°.',
      'Beide Fußsohlen beobachten (bei dunkler Haut mit Streiflicht, dazu die Venen): Winkel und Zeit von Blässe oder kollabierten Venen festhalten.',
    ],
    caution:
      'Kontraindiziert bei ischämischem Ruheschmerz, den das Anheben verstärkt; bei Schmerz sofort senken. Vorsicht bei Hüft- oder Rückenleiden. Kein Lasègue-Test.',
  },
  'colour-return': {
    name: 'Rückkehr der Hautfarbe in Tieflagerung',
    purpose: 'Wie lange die Sohle blass bleibt, wenn die Beine hängen.',
    steps: [
      'Direkt nach der Elevation aufsetzen, beide Füße hängen lassen.',
      'Starten, sobald der Fuß unten ist; stoppen, wenn die Sohle rosig ist.',
    ],
    caution: 'Schwindel beim Aufsetzen: Patienten stützen.',
  },
  'dependent-rubor': {
    name: 'Rötung in Tieflagerung (dependent rubor)',
    purpose: 'Düstere Rötung des Fußes in Tieflagerung.',
    steps: [
      'Beide Füße 2 bis 3 Minuten hängen lassen.',
      'Darauf achten, ob sich von den Zehen her eine düstere Rötung ausbreitet.',
    ],
    caution: 'Entzündete oder venös geschädigte Haut rötet sich ebenfalls, auch in Hochlagerung.',
  },
  'venous-filling': {
    name: 'Venenfüllungszeit',
    purpose: 'Wie schnell sich eine Vene am Fußrücken füllt.',
    steps: [
      'Bein heben, bis die Venen leer sind.',
      'Aufsetzen, Füße hängen lassen; starten.',
      'Stoppen, wenn eine Vene über die Haut tritt.',
    ],
    caution:
      'Schwindel beim Aufsetzen: Patienten stützen. Insuffiziente Venen füllen sich von oben und verkürzen die Zeit.',
  },
  'hand-arch': {
    name: 'Hohlhandbogentest',
    purpose: 'Ob Radialis und Ulnaris die Hand jeweils allein versorgen.',
    steps: [
      'Hand erhoben, Faust 30 s geschlossen; Radialis und Ulnaris am Handgelenk komprimieren.',
      'Hand senken und locker öffnen, Handgelenk nicht überstrecken.',
      'Eine Arterie freigeben und die Zeit messen, bis die Handfläche rosig ist; mit der anderen wiederholen.',
    ],
    caution:
      'Nicht bei Handischämie, liegendem arteriellem Zugang, Wunde oder Shunt am Handgelenk. Ein überstrecktes Handgelenk oder gespreizte Finger verlängern die Zeit. Ein normaler Test allein gibt die Hand nicht für Radialispunktion oder -entnahme frei.',
  },
  'cold-provocation': {
    name: 'Kälteprovokationstest',
    purpose: 'Ob Kälte weiße, blaue und rote Finger auslöst und wie lange sie zum Erwärmen brauchen.',
    steps: [
      'Hand so lange ins Wasser, wie es zum Grenzwert gehört.',
      'Festhalten, wann welche Farbe auftritt.',
      'Zeit messen, bis die Finger wieder warm sind.',
    ],
    caution:
      'Kontraindiziert bei Ulkus, Gangrän, infiziertem Finger, akut ischämischer Hand, Kälteagglutininen, Kryoglobulinämie, Kälteurtikaria oder kälteinduzierter Angina pectoris; bei Schmerz abbrechen.',
  },
  scalene: {
    name: 'Skalenusmanöver',
    purpose: 'Kompression der Subclavia in der Skalenuslücke.',
    steps: [
      'Radialispuls bei hängendem Arm palpieren.',
      'Hals überstreckt, Kinn zur geprüften Seite, tiefe Inspiration halten; 30 s.',
      'Mit abgewandtem Kinn und mit Zug am Arm nach unten wiederholen.',
    ],
    caution:
      'Nicht bei instabilem Hals oder instabiler Schulter, frischer Fraktur, kürzlichem Schlaganfall oder flüchtiger Hirndurchblutungsstörung (Kopfdrehung). Ein Pulsverlust ohne Beschwerden ist kein positiver Test.',
  },
  hyperabduction: {
    name: 'Hyperabduktion',
    purpose: 'Kompression der Axillaris hinter dem M. pectoralis minor in Abduktion.',
    steps: [
      'Radialispuls bei gesenktem Arm palpieren.',
      'Erst bis 90° abduzieren, dann ganz nach oben, Ellenbogen gebeugt; 60 s halten.',
    ],
    caution:
      'Nicht bei instabiler Schulter oder frischer Fraktur. Ein Pulsverlust ohne Beschwerden ist kein positiver Test.',
  },
  costoclavicular: {
    name: 'Kostoklavikular-Manöver',
    purpose: 'Kompression der Subclavia zwischen Klavikula und erster Rippe.',
    steps: [
      'Radialispuls im Sitzen palpieren.',
      'Schultern nach hinten und unten, Brust heraus; 30 s halten.',
    ],
    caution:
      'Nicht bei instabiler Schulter oder frischer Fraktur von Klavikula oder Rippe. Ein Pulsverlust ohne Beschwerden ist kein positiver Test.',
  },
  'arm-stress': {
    name: 'Armbelastungstest in Elevation',
    purpose: 'Ob Arbeit mit erhobenen Armen die Beschwerden auslöst.',
    steps: [
      'Arme abduziert und außenrotiert, Ellenbogen rechtwinklig.',
      'Beide Hände 3 Minuten lang im Takt öffnen und schließen.',
      'Jedes Symptom beim ersten Auftreten markieren.',
    ],
    caution:
      'Nicht bei akuter Extremitätenischämie oder bei Herz- oder Schulterleiden, die es verbieten. Bei Schmerz abbrechen; müde Arme allein sind kein positiver Test.',
  },
};
