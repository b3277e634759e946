import type { LocalisationTable } from '../localisation.js';
import type { Otherwise } from '../terms.js';
import { atLimb } from './anatomy.js';
import { sentence } from './phrases.js';

/** The answers of the belief network, for a reader who is no clinician. Plain names are feminine. */
export const plainLocalisation: Otherwise<LocalisationTable> = {
  causes: {
    none: 'keine Erkrankung der Schlagadern',
    focal: 'eine oder wenige Engstellen',
    diffuse: 'viele verengte Schlagadern',
    distal: 'Erkrankung der kleinen Schlagadern',
    vasculitis: 'Entzündung der großen Schlagadern',
    embolic: 'eingeschwemmtes Gerinnsel',
    injury: 'Verletzung einer Schlagader',
    compression: 'Druck von außen auf eine Schlagader',
    coarctation: 'angeborene Engstelle der Hauptschlagader',
    dissection: 'Einriss in der Wand der Hauptschlagader',
    aneurysm: 'erweiterte Schlagader',
    'low-flow': 'schwacher Kreislauf oder Kälte',
  },
  states: { patent: 'offen', narrowed: 'verengt' },
  between: {
    'radio-radial': 'Verzögerung zwischen den Pulsen beider Handgelenke',
    'radio-femoral': 'Verzögerung vom Handgelenkpuls zum Leistenpuls',
  },
  findings: {
    pulse: (pulse, grade) => `${pulse}: ${grade}`,
    doppler: (at, signal) => `${at}, Strömungsgeräusch aus der Sonde: ${signal}`,
    thrill: (at) => `${at}: Schwirren unter dem Finger`,
    noBruit: (at) => `${at}: kein Rauschen`,
    index: (at, value) => `${at}: Druck im Verhältnis zum Arm ${value}`,
    ankleIndex: (side, value) => `Knöcheldruck ${side} im Verhältnis zum Arm: ${value}`,
    toeIndex: (side, value) => `Zehendruck ${side} im Verhältnis zum Arm: ${value}`,
    fingerIndex: (side, value) => `Fingerdruck ${side} im Verhältnis zum Arm: ${value}`,
    incompressible: (at) => `${at}: Schlagader zu hart zum Messen`,
    falls: (side) => `Knöcheldruck fällt nach dem Gehen, ${side}`,
    noFall: (side) => `Knöcheldruck fällt nach dem Gehen nicht, ${side}`,
    wound: (limb) => `Offene Wunde oder abgestorbenes Gewebe, ${limb}`,
    numbness: (limb) => `Taubheit über Zehen oder Finger hinaus, ${limb}`,
    flush: (side, artery) =>
      `Test der Handdurchblutung ${side}: Handfläche wird rosig, sobald frei: ${artery}`,
    noFlush: (side, artery) =>
      `Test der Handdurchblutung ${side}: Handfläche bleibt weiß, obwohl frei: ${artery}`,
    noPain: (limb) => `Keine Schmerzen bei Belastung ${atLimb[limb]}`,
    pain: (limb, muscle) => `Schmerzen bei Belastung: ${limb}, ${muscle}`,
    graftPulse: {
      present: (vessel) => `Puls des Bypasses zu tasten: ${vessel}`,
      absent: (vessel) => `Kein Puls des Bypasses: ${vessel}`,
    },
    vertebral: {
      forward: (side) => `Halsschlagader an der Wirbelsäule ${side}: Blut fließt zum Kopf`,
      alternating: (side) => `Halsschlagader an der Wirbelsäule ${side}: Blut fließt hin und her`,
      reversed: (side) => `Halsschlagader an der Wirbelsäule ${side}: Blut fließt zurück in den Arm`,
    },
  },
  acts: {
    listen: (place) => `${place}: abhören`,
    doppler: (place) => `${place}: mit der Sonde auf Blutfluss prüfen`,
    'pain-level': (limb) => `Wo es bei Belastung schmerzt: ${limb}`,
    'arm-pressures': () => 'Blutdruck an beiden Armen',
  },
  whys: {
    listen: 'Ein Rauschen dort würde zeigen, wo die Schlagader verengt ist.',
    doppler: 'Das zeigt, ob und wie dort Blut fließt.',
    'ankle-pressure': 'Das zeigt, wie stark der Druck abfällt.',
    'toe-pressure':
      'Das sagt etwas über den Fuß, wo der Knöchel es nicht tut oder die Schlagadern starr sind.',
    delay: 'Ein Puls, der später kommt, spricht für die Schlagader dazwischen.',
    'pain-level': 'Der höchste Muskel, der schmerzt, weist auf die Schlagader darüber.',
    onset: 'Plötzlich oder allmählich: Das trennt ein eingeschwemmtes Gerinnsel von alter Erkrankung.',
    'arm-pressures':
      'Ein Unterschied spricht für die Schlagader, die den Arm versorgt, auf der Seite mit dem niedrigeren Druck.',
  },
  assumptions: {
    bruit: 'wie oft eine Engstelle zu hören ist',
    doppler: 'was ein Strömungsgeräusch aussagt',
    index: 'was ein Vergleich der Drücke aussagt',
  },
  grades: {
    firm: 'Stabil: So eingestufte Antworten trafen in veröffentlichten Fällen mindestens neunmal von zehn zu.',
    'fairly-firm':
      'Recht stabil: So eingestufte Antworten trafen in veröffentlichten Fällen sieben- bis neunmal von zehn zu.',
    'not-firm':
      'Nicht stabil: So eingestufte Antworten trafen in veröffentlichten Fällen seltener als siebenmal von zehn zu.',
  },
  held: (held, tried) =>
    `Sie bleibt in ${held} von ${tried} Versuchen die erste, in denen alles zugleich verändert wurde, worauf sie beruht.`,
  ungraded: (limb, count) =>
    `${sentence(atLimb[limb])} ${count === 1 ? 'ist noch eine Stelle' : `sind noch ${count} Stellen`} zu prüfen.`,
  allOpen: (cause) => `Wahrscheinlichste Erklärung: Alle Schlagadern sind offen; ${cause}.`,
  story: (lesions, cause) => `Wahrscheinlichste Erklärung: ${lesions}; wahrscheinliche Ursache: ${cause}.`,
  reconstituted: ', verengt oder über Umgehungsgefäße wieder gefüllt',
  open: 'Keine große Schlagader verschlossen',
  wheres: { above: 'weiter oben', beyond: 'weiter unten' },
  notExcluded: {
    'small-arteries': 'eine Erkrankung der kleinsten Schlagadern',
    emboli: 'eingeschwemmte Gerinnsel',
    injury: 'eine verletzte Schlagader',
    exertion: 'eine Engstelle, die sich nur unter Belastung zeigt',
  },
  excludesNot: (what) => `Nicht auszuschließen, auch wenn Pulse zu tasten sind: ${what}.`,
  questions: {
    access: 'Hat dieser Arm einen Zugang für die Dialyse (Blutwäsche)?',
    'from-birth': 'War dieser Puls jemals zu tasten?',
  },
  asks: {
    circulation:
      'Niedriger Blutdruck oder Auskühlung nimmt mehreren Armen oder Beinen den Puls, ohne dass eine Schlagader erkrankt ist.',
    swelling: 'Ein großes Gerinnsel in den Venen kann einem geschwollenen blauen Bein den Puls nehmen.',
    access: 'Ein solcher Zugang leitet dem Handgelenk Blut ab, ohne dass eine Schlagader erkrankt ist.',
  },
  natures: {
    embolus: 'eingeschwemmtes Gerinnsel',
    thrombosis: 'Gerinnsel an Ort und Stelle',
    'chronic-disease': 'lange bestehende Erkrankung der Schlagadern',
    dissection: 'Einriss in der Wand einer Schlagader',
    aneurysm: 'erweiterte Schlagader',
    vasculitis: 'Entzündung der großen Schlagadern',
    compression: 'Druck von außen auf eine Schlagader',
    coarctation: 'angeborene Engstelle der Hauptschlagader',
    'low-flow': 'schwacher Kreislauf oder Kälte',
    none: 'keine Erkrankung der Schlagadern',
  },
  enough: 'Was sich hier noch prüfen lässt, würde daran nicht viel ändern',
  enoughWhy: 'Bilder der Schlagadern (Bildgebung) nach örtlichem Vorgehen.',
  agree: 'Beide Verfahren sagen dasselbe.',
  disagree: 'Die beiden Verfahren stimmen nicht überein.',
  favours: (pieces) =>
    `Die Berechnung spricht für: ${pieces}. Was nicht dazu passt, sollte noch einmal geprüft werden.`,
  ruleAlone:
    'Die Berechnung spricht hier gegen einen Verschluss: Ein Puls könnte falsch beurteilt sein. Er sollte noch einmal getastet werden.',
  networkAlone: (pieces) =>
    `Nach den Pulsen allein ist kein Verschluss erkennbar; die Berechnung spricht für: ${pieces}.`,
  beyond: (site) => `irgendwo hinter der ${site}`,
  fromTo: (above, below) => `irgendwo zwischen der ${above} und der ${below}`,
  fromHeart: (below) => `irgendwo zwischen dem Herzen und der ${below}`,
  lost: { absent: 'Verschluss', reduced: 'Engstelle oder Verschluss' },
  titles: {
    occludedHeading: 'Wo der Verschluss wahrscheinlich liegt',
    byArtery: 'Nach Schlagader',
    beginsHeading: 'Wo die erste Engstelle oder der erste Verschluss wahrscheinlich liegt',
    nothing: 'Kein Verschluss gefunden',
    furtherHeading: 'Weitere Engstellen oder Verschlüsse',
    evidenceHeading: 'Was für diese Stelle spricht und was dagegen',
    nextHeading: 'Was als Nächstes zu prüfen ist',
    howFirm: 'Wie sicher das ist',
    numbers: 'Alle Werte',
    levels: 'Nach Abschnitt',
  },
};
