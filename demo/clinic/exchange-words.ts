import type { LanguageTag } from 'pulse-map/core';

/** The words of export and import; the clinic's own pages are English, these follow the language of the examination. */
interface Words {
  readonly exportTitle: string;
  readonly version: string;
  readonly save: string;
  readonly content: string;
  readonly findingsBundle: string;
  readonly formAnswers: string;
  readonly snomed: string;
  readonly licence: string;
  readonly failed: (reason: string) => string;
  readonly importTitle: string;
  readonly file: string;
  readonly first: string;
  readonly badJson: (name: string) => string;
  readonly unreadable: (reason: string) => string;
  readonly noBundle: (name: string) => string;
  readonly stranger: (name: string) => string;
  readonly nothing: (name: string) => string;
  readonly read: (name: string) => string;
  readonly someStranger: string;
  readonly nobody: (name: string) => string;
  readonly whichDay: string;
  readonly chooseDay: string;
  readonly date: string;
  readonly noDate: string;
  readonly findings: string;
  readonly summary: string;
  readonly already: string;
  readonly unread: (count: number) => string;
  readonly allRead: string;
  readonly notKept: string;
  readonly keep: string;
  readonly discard: string;
}

const en: Words = {
  exportTitle: 'Export as FHIR',
  version: 'Version of FHIR',
  save: 'Save as a file (JSON)',
  content: 'What is written',
  findingsBundle: 'Findings (Bundle)',
  formAnswers: 'Answers to the form (QuestionnaireResponse)',
  snomed: 'Add codes of SNOMED CT to the findings',
  licence:
    'Only where your site holds a licence. Without them the findings keep their LOINC codes and their words.',
  failed: (reason) => `The file was not made: ${reason}`,
  importTitle: 'Import a FHIR file',
  file: 'FHIR bundle or form answers, R4 or R5 (JSON)',
  first: 'What was read is shown first; nothing is kept before you say so.',
  badJson: (name) => `“${name}” is not JSON. Nothing was read.`,
  unreadable: (reason) => `The file cannot be opened: ${reason}`,
  noBundle: (name) => `“${name}” holds neither a FHIR bundle nor the answers to a form. Nothing was read.`,
  stranger: (name) => `The file is about another patient, not about ${name}. Nothing was read.`,
  nothing: (name) => `Nothing in “${name}” could be read.`,
  read: (name) => `Read from “${name}”`,
  someStranger: 'The file also holds findings about another patient. They were left out.',
  nobody: (name) => `Some findings do not say whom they are about. Make sure that this is ${name}.`,
  whichDay: 'Day of the findings',
  chooseDay: 'Choose a day…',
  date: 'Date of the visit',
  noDate: 'The file names no day. Enter it before you keep the visit.',
  findings: 'Findings',
  summary: 'Summary',
  already: 'The same examination already stands in a visit of this patient.',
  unread: (count) => `Not read: ${count} ${count === 1 ? 'entry' : 'entries'}`,
  allRead: 'Everything in the file was read.',
  notKept: 'These are not kept with the visit. Keep the file.',
  keep: 'Keep as a visit',
  discard: 'Discard',
};

const de: Words = {
  exportTitle: 'Als FHIR exportieren',
  version: 'FHIR-Version',
  save: 'Als Datei speichern (JSON)',
  content: 'Was geschrieben wird',
  findingsBundle: 'Befunde (Bundle)',
  formAnswers: 'Antworten zum Formular (QuestionnaireResponse)',
  snomed: 'Den Befunden Codes aus SNOMED CT beifügen',
  licence:
    'Nur, wo Ihr Haus eine Lizenz hat. Ohne sie behalten die Befunde ihre LOINC-Codes und ihre Wörter.',
  failed: (reason) => `Die Datei wurde nicht erstellt: ${reason}`,
  importTitle: 'FHIR-Datei importieren',
  file: 'FHIR-Bundle oder Formularantworten, R4 oder R5 (JSON)',
  first: 'Zuerst wird gezeigt, was gelesen wurde; behalten wird erst, was Sie bestätigen.',
  badJson: (name) => `„${name}“ ist kein JSON. Es wurde nichts gelesen.`,
  unreadable: (reason) => `Die Datei lässt sich nicht öffnen: ${reason}`,
  noBundle: (name) =>
    `„${name}“ enthält weder ein FHIR-Bundle noch Antworten zu einem Formular. Es wurde nichts gelesen.`,
  stranger: (name) => `Die Datei betrifft eine andere Person, nicht ${name}. Es wurde nichts gelesen.`,
  nothing: (name) => `Aus „${name}“ ließ sich nichts lesen.`,
  read: (name) => `Gelesen aus „${name}“`,
  someStranger: 'Die Datei enthält auch Befunde einer anderen Person. Sie wurden ausgelassen.',
  nobody: (name) =>
    `Einige Befunde nennen nicht, wen sie betreffen. Vergewissern Sie sich, dass es ${name} ist.`,
  whichDay: 'Tag der Befunde',
  chooseDay: 'Tag wählen …',
  date: 'Datum des Besuchs',
  noDate: 'Die Datei nennt keinen Tag. Tragen Sie ihn ein, bevor Sie den Besuch behalten.',
  findings: 'Befunde',
  summary: 'Zusammenfassung',
  already: 'Dieselbe Untersuchung steht schon in einem Besuch dieser Person.',
  unread: (count) => `Nicht gelesen: ${count} ${count === 1 ? 'Eintrag' : 'Einträge'}`,
  allRead: 'Alles in der Datei wurde gelesen.',
  notKept: 'Diese Einträge stehen nicht im Besuch. Bewahren Sie die Datei auf.',
  keep: 'Als Besuch behalten',
  discard: 'Verwerfen',
};

/** In every language that the examination has; one that is missing fails the type check. */
export const EXCHANGE_WORDS: Readonly<Record<LanguageTag, Words>> = { en, de };
