import type { StagingTable } from '../staging.js';
import type { Otherwise } from '../terms.js';

/** The stages, for a reader who is no clinician. */
export const plainStaging: Otherwise<StagingTable> = {
  title: 'Schwere',
  schemes: {
    acute: 'Wie dringend (Rutherford)',
    fontaine: 'Schwere (Fontaine)',
    rutherford: 'Schwere (Rutherford)',
    wound: 'Wunde',
    ischaemia: 'Mangel an Blut',
    infection: 'Infektion des Fußes',
    wifi: 'Risiko für den Fuß',
  },
  meanings: {
    acute: {
      I: 'Arm oder Bein nicht unmittelbar in Gefahr',
      IIa: 'Arm oder Bein in Gefahr, wenn nicht rasch behandelt wird',
      IIb: 'Arm oder Bein unmittelbar in Gefahr, jede Stunde zählt',
      III: 'der Schaden ist möglicherweise bleibend',
    },
    fontaine: {
      IIa: 'leichter Schmerz beim Gehen',
      IIb: 'mäßiger bis starker Schmerz beim Gehen',
      III: 'Schmerz in Ruhe oder nachts',
      IV: 'offene Wunde oder abgestorbenes Gewebe',
    },
    rutherford: {
      1: 'leichter Schmerz beim Gehen',
      2: 'mäßiger Schmerz beim Gehen',
      3: 'starker Schmerz beim Gehen',
      4: 'Schmerz in Ruhe oder nachts',
      5: 'kleine Wunde oder wenig abgestorbenes Gewebe',
      6: 'große Wunde oder viel abgestorbenes Gewebe',
    },
    wifi: {
      1: 'sehr geringes Risiko, den Fuß zu verlieren',
      2: 'geringes Risiko, den Fuß zu verlieren',
      3: 'mäßiges Risiko, den Fuß zu verlieren',
      4: 'hohes Risiko, den Fuß zu verlieren',
      5: 'Fuß, der kaum zu erhalten ist',
    },
    wound: {
      1: 'kleine oder flache offene Wunde',
      2: 'tiefere offene Wunde oder abgestorbene Zehen',
      3: 'große offene Wunde oder viel abgestorbenes Gewebe',
    },
  },
  notes: {
    'no-single-class':
      'Was gefunden wurde, passt in keine einzelne Stufe nach Rutherford; gezeigt wird die niedrigste mögliche.',
    'fixed-mottling': 'Flecken, die beim Drücken nicht blass werden, gehören zu bleibendem Schaden.',
    'described-for-leg': 'Die Stufen wurden für das Bein gemacht.',
    'old-deficit': 'Schwäche oder Taubheit, die schon lange besteht, zählt nicht.',
    'pressures-not-met':
      'Die gemessenen Drücke passen nicht zu dieser Stufe: Beschwerden und Drücke noch einmal prüfen.',
    'pressures-of-rest-pain':
      'Die Drücke sind so niedrig wie bei Schmerz in Ruhe; fehlendes Gefühl kann den Schmerz verdecken.',
    'disease-not-shown': 'Pulse und Drücke zeigen keine verengten Schlagadern: nach anderer Ursache suchen.',
    'disease-untested':
      'Verengte Schlagadern sind nicht nachgewiesen: Pulse, Druck an Knöchel oder Zehe oder die Pulswelle sind nötig.',
    'other-causes': 'Die ganze Strecke ohne Druckabfall: an Rücken, Hüfte und Venen denken.',
    'at-200': 'Wohin genau 200 m gehören, legt die Einteilung nicht fest; die eigene Regel wählen.',
    'toe-decides':
      'Druck an Knöchel und Zehe ergeben verschiedene Stufen; der Druck an der Zehe entscheidet.',
    incompressible:
      'Die Knöchelarterien sind zu hart zum Messen: nach Druck an der Zehe oder Sauerstoff der Haut einstufen.',
    'one-incompressible': 'Eine Knöchelarterie ist zu hart zum Messen: Die Stufe kann schlechter sein.',
    'both-arms':
      'Beide Armarterien können verengt sein: Der Vergleich kann zu hoch ausfallen, die Stufe schlechter sein.',
    'diabetes-ankle':
      'Bei Diabetes kann der Druck am Knöchel zu hoch ausfallen: Die Stufe kann schlechter sein.',
    'diabetes-unasked':
      'Ob ein Diabetes besteht, ist nicht festgehalten: Dann kann die Stufe schlechter sein und muss der Druck an der Zehe gemessen werden.',
    'acute-limb':
      'Zeichen, dass die Durchblutung plötzlich ausgefallen ist: Es zählt, wie dringend es ist. Diese Einteilung gilt für Beschwerden seit mindestens 2 Wochen.',
    'not-atherosclerotic':
      'Die Gefahr für Arm oder Bein ist für verkalkte Schlagadern festgelegt; als Ursache ist eine andere Krankheit erfasst.',
    'worse-counts':
      'Der verglichene und der gemessene Druck am Knöchel ergeben verschiedene Stufen; die schlechtere zählt.',
    'at-70': '70 mmHg steht in zwei Stufen; die eigene Regel wählen.',
    'one-sign-only': 'Ein einzelnes Zeichen ist nach dieser Einteilung noch keine Infektion.',
  },
  excluded: {
    amputated: 'Der Fuß ist verloren: Die Einteilung gilt nicht.',
    acute: 'Nicht für den plötzlichen Ausfall der Durchblutung gedacht.',
    vasculitis: 'Nicht für entzündete Schlagadern gedacht.',
    'venous-ulcer': 'Nicht für offene Wunden durch die Venen gedacht.',
    buerger: 'Nicht für die Entzündung kleiner Schlagadern (Morbus Buerger) gedacht.',
    vasospasm: 'Nicht für Finger gedacht, die bei Kälte weiß werden.',
  },
  acuteTitle: 'Plötzlich',
  grades: 'Die drei Teile',
  unread:
    'Der Befund kann hier nicht gelesen werden; daraus wird keine Stufe abgeleitet. Von Ihnen festgelegte Stufen bleiben, wie sie sind.',
  grade: (roman) => `Stufe ${roman}`,
  notAcute:
    'Kein plötzlicher Beginn erfasst: nicht als plötzlicher Ausfall der Durchblutung eingestuft. Besteht es unter 2 Wochen, den Beginn erfassen.',
  window: (from, to) =>
    `Nach den Leitlinien soll das Blut innerhalb von ${from ? `${from} bis ` : ''}${to} Stunden wieder fließen. Jetzt rufen.`,
  noWindow:
    'Nach den Leitlinien ist es gegebenenfalls zu erwägen, Arm oder Bein abzunehmen; das entscheidet das Gefäßteam. Jetzt rufen.',
  beside: (what) => `Daneben: ${what}, so niedrig wie bei Schmerz in Ruhe.`,
  objective: {
    met: 'Die gemessenen Drücke passen.',
    'not-met': 'Die gemessenen Drücke passen nicht.',
    'not-measured': 'Die Drücke für diese Stufe sind nicht gemessen.',
  },
  edition: 'Tabellen zum Risiko für den Fuß nach Mills 2014.',
  differ: 'Fontaine und Rutherford stimmen hier nicht überein: vergleichen, worauf jede beruht.',
  risk: (risk) => `Geschätztes Risiko, Fuß oder Bein innerhalb von 1 Jahr zu verlieren: ${risk}.`,
  benefit: (benefit) => `Geschätzter Nutzen, wenn das Blut wieder besser fließt: ${benefit}.`,
  asDerived: 'Wie berechnet',
  overrule: {
    derived: (stage) => `berechnet war ${stage}`,
    nothing: 'berechnen ließ sich nichts',
  },
  yours: {
    derived: (stage) => `Berechnet: ${stage}.`,
    nothing: 'Berechnen ließ sich nichts.',
  },
};
