import { reportFrom, type ReportTable } from '../report.js';
import { inRegisters, type Otherwise } from '../terms.js';
import { localisation } from './localisation.js';
import { marks } from './marks.js';
import { list } from './phrases.js';
import { areas, whole } from './whole.js';

const fachlich: ReportTable = {
  title: 'Untersuchung der Extremitätenarterien',
  noName: 'Ohne Namen der Patientin oder des Patienten',
  noDate: 'Ohne Datum',
  timeless: (day) => `${day}, ohne Uhrzeit`,
  noExaminer: 'Untersucher nicht genannt',
  examiner: 'Untersucht von',
  headings: {
    flags: 'Warnzeichen',
    conclusion: 'Beurteilung',
    findings: 'Befunde',
    pressures: 'Drücke und Indizes',
    tests: 'Klinische Tests',
    stages: 'Stadien',
    background: 'Anamnese und Vorgeschichte',
    notExamined: 'Nicht untersucht',
    method: 'Gewählte Verfahren und Grenzen',
    calls: 'Verständigt',
    amendments: 'Spätere Änderungen',
  },
  noConclusion: 'Kein Puls beurteilt: Über die Arterien wird nichts gesagt.',
  trunk: 'Rumpf',
  scale: (scale) => `Pulse auf der Skala ${scale}.`,
  normals: (count) => (count === 1 ? '1 unauffälliger Befund' : `${count} unauffällige Befunde`),
  unfeltAll: (teile) => `Kein Puls getastet: ${teile}.`,
  unfelt: (part, sites) => `${part}, nicht getastet: ${sites}.`,
  nothingMissing: 'Alle Pulse wurden untersucht.',
  status: {
    preliminary: 'Vorläufig: nicht abgeschlossen',
    final: 'Abgeschlossen',
    amended: 'Geändert',
    'entered-in-error': 'Irrtümlich erfasst',
  },
  inError:
    'Diese Untersuchung darf nicht in die Behandlung eingehen. Sie bleibt erhalten, damit sie nachvollziehbar ist.',
  amendments: {
    amended: 'Geändert',
    'entered-in-error': 'Als irrtümlich erfasst gekennzeichnet',
    restored: 'Wiederhergestellt',
  },
  amended: (what, when, by, why) => `${what} am ${when}${by ? ` von ${by}` : ''}${why ? `: ${why}` : ''}`,
};

const einfach: Otherwise<ReportTable> = {
  title: 'Untersuchung der Durchblutung von Armen und Beinen',
  headings: {
    flags: 'Warnzeichen',
    conclusion: 'Worauf das hindeutet',
    findings: 'Was gefunden wurde',
    pressures: 'Blutdruck an Armen und Beinen',
    tests: 'Einfache Tests',
    stages: 'Wie weit die Krankheit ist',
    background: 'Was Sie uns gesagt haben',
    notExamined: 'Was nicht geprüft wurde',
    method: 'Wie die Drücke berechnet wurden',
    calls: 'Wer angerufen wurde',
    amendments: 'Was später geändert wurde',
  },
  noConclusion: 'Kein Puls wurde beurteilt. Über die Adern lässt sich deshalb nichts sagen.',
  scale: (scale) => `Stärke der Pulse von ${scale}.`,
  normals: (count) => (count === 1 ? '1 Befund in Ordnung' : `${count} Befunde in Ordnung`),
  unfeltAll: (teile) => `Kein Puls geprüft: ${teile}.`,
  unfelt: (part, sites) => `${part}, nicht geprüft: ${sites}.`,
  nothingMissing: 'Alle Pulse wurden geprüft.',
};

export const report = reportFrom(inRegisters(fachlich, einfach), {
  ...areas,
  localisation,
  marks,
  whole,
  list,
  dates: 'de-DE',
});
