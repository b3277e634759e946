import type { PracticeWords } from '../practice.js';
import { anatomy } from './anatomy.js';
import { bedsideHow } from './bedside-how.js';
import { percent } from './phrases.js';

const uhr = (minuten: number, sekunden: number): string => `${minuten}:${String(sekunden).padStart(2, '0')}`;

const manschetten = {
  arm: 'Oberarm',
  wrist: 'Handgelenk und Finger',
  ankle: 'Knöchel, beide Arterien',
  toe: 'Großzehe',
  thigh: 'Oberschenkel und Wade',
};
const seiten = { right: 'rechts', left: 'links' };
const glied = ({ side, kind }: { side: 'right' | 'left'; kind: string }): string =>
  `${kind === 'leg' ? 'Bein' : 'Arm'} ${seiten[side]}`;

export const practice: PracticeWords = {
  title: 'Üben',
  patient: (code) => `Fall ${code}`,
  invented: 'Erfunden und simuliert. Nur zum Üben: Nichts hier ist ein Rat zu einem wirklichen Menschen.',
  wristSignal:
    'Die simulierte Hand ist warm und in Ruhe: Ein monophasisches Signal am Handgelenk ist dort üblich und allein kein Zeichen einer Krankheit.',
  brief: (alter, klage, seite) => {
    const am = seite === 'right' ? 'rechten' : 'linken';
    const das = seite === 'right' ? 'rechte' : 'linke';
    const wort = {
      'leg-sudden': seite
        ? `Das ${das} Bein wurde heute schmerzhaft und kalt.`
        : 'Beide Beine wurden heute schmerzhaft und kalt.',
      'arm-sudden': seite
        ? `Der ${das} Arm wurde heute schmerzhaft und kalt.`
        : 'Beide Arme wurden heute schmerzhaft und kalt.',
      'foot-wound': `Seit Wochen heilt eine Wunde ${seite ? `am ${am} Fuß` : 'an beiden Füßen'} nicht.`,
      'night-pain': `Nachts Schmerz ${seite ? `im ${am} Fuß` : 'in beiden Füßen'}; er lässt nach, wenn das Bein aus dem Bett hängt.`,
      'leg-walking': `Schmerz ${seite ? `im ${am} Bein` : 'in beiden Beinen'} beim Gehen.`,
      'arm-tires': seite ? `Der ${das} Arm ermüdet bei der Arbeit.` : 'Beide Arme ermüden bei der Arbeit.',
      faint: 'Matt, schwach, und kühl beim Anfassen.',
      'cold-limbs': 'Hände und Füße sind oft kalt und wechseln die Farbe.',
      'high-pressure': 'Hoher Blutdruck in jungen Jahren.',
      check: 'Kommt zur Prüfung der Arterien, ohne Beschwerden an Armen und Beinen.',
    }[klage];
    return `${alter} Jahre. ${wort}`;
  },
  choose: 'Fall wählen',
  number: 'Nummer, 1 bis 9999, oder Kürzel',
  unknownNumber: 'Diesen Fall gibt es nicht. Nummer von 1 bis 9999 eingeben oder ein Kürzel wie hard-12.',
  difficulty: 'Schwierigkeit',
  difficulties: {
    clear: 'Klar: ein Arm oder Bein, sichere Hand',
    usual: 'Üblich: die Hand kann irren',
    hard: 'Schwer: alles möglich',
  },
  level: 'Etage zum Üben',
  anyLevel: 'Beliebig',
  begin: 'Beginnen',
  another: 'Irgendein Fall',
  act: (akt) => {
    switch (akt.kind) {
      case 'ask':
        return {
          onset: 'Fragen, wie und wann es begann',
          walking: 'Nach Schmerz, Gehen und Wunden fragen',
          background: 'Nach Risiken, Gewohnheiten und Eingriffen fragen',
        }[akt.about];
      case 'rhythm':
        return 'Puls eine Minute zählen';
      case 'circulation':
        return 'Blutdruck und Herzfrequenz';
      case 'exercise':
        return 'Gehen lassen, dann erneut Knöcheldrücke';
      case 'look':
        return `Ansehen und anfassen: ${glied(akt.limb)}`;
      case 'feeling':
        return `Gefühl und Bewegung prüfen: ${glied(akt.limb)}`;
      case 'feel':
        return `Tasten: ${anatomy.place(akt.place)}`;
      case 'listen':
        return `Abhören: ${anatomy.place(akt.place)}`;
      case 'doppler':
        return `Dopplersonde: ${anatomy.place(akt.place)}`;
      case 'vertebral':
        return `Dopplersonde: A. vertebralis ${seiten[akt.side]}`;
      case 'delay':
        return akt.of === 'radio-radial'
          ? 'Beide Radialispulse zugleich tasten'
          : 'Radialis und Femorales zugleich tasten';
      case 'cuff':
        return `Manschette: ${manschetten[akt.cuff]} ${seiten[akt.side]}`;
      case 'test':
        return `${bedsideHow[akt.test].name} ${seiten[akt.side]}`;
    }
  },
  groups: {
    ask: 'Fragen',
    look: 'Ansehen und anfassen',
    hand: 'Zählen und vergleichen',
    pressures: 'Drücke',
    tests: 'Zeit- und Lagetests',
  },
  tools: 'Was eine Berührung der Karte tut',
  tool: { feel: 'Tasten', listen: 'Abhören', doppler: 'Dopplersonde' },
  views: 'Gezeigter Teil',
  view: { whole: 'Ganz', arms: 'Arme', legs: 'Beine' },
  time: uhr,
  bedside: 'Zeit am Bett',
  takes: 'dauert',
  acts: 'Was Sie noch tun können',
  touch:
    'Eine Stelle der Karte berühren oder unten wählen. Alles kostet Zeit, und was Sie wissen, vergessen Sie nicht mehr.',
  found: 'Bisher gefunden',
  nothingFound: 'Hier ist bei diesem Fall nichts festgehalten; das heißt nicht, dass es normal ist.',
  nothingYet: 'Noch nichts untersucht.',
  hereToo: 'Auch hier',
  close: 'Schließen',
  nameIt: 'Benennen',
  back: 'Zurück ans Bett',
  where: 'Wo sitzt die Krankheit? Eine oder mehrere Stellen',
  noDisease: 'Keine arterielle Krankheit an Armen und Beinen',
  cause: 'Ursache',
  causes: {
    atherosclerosis: 'Atherosklerose',
    thrombosis: 'Thrombose an Ort und Stelle',
    embolism: 'Embolie',
    aneurysm: 'Aneurysma',
    dissection: 'Dissektion',
    entrapment: 'Druck von außen (Engpass, Entrapment)',
    injury: 'Verletzung oder Katheter',
    'small-artery': 'Kleine Arterien (Buerger)',
    'large-vessel': 'Großgefäßvaskulitis',
    coarctation: 'Aortenisthmusstenose',
    'low-flow': 'Zu wenig Fluss im ganzen Körper',
    cold: 'Kälte oder Gefäßkrampf',
    none: 'Keine an den Arterien',
  },
  stage: 'Stadium der schlimmsten Seite',
  acuteStage: 'Akut',
  urgency: 'Wie dringend',
  urgencies: { none: 'Nicht dringend', soon: 'In wenigen Tagen', today: 'Am selben Tag', now: 'Sofort' },
  first: 'Was zuerst',
  firsts: {
    'call-now': 'Sofort Gefäß- oder Notfallteam rufen',
    circulation: 'Zuerst den Kreislauf behandeln',
    'same-day': 'Am selben Tag fachärztlich vorstellen',
    refer: 'In wenigen Tagen überweisen',
    'risk-and-walking': 'Risikofaktoren und Gehtraining',
    'look-elsewhere': 'Nach einer Ursache außerhalb der Arterien suchen',
    'imaging-first': 'Erst Bildgebung, dann entscheiden, wen man ruft',
    compress: 'Kompressionsstrümpfe',
    'raise-and-warm': 'Hochlagern und wärmen',
  },
  once: 'Sie antworten ein Mal. Danach wird nichts mehr untersucht.',
  show: 'Wahrheit zeigen',
  sheet: 'Bewertung',
  points: (punkte, von) => `${punkte} von ${von}`,
  parts: {
    side: 'Seite',
    level: 'Etage',
    cause: 'Ursache',
    stage: 'Stadium',
    urgency: 'Dringlichkeit',
    first: 'Erster Schritt',
    thrift: 'Binnen 20 Minuten',
  },
  ungrounded: 'nicht untersucht, daher nicht gezählt',
  openPart: (von) => `offen, von ${von}`,
  causesFit: (eigene) =>
    `Die Befunde unterscheiden diese Ursachen nicht, darum gilt jede als richtig. Hier war es: ${eigene}.`,
  causeUntold: 'Zu diesem Fall ist keine Ursache angegeben, darum wird Ihre nicht bewertet.',
  taken: (punkte) => `${punkte} abgezogen für übersehene Warnzeichen und missachtete Vorsicht`,
  truth: 'Wahrheit',
  yours: 'Ihre Antwort',
  unanswered: 'nicht beantwortet',
  silent: 'Auch dort, obwohl es am Bett nichts zeigt',
  or: 'oder',
  flags: 'Warnzeichen',
  flag: 'Warnzeichen',
  flagMissed: 'Übersehen',
  flagFound: 'Erkannt',
  noFlags: 'Dieser Fall hat keine.',
  cautions: 'Missachtete Vorsicht',
  noCautions: 'Keine missachtet.',
  caution: (kennung, akt, minuten, sekunden) =>
    ({
      cuff: `${akt}: Dort sprach etwas gegen eine Manschette.`,
      raised: `${akt}: Was nach Blut hungert, wird nicht hochgehoben.`,
      walked: `${akt}: kein Gehtest bei Ruheschmerz, Wunde oder akuter Ischämie.`,
      'late-call': `Die Befunde verlangten bei ${uhr(minuten, sekunden)} nach Hilfe; die Untersuchung ging weiter.`,
      first: `${akt}: kann hier schaden.`,
    })[kennung],
  told: 'Was am meisten verriet',
  noneTold: 'Nichts davon verriet, wo es sitzt.',
  toldNothing: 'Verriet nichts über den Ort',
  allTold: 'Alles, was Sie taten, verriet etwas darüber.',
  undone: 'Nicht getan und hätte am meisten verraten',
  noneUndone: 'Von keiner weiteren Untersuchung war mehr zu erwarten.',
  undoneUnknown:
    'Aus Ihren Befunden lässt sich nichts erwarten: Sie widersprechen sich oder sagen nichts über eine Arterie.',
  nothingDone: 'Nichts wurde untersucht.',
  rule: 'Was die Pulsregel zu Ihren Befunden sagt',
  ruleNothing: 'Die Regel braucht einen Puls.',
  expected: 'Was da war',
  done: 'Was Sie taten',
  erred: 'die Hand irrte',
  print: 'Drucken',
  again: 'Denselben Fall noch einmal',
  next: 'Nächster Fall',
  present: 'Befunde vortragen',
  presentHow:
    'Zusammenfassung sprechen oder tippen, Seite und Stelle nacheinander. Pulse und Geräusche werden an der Wahrheit gemessen.',
  check: 'Prüfen',
  verdicts: {
    right: 'Richtig',
    wrong: 'Falsch',
    claimed: 'Behauptet, ohne zu untersuchen',
    missed: 'Gefunden und nicht gesagt',
  },
  unread: 'Nicht verstanden',
  vote: 'Abstimmung im Raum',
  voteOn: 'Frage',
  voteHow: (anzahl) => `Hände für die ${anzahl} Antworten, der Reihe nach in einer Zeile: 12 3 0`,
  voteWrong: 'Ganze Zahlen mit Leerzeichen dazwischen, nicht mehr als Antworten.',
  count: 'Zählen',
  hands: 'Hände',
  voteHidden: 'Die richtige Antwort wird markiert, sobald geantwortet ist.',
  progress: 'Ihre bisherigen Fälle',
  trend: (letzte, anteil, davor, anteilDavor) =>
    letzte === 1
      ? `Der eine Fall brachte ${percent(anteil)} der Punkte.`
      : `Die letzten ${letzte} Fälle brachten ${percent(anteil)} der Punkte${davor ? `, ${davor === 1 ? 'der eine' : `die ${davor}`} davor ${percent(anteilDavor)}` : ''}.`,
  byLevel: 'Nach Etage',
  rightOf: (richtig, versucht) => `${richtig} von ${versucht} richtig`,
  noLevelNamed: 'Noch keine Etage benannt.',
  keyRight: 'richtig',
  keyWrong: 'nicht richtig',
  oldestFirst: (fehlend) => `ältester Fall links${fehlend ? `; ${fehlend} frühere nicht gezeichnet` : ''}`,
  byPart: 'Nach Teil der Antwort',
  latest: 'Zuletzt',
  keptHere: 'In diesem Browser auf diesem Gerät aufbewahrt, sonst nirgends.',
  keptNowhere: 'Nicht aufbewahrt: mit dieser Seite verschwindet es.',
  forgotten: (anzahl) => `${anzahl === 1 ? '1 Fall' : `${anzahl} Fälle`} vergessen.`,
  bringBack: 'Zurückholen',
  download: 'Als CSV laden',
  forget: 'Alle vergessen',
  examiner: 'Prüfbogen',
  candidateDoes: 'Die geprüfte Person',
  examinerHow: 'Er verrät die Wahrheit: nicht für die geprüfte Person. Ankreuzen, was sie tut und findet.',
  mark: 'Punkte',
  loading: 'Der Fall wird erzeugt.',
  failed: 'Der Fall ließ sich nicht erzeugen. Seite neu laden.',
  notAdvice: 'Über wirkliche Menschen entscheiden örtliche Pfade und zugelassene Ärztinnen und Ärzte.',
};
