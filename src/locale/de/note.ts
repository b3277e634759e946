import type { NoteWords } from '../note.js';
import { inRegisters, type Otherwise } from '../terms.js';
import { list, sentence } from './phrases.js';

const befunde = (anzahl: number): string => (anzahl === 1 ? '1 Befund' : `${anzahl} Befunde`);
const zitiert = (worte: string): string => `„${worte}“`;

const fachlich: NoteWords = {
  title: 'Tippen oder diktieren',
  label: 'Notiz zu Pulsen und Strömungsgeräuschen',
  hint: 'Kürzel oder ganze Sätze auf Deutsch, zum Beispiel: Leistenpulse normal, Poplitea und Fußpulse links nicht tastbar, Strömungsgeräusch linke Leiste.',
  caution: 'Bitte prüfen, was gelesen wurde. Dokumentiert wird erst, wenn Sie es übernehmen.',
  summary: (gelesen, offen, unverstanden) =>
    [
      `${befunde(gelesen)} gelesen`,
      ...(offen ? [offen === 1 ? '1 Frage offen' : `${offen} Fragen offen`] : []),
      ...(unverstanden
        ? [`${unverstanden === 1 ? '1 Stelle' : `${unverstanden} Stellen`} nicht verstanden`]
        : []),
    ].join(', ') + '.',
  understood: 'Verstanden',
  from: (zitate) => `aus ${list(zitate.map(zitiert))}`,
  at: (places, said) => `${sentence(list(places))}: ${said}`,
  recordedAlready: 'schon dokumentiert',
  locked: 'bleibt unverändert: hier steht ein Wort einer späteren Version',
  now: (dokumentiert) => `Dokumentiert ist: ${dokumentiert}.`,
  replace: 'Ersetzen',
  question: (nummer, code) => `${nummer}. ${fragen[code]}`,
  leaveOut: 'Weglassen',
  open: (nummern) =>
    nummern.length === 1
      ? `Frage ${nummern[0]} ist offen: bitte antworten oder weglassen.`
      : `Die Fragen ${list(nummern.map(String))} sind offen: bitte jede beantworten oder weglassen.`,
  notUnderstood: 'Nicht verstanden',
  changesNothing: 'Diese Worte bewirken nichts.',
  record: (anzahl) => `${befunde(anzahl)} übernehmen`,
  nothingToRecord: 'Nichts zu übernehmen',
  recorded: (anzahl) => `${befunde(anzahl)} aus der Notiz übernommen.`,
  undo: (anzahl) => (anzahl === 1 ? 'Zurücknehmen' : `Alle ${anzahl} zurücknehmen`),
  takenBack: 'Zurückgenommen. Die Notiz steht wieder da.',
  clear: 'Notiz leeren',
  dictate: 'Diktieren',
  stopDictating: 'Diktat beenden',
  onDevice: 'Gesprochenes wird auf diesem Gerät erkannt und verlässt es nicht.',
  dictationFailed: 'Das Diktat wurde beendet. Was erkannt wurde, steht in der Notiz.',
  notLoaded:
    'Die Notiz kann gerade nicht gelesen werden, weil ein Programmteil nicht geladen wurde. Der Text bleibt.',
  tryAgain: 'Erneut versuchen',
};

const fragen: Readonly<Record<Parameters<NoteWords['question']>[1], string>> = {
  scale: 'Welche Stärke ist gemeint? Die Notiz nennt die Skala nicht.',
  strength: 'Wie kräftig ist der Puls? Die Notiz sagt nur, dass er da ist.',
  felt: 'Ist der Puls tastbar?',
  side: 'Welche Seite ist gemeint?',
  'could-not': 'Nicht tastbar oder nicht untersuchbar?',
  contradiction: 'Die Notiz sagt beides. Was gilt?',
  unclear: 'Was ist gemeint? Etwas wurde hier nicht verstanden.',
};

const allgemein: Otherwise<NoteWords> = {
  label: 'Notiz zu den Pulsen',
  hint: 'Kürzel oder ganze Sätze auf Deutsch, zum Beispiel: Leistenpulse normal, kein Puls in der linken Kniekehle, keiner am linken Fuß.',
};

export const note: NoteWords = inRegisters(fachlich, allgemein);
