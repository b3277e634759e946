import type { PressureLabels } from '../en/pressures-labels.js';

/** Labels of the controls. */
export const pressuresLabels: PressureLabels = {
  title: 'Drücke',
  how: 'Systolische Drücke, liegend, nach 5 bis 10 Minuten Ruhe.',
  unit: 'Einheit',
  tcpo2: 'tcpO₂ (transkutaner Sauerstoffpartialdruck), Fuß',
  measured: 'Gemessen',
  legs: 'Knöchel und Zehe',
  segments: 'Segmentale Drücke',
  arms: 'Handgelenk und Finger',
  afterExercise: 'Nach Belastung',
  completed: 'Ganze Strecke gegangen',
  yes: 'Ja',
  no: 'Nein',
  minutes: 'Minuten gegangen',
  stoppedBy: 'Grund für das Ende',
  used: 'Verwendete Zahlen sind unterstrichen.',
  noArm: 'Kein Knöchel-Arm-Index (ABI) ohne Armdruck.',
  plot: 'Druck vom Arm bis zur Zehe, rechts und links',
  refusedArms:
    'Beide Arme bei 0: Dadurch lässt sich nichts teilen. Erwartet wird ein Druck über 0 an mindestens einem Arm.',
  volumeCurve: 'Volumenkurve am Knöchel',
  methods: 'Methode und Grenzen',
  cuffs:
    'Keine Manschette über einer arteriovenösen Fistel oder einem Shunt, an einem Arm mit Lymphödem oder nach Lymphknotenausräumung, an einem Bein mit Verdacht auf tiefe Venenthrombose. Über einem Bypass oder Stent und bei distalem Bypass erst die örtliche Regel klären; bei Ulkus, Verbrennung, Fraktur oder starkem Schmerz die Manschette anderswo anlegen oder an der Zehe messen. Bei akut ischämischer Extremität den Anruf nie wegen einer Druckmessung aufschieben.',
  technique:
    'Rückenlage, 5 bis 10 Minuten Ruhe, Fersen gestützt, Raum 19 bis 22 °C, 2 Stunden nicht geraucht; Manschette mindestens 40 % des Umfangs breit; Dopplersonde 8 bis 10 MHz. Reihenfolge: rechter Arm, rechts Tibialis posterior, rechts Dorsalis pedis, links Tibialis posterior, links Dorsalis pedis, linker Arm; den ersten Arm wiederholen.',
  caution:
    'Mediasklerose (Diabetes, chronische Niereninsuffizienz, Alter) ergibt falsch hohe Knöcheldrücke: Ein normaler Knöchel-Arm-Index (ABI) schließt eine periphere arterielle Verschlusskrankheit (pAVK) nicht aus.',
};
