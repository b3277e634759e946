import type { BedsideTable } from '../bedside.js';
import type { BedsideLabels } from '../en/bedside-labels.js';
import type { Otherwise } from '../terms.js';

/** What was measured in the tests, for a reader who is no clinician. */
export const plainBedside: Otherwise<BedsideTable> = {
  outcomes: { positive: 'fallen im Test auf' },
  people: {
    'transradial-access': 'der Menschen vor einem Katheter durch das Handgelenk',
  },
  among: { 'transradial-access': 'Menschen vor einem Katheter durch das Handgelenk' },
  bounds: { 'upper-95': 'obere Grenze des 95-%-Bereichs' },
  found: {
    'arterial-disease': 'der Menschen mit erkrankten Schlagadern werden erkannt',
    'inadequate-collateral': 'der Hände, die eine Schlagader allein nicht versorgen kann, werden erkannt',
  },
  cleared: {
    'arterial-disease': 'der Menschen ohne diese Krankheit haben einen normalen Test',
    'inadequate-collateral': 'der Hände, die sie versorgen kann, haben einen normalen Test',
  },
  sensitivity: (share, people) => `${share} ${people}`,
  specificity: (share, people) => `${share} ${people}`,
  measured: {
    incompetent: 'undichte Venen',
    methods: { modified: 'neuere Form des Tests', original: 'ältere Form des Tests' },
    releasedPink: (artery, time) => `${artery} losgelassen: rosig nach ${time}`,
    releasedWhite: (artery, time) => `${artery} losgelassen: Handfläche ${time} lang weiß`,
    tracing: (artery, barbeau) => `Fingerclip, ${artery} abgedrückt: Klasse ${barbeau}`,
  },
};

export const plainBedsideLabels: Otherwise<BedsideLabels> = {
  title: 'Einfache Tests',
  rates: 'Wie oft der Test täuscht',
  elevation: { range: 'Ein schlecht durchblutetes Bein wird im dicken Teil des Bogens blass.' },
  venous: { incompetent: 'Undichte Venen' },
  hand: {
    methods: { modified: 'Neuere', original: 'Ältere' },
    released: { radial: 'Daumenseite losgelassen', ulnar: 'Kleinfingerseite losgelassen' },
    figure: (side, name) => `Handfläche ${side}; losgelassen: ${name}`,
    start: 'Loslassen: Start',
    tracing: 'Fingerclip',
    barbeau: 'Daumenseite abgedrückt',
    barbeauReverse: 'Kleinfingerseite abgedrückt',
    classes: {
      A: 'A, schlägt wie zuvor',
      B: 'B, schlägt schwächer',
      C: 'C, verschwunden, in 2 min zurück',
      D: 'D, 2 min verschwunden',
    },
  },
};
