import type { NoteWords } from '../note.js';
import { inRegisters, type Otherwise } from '../terms.js';
import { list, sentence } from './phrases.js';

const counted = (count: number, one: string, many: string): string =>
  count === 1 ? `1 ${one}` : `${count} ${many}`;
const findings = (count: number): string => counted(count, 'finding', 'findings');
const quoted = (words: string): string => `“${words}”`;

const trade: NoteWords = {
  title: 'Type or dictate',
  label: 'Note on pulses and bruits',
  hint: 'Shorthand or whole sentences in English, such as: femoral pulses normal, left popliteal and both pedals absent, bruit over left femoral.',
  caution: 'Check what was read. Nothing is recorded until you press Record.',
  summary: (read, open, unread) =>
    [
      `${findings(read)} read`,
      ...(open ? [counted(open, 'open question', 'open questions')] : []),
      ...(unread ? [`${counted(unread, 'passage', 'passages')} not understood`] : []),
    ].join(', ') + '.',
  understood: 'Understood',
  from: (quotes) => `from ${list(quotes.map(quoted))}`,
  at: (places, said) => `${sentence(list(places))}: ${said}`,
  recordedAlready: 'recorded already',
  locked: 'stays as it is: the record holds a word of a later version here',
  now: (recorded) => `The record says: ${recorded}.`,
  replace: 'Replace it',
  question: (number, code) => `${number}. ${questions[code]}`,
  leaveOut: 'Leave out',
  open: (numbers) =>
    numbers.length === 1
      ? `Question ${numbers[0]} is open: choose an answer, or leave it out.`
      : `Questions ${list(numbers.map(String))} are open: choose an answer to each, or leave it out.`,
  notUnderstood: 'Not understood',
  changesNothing: 'These words record nothing.',
  record: (count) => `Record ${findings(count)}`,
  nothingToRecord: 'Nothing to record',
  recorded: (count) => `${findings(count)} recorded from the note.`,
  undo: (count) => (count === 1 ? 'Undo it' : `Undo all ${count}`),
  takenBack: 'Taken back. The note stands as before.',
  clear: 'Clear the note',
  dictate: 'Dictate',
  stopDictating: 'Stop dictating',
  onDevice: 'Speech is recognised on this device; nothing spoken leaves it.',
  dictationFailed: 'Dictation stopped. What was recognised stands in the note.',
  notLoaded: 'The note cannot be read just now, since its code did not load. Your text stays.',
  tryAgain: 'Try again',
};

const questions: Readonly<Record<Parameters<NoteWords['question']>[1], string>> = {
  scale: 'Which grade is meant? The note does not say on which scale it stands.',
  strength: 'How strong is the pulse? The note says only that it is there.',
  felt: 'Is the pulse felt?',
  side: 'Which side is meant?',
  'could-not': 'Absent, or impossible to examine?',
  contradiction: 'The note says both. Which holds?',
  unclear: 'What is meant? Something here was not understood.',
};

const plain: Otherwise<NoteWords> = {
  label: 'Note on the pulses',
  hint: 'Shorthand or whole sentences in English, such as: groin pulses normal, no pulse behind the left knee, none at the left foot.',
  locked: 'stays as it is: it holds a word of a later version',
};

export const note: NoteWords = inRegisters(trade, plain);
