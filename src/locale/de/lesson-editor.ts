import type { LessonEditorWords } from '../lesson-editor.js';

export const lessonEditor: LessonEditorWords = {
  title: 'Lektion schreiben',
  text: 'Lektion als JSON',
  startFrom: 'Beginnen mit',
  choose: 'Lektion wählen',
  empty: 'Neue Lektion',
  open: 'Datei öffnen',
  save: 'Als Datei sichern',
  undo: 'Rückgängig',
  redo: 'Wiederholen',
  preview: 'Vorschau',
  ready: 'Das ist eine Lektion. Die Vorschau zeigt sie.',
  mend: (count) =>
    count === 1 ? 'Eine Stelle ist zu berichtigen:' : `${count} Stellen sind zu berichtigen:`,
  more: (count) => `und ${count} weitere`,
  at: (line, column) => `Zeile ${line}, Spalte ${column}`,
  stale: 'Zu sehen ist der letzte Stand, der eine Lektion war.',
  nothing: 'Hier erscheinen die Folien, sobald der Text eine Lektion ist.',
  hint: 'Der Patient ist erfunden: nichts über wirkliche Personen schreiben. Jeder Text steht in jeder Sprache des Titels.',
  notKept: 'Dieser Browser bewahrt keinen Entwurf auf. Die Lektion als Datei sichern.',
  notRead: 'Die Datei war nicht lesbar.',
  unsaid: 'In "answer" › "differs" sagen, dass und warum, oder Patient oder Antwort ändern.',
  addTo: (step) => `Frage und Notizen hinzufügen: ${step}`,
  blank: 'Noch zu schreiben',
  begun: {
    title: 'Neue Lektion',
    story: 'Wer die Person ist und was sie herführt.',
    answer: 'Was die Befunde ergeben.',
  },
};
