/** What we say of sources ourselves, longer texts first; names of works stay as they are printed. */
const SAID_OF_SOURCES: readonly (readonly [english: string, german: string])[] = [
  [
    'surgical text chapter on radial artery harvest, Taylor & Francis',
    'Kapitel eines chirurgischen Lehrbuchs zur Entnahme der A. radialis, Taylor & Francis',
  ],
  [
    'vascular laboratory texts, digital temperature recovery after ice water',
    'Texte angiologischer Labore zur Wiedererwärmung der Finger nach Eiswasser',
  ],
  [
    'series of hand ischaemia after radial catheters, 2012; review of transradial access',
    'Fallserie zur Handischämie nach Radialiskathetern, 2012; Übersicht zum transradialen Zugang',
  ],
  [
    'emergency teaching pages, phlegmasia cerulea dolens',
    'Lehrseiten der Notfallmedizin zur Phlegmasia coerulea dolens',
  ],
  [
    'therapeutic guideline page; reviews of critical digital ischaemia',
    'Seite einer Therapieleitlinie; Übersichten zur kritischen Finger- und Zehenischämie',
  ],
  ['reviews of graft occlusion; 14 days', 'Übersichten zum Bypassverschluss; 14 Tage'],
  ['reviews of hypothenar hammer syndrome', 'Übersichten zum Hypothenar-Hammer-Syndrom'],
  ['reports of ischaemic monomelic neuropathy', 'Berichte zur ischämischen monomelen Neuropathie'],
  ['regional referral guidance, popliteal aneurysm', 'regionale Überweisungsregel zum Poplitealaneurysma'],
  [
    'radiology reference, dialysis access steal',
    'radiologisches Nachschlagewerk zum Steal bei Dialysezugang',
  ],
  ['teaching pages on false aneurysm', 'Lehrseiten zum Aneurysma spurium'],
  ['pages on blue toe syndrome', 'Seiten zum Blue-Toe-Syndrom'],
  [
    'vascular laboratory interpretation criteria (teaching page)',
    'Beurteilungskriterien eines angiologischen Labors (Lehrseite)',
  ],
  [
    'Vascular technology study guide, physiologic examinations',
    'Lernhilfe der Gefäßtechnik, Funktionsuntersuchungen',
  ],
  [
    'Zuni vascular laboratory protocol, upper extremity arterial pressures',
    'Laborprotokoll Zuni, arterielle Drücke der oberen Extremität',
  ],
  ['lower limb: full compression from 0.80 to 1.30', 'Bein: volle Kompression von 0,80 bis 1,30'],
  [
    'advice below ankle index 0.60, ankle 60, toe 30 and oxygen pressure 20 mmHg; deep vein thrombosis, neuropathy, heart failure, grafts',
    'Rat unter Knöchelindex 0,60, Knöchel 60, Zehe 30 und Sauerstoffdruck 20 mmHg; tiefe Venenthrombose, Neuropathie, Herzinsuffizienz, Bypässe',
  ],
  ['toe pressure from 60 mmHg', 'Zehendruck ab 60 mmHg'],
  [
    'figures from memory; toe and oxygen pressure also in',
    'Zahlen aus dem Gedächtnis; Zehen- und Sauerstoffdruck auch in',
  ],
  [
    'stiff arteries and conflict rule from memory',
    'starre Arterien und Widerspruchsregel aus dem Gedächtnis',
  ],
  ['restating the guideline named', 'gibt die genannte Leitlinie wieder'],
  ['secondary sources restating', 'Sekundärquellen, die wiedergeben:'],
  ['Spittell-type grading, restated by', 'Einteilung nach Art von Spittell, wiedergegeben von'],
  ['index after exercise from memory', 'Index nach Belastung aus dem Gedächtnis'],
  ['ankle to toe from memory', 'Knöchel zu Zehe aus dem Gedächtnis'],
  ['content from memory', 'Inhalt aus dem Gedächtnis'],
  ['modified form, against plethysmography', 'modifizierte Form, gegen Plethysmographie'],
  ['distances by European convention', 'Strecken nach europäischer Übereinkunft'],
  ['both arms lowered by disease of both', 'beide Arme durch Erkrankung beider erniedrigt'],
  ['limits: common practice', 'Grenzen: gängige Praxis'],
  ['by audit abstracts', 'nach Zusammenfassungen von Audits'],
  ['monophasic rule', 'Regel zur monophasischen Kurve'],
  ['two minutes also in', 'zwei Minuten auch in'],
  ['encyclopaedia summary (5 to 15 s)', 'Zusammenfassung einer Enzyklopädie (5 bis 15 s)'],
  ['anaesthesia texts', 'Lehrbücher der Anästhesie'],
  ["Bates' Guide type teaching", 'Lehre nach Art von Bates’ Guide'],
  ['lower end of 15 to 30', 'unteres Ende von 15 bis 30'],
  ['second variant', 'zweite Form'],
  ['as summarised', 'nach einer Zusammenfassung'],
  ['common practice, no source', 'gängige Praxis, ohne Quelle'],
  ['gängige Praxis, no source', 'gängige Praxis, ohne Quelle'],
  ['common practice', 'gängige Praxis'],
  ['from memory', 'aus dem Gedächtnis'],
  ['set by the examiner', 'selbst festgelegt'],
  ['safety rule of these tables', 'Sicherheitsregel dieser Tabellen'],
  ['pocket card', 'Taschenkarte'],
  ['infection table', 'Infektionstabelle'],
  ['points E and H', 'Punkte E und H'],
  ['tables 4 and 5', 'Tabellen 4 und 5'],
  ['table ', 'Tabelle '],
  ['4th ed., p. ', '4. Auflage, S. '],
];

/** A source as German cites it. */
export const cited = (source: string): string =>
  SAID_OF_SOURCES.reduce((text, [english, german]) => text.replaceAll(english, german), source);
