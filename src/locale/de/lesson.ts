import type { BedsideTestId } from '../../examination/index.js';
import { type LessonWords, type Meaning, usualLimit } from '../lesson.js';
import { anatomy } from './anatomy.js';
import { bedsideHow } from './bedside-how.js';
import { sentence } from './phrases.js';

/** Was ein fehlender oder schwacher Puls an manchen Orten noch heißt. Übliche Praxis, ohne Quelle. */
const AM_ORT: Readonly<Record<string, string>> = {
  'dorsalis-pedis': 'Fehlt bei manchen Gesunden von Geburt an: auch die Tibialis posterior tasten.',
  'posterior-tibial': 'Schwellung verdeckt ihn. Bei Gesunden fehlt er selten.',
  popliteal: 'Selbst bei Gesunden schwer zu tasten: erst mit beiden Händen tasten, bevor es „fehlt“ heißt.',
  'abdominal-aorta': 'Bei dickem Bauch nicht zu tasten: kein Zeichen einer Krankheit.',
  radial: 'Fehlt er auf einer Seite: Ulnaris und Brachialis tasten.',
};

const pulse: readonly Meaning[] = [
  { name: 'Normal', says: 'leicht zu finden, gleichmäßig, auf beiden Seiten gleich' },
  {
    name: 'Schwach',
    says: 'da, aber schwächer als gegenüber: Stenose oberhalb oder Kollateralen',
  },
];
const geraeusche: readonly Meaning[] = [
  { name: 'Kein Geräusch', says: 'normal, oder gar kein Fluss' },
  { name: 'Systolisch', says: 'Stenose hier oder kurz oberhalb' },
  { name: 'Kontinuierlich', says: 'hochgradige Stenose oder Fistel' },
];

/** Der Tests; Zahlen sind deren übliche Grenzen. */
const proben: Readonly<Partial<Record<BedsideTestId, readonly [normal: string, abnormal: string]>>> = {
  elevation: [
    'die Sohle behält ihre Farbe bis 90°',
    `Abblassen; unter ${usualLimit('elevation')}° ist die Ischämie schwer`,
  ],
  'colour-return': [
    `nach höchstens ${usualLimit('colour-return')} s wieder rosig`,
    'später: je länger, desto schlimmer',
  ],
  'dependent-rubor': ['Farbe unverändert', 'düster gerötet: chronische Ischämie'],
  'venous-filling': [
    `Venen nach höchstens ${usualLimit('venous-filling')} s gefüllt`,
    'später: schlechter arterieller Einstrom',
  ],
  'hand-arch': [
    `Handfläche mit jeder Arterie allein nach höchstens ${usualLimit('hand-arch')} s rosig`,
    'länger weiß: Diese Arterie versorgt die Hand nicht allein',
  ],
  'cold-provocation': ['kein Farbwechsel', 'weiß, blau, dann rot: Vasospasmus'],
};

const vorgehen = {
  history: 'Wo schmerzt es, nach welcher Strecke, wie schnell vergeht es im Stehen, wie hat es begonnen?',
  inspection:
    'Beide Gliedmaßen frei und flach, bei gutem Licht: Farbe, Wärme, Haare, Nägel, Venen, Wunden, Zehenzwischenräume.',
  delays: 'Zwei Pulse gleichzeitig tasten: beide Radiales, dann eine Radialis mit jeder Femoralis.',
  listen: 'Stethoskop leicht auf die Arterie, beide Seiten, Atem angehalten. ',
  pressures:
    'Nach zehn Minuten Liegen, Manschette über dem Knöchel, Dopplersonde mit 60°: erst die Arme, dann beide Arterien jedes Knöchels.',
  conclusion: 'Seite, Etage und Ursache nennen; sagen, wie dringend es ist und was zuerst kommt.',
};

export const lesson: LessonWords = {
  title: 'Lektion',
  slides: 'Folien der Lektion',
  step: (nummer, von) => `Schritt ${nummer} von ${von}`,
  patient: 'Die Person ist erfunden',
  real: 'Eine Aufzeichnung ohne Namen, Daten und Notizen',
  minutes: (anzahl) => `Etwa ${anzahl} Minuten`,
  act: (schritt) => {
    if (schritt.kind === 'pulse') return `Tasten: ${anatomy.place(schritt.place)}`;
    if (schritt.kind === 'listen') return `Abhören: ${anatomy.sites[schritt.site]}`;
    if (schritt.kind === 'test') return bedsideHow[schritt.test].name;
    return {
      history: 'Anamnese',
      inspection: 'Ansehen und anfassen',
      delays: 'Zeitlich vergleichen',
      pressures: 'Drücke',
      conclusion: 'Schluss',
    }[schritt.kind];
  },
  how: (schritt) => {
    if (schritt.kind === 'pulse') return sentence(anatomy.technique[schritt.place.site]);
    if (schritt.kind === 'listen') return vorgehen.listen + anatomy.technique[schritt.site];
    return schritt.kind === 'test' ? bedsideHow[schritt.test].steps.join(' ') : vorgehen[schritt.kind];
  },
  meanings: (schritt) => {
    if (schritt.kind === 'pulse')
      return [
        ...pulse,
        {
          name: 'Fehlt',
          says: AM_ORT[schritt.place.site] ?? 'Verschluss hier oder oberhalb; noch einmal tasten',
        },
      ];
    if (schritt.kind === 'listen') return geraeusche;
    if (schritt.kind === 'test') {
      const [normal, krank] = proben[schritt.test] ?? [
        'Puls unverändert, keine Beschwerden',
        'Puls fehlt zusammen mit den Beschwerden; allein besagt das wenig',
      ];
      return [
        { name: 'Normal', says: normal },
        { name: 'Auffällig', says: krank },
      ];
    }
    if (schritt.kind === 'pressures')
      return [
        { name: 'Knöchel zu Arm 1,00 bis 1,40', says: 'unauffällig' },
        { name: '0,90 oder weniger', says: 'arterielle Krankheit' },
        { name: 'Über 1,40', says: 'Arterien für die Manschette zu starr: an der Zehe messen' },
      ];
    if (schritt.kind === 'delays')
      return [
        { name: 'Zugleich', says: 'unauffällig' },
        { name: 'Verspätet', says: 'Enge auf dem Weg zum späteren Puls' },
      ];
    return [];
  },
  cautions: {
    inspection:
      'Binnen Stunden kalt, blass, schmerzhaft, taub oder schwach: zuerst das Gefäßteam nach dem Akutpfad rufen.',
    pulse:
      'Ein Puls, der die Finger auseinanderdrängt, ist expansil: nicht weiter drücken, an ein Aneurysma denken.',
    pressures: 'Keine Manschette über Bypass, tiefer Beinvenenthrombose oder offener Wunde.',
    conclusion: 'Ein tastbarer Puls schließt Krankheit nicht aus. Der örtliche Pfad entscheidet, was folgt.',
    carotid: 'Nie beide Seiten zugleich; erst abhören, dann drücken.',
    elevation: bedsideHow.elevation.caution,
    'colour-return': bedsideHow['colour-return'].caution,
    'hand-arch': bedsideHow['hand-arch'].caution,
  },
  question: 'Frage',
  finding: 'Befund',
  hidden: 'Noch nicht aufgedeckt',
  nothing: 'Hier nicht untersucht; das ist nicht dasselbe wie unauffällig.',
  reading: 'Bis hierher',
  nothingYet: 'Die bisherigen Befunde nennen keinen Verschluss.',
  answer: 'Antwort',
  agrees: (seite) => `${sentence(anatomy.limbs[seite])}: Die Auswertung aller Befunde stimmt überein.`,
  differs: (seite) =>
    `${sentence(anatomy.limbs[seite])}: Die Auswertung aller Befunde kommt zu einem anderen Schluss.`,
  caution: 'Vorsicht',
  sequence: 'Die Reihenfolge',
  goTo: 'Zu einem Schritt nach seinem Namen',
  black: 'Der Bildschirm ist schwarz.',
  running: 'Läuft seit',
  left: (minuten) => (minuten < 0 ? `${-minuten} min überzogen` : `noch ${minuten} min`),
  time: 'Uhrzeit',
  onScreen: 'Auf der Leinwand',
  upNext: 'Als Nächstes',
  end: 'Ende der Lektion',
  notes: 'Notizen',
  noNotes: 'Keine Notizen zu diesem Schritt.',
  next: 'Weiter',
  back: 'Zurück',
  reveal: 'Aufdecken',
  hide: 'Zudecken',
  overview: 'Übersicht',
  blackScreen: 'Schwarz',
  spotlight: 'Lichtkegel',
  ink: 'Stift',
  wipe: 'Wischen',
  fullScreen: 'Vollbild',
  fullRefused: 'Der Browser hat den Bildschirm nicht gefüllt. Vielleicht geht es über sein eigenes Menü.',
  restart: 'Uhr neu starten',
  keys: 'Bild ab und Bild auf oder die Pfeile blättern, B oder Punkt schaltet schwarz, O zeigt die Reihenfolge, P die Pulswelle, M eine Karte zum Eintragen, H lässt eine Stelle hören, R deckt auf, S der Lichtkegel, I zeichnet, W wischt, F füllt den Bildschirm, Escape führt zurück.',
  controls: 'Steuerung',
  loading: 'Die Lektion wird geladen.',
  failed: 'Die Lektion ließ sich nicht laden. Verbindung prüfen und die Seite neu laden.',
  handOut: {
    title: 'Handzettel',
    notice:
      'Person und Befunde sind erfunden. Für den Unterricht; ersetzt weder den örtlichen Pfad noch das ärztliche Urteil.',
    real: 'Befunde einer Aufzeichnung ohne Namen, Daten und Notizen. Für den Unterricht; ersetzt weder den örtlichen Pfad noch das ärztliche Urteil.',
    first: 'Zuerst die Warnzeichen',
    pulses: 'Jeden Puls tasten, rechts und links',
    listen: 'Jede Arterie entlang abhören',
  },
  wave: {
    title: 'Die Pulswelle',
    ofPatient: 'Der berechnete Puls dieses Falls.',
    ofSound:
      'Der Puls eines gesunden Menschen dieses Alters. Der des Falls folgt, sobald der Schluss aufgedeckt ist.',
    ofNobody: 'Der Puls eines gesunden Erwachsenen: In dieser Lektion ist niemand simuliert.',
    still: 'Sie steht, weil das Gerät um weniger Bewegung bittet: Breite Linien sind kräftige Pulse.',
    slower: (mal) => (mal === 1 ? 'In ihrer eigenen Geschwindigkeit.' : `${mal}-fach verlangsamt.`),
    speed: (mal) => (mal === 1 ? 'Echtzeit' : `1 : ${mal}`),
    play: 'Laufen lassen',
    pause: 'Anhalten',
    rate: 'Herzfrequenz',
    beats: (proMinute) => `${proMinute} pro Minute`,
    table: 'Wann der Puls an jeder Stelle ankommt, in Millisekunden nach dem Herzen',
    site: 'Nach dem Herzen',
    arrives: (ms) => `nach ${ms} ms`,
    lost: 'kein Puls',
    listen: 'Hören mit',
    by: { doppler: 'Doppler', bruit: 'Stethoskop' },
    bruits: { systolic: 'Geräusch', continuous: 'kontinuierliches Geräusch', none: 'kein Geräusch' },
    sounds: 'Was das Stethoskop an jeder Stelle hört',
    press: {
      doppler: 'Eine Stelle drücken, um ihr Dopplersignal zu hören.',
      bruit: 'Eine Stelle drücken, um zu hören, was das Stethoskop dort hört.',
    },
  },
  marks: {
    name: 'Eintragen',
    title: 'Im Hörsaal eingetragen',
    whose:
      'Pulse und Geräusche eintragen wie auf jeder Karte. Mit den Befunden der Lektion mischt sich das nicht. Bild ab führt zurück.',
    mirror: 'Was gerade auf der Leinwand eingetragen wird; hier nur zum Mitlesen.',
    wipe: 'Alles Eingetragene wischen',
    loading: 'Die Karte wird geladen.',
    failed: 'Die Karte ließ sich nicht laden. Zurückgehen, Verbindung prüfen und noch einmal versuchen.',
  },
  sound: {
    doppler: (stelle) => `Dopplersignal: ${anatomy.place(stelle)}`,
    bruit: (stelle) => `Stethoskop: ${anatomy.place(stelle)}`,
    playing: 'Zu hören',
  },
};
