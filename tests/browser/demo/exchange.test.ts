import { expect } from '@open-wc/testing';
import { parseExaminationText } from 'pulse-map/core';
import { toBundle, toResponse } from 'pulse-map/fhir';
import { ClinicStore } from '../../../demo/clinic/database.js';
import 'pulse-map';
import '../../../demo/clinic/app.js';
import type { Visit } from '../../../demo/clinic/types.js';
import { chronic } from '../../../stories/limb-records.js';
import { press, setViewport } from '../../tools/real-input.js';
import { openClinic } from '../tools/clinic.js';
import { allByRole, byRole, everything, nameOf, readableText } from '../tools/perceive.js';
import { until } from '../tools/until.js';

let app: HTMLElementTagNameMap['clinic-app'];
let store: ClinicStore;
let database: string;
let made = 0;

const LANGUAGE = 'alder-row-clinic-language';
const ID = 'lindqvist';

async function open(hash: string): Promise<void> {
  app?.remove();
  app = await openClinic(hash, database);
  await until(() => app.querySelector('details.exchange'), 'the page');
}

/** The control with this label. */
function labelled<E extends HTMLElement = HTMLInputElement>(label: string | RegExp): E {
  const found = everything(app).find(
    (one) =>
      (one as HTMLInputElement).labels?.length &&
      (typeof label === 'string' ? nameOf(one) === label : label.test(nameOf(one))),
  );
  if (!found) throw new Error(`nothing is labelled ${String(label)}`);
  return found as E;
}

/** By keys, since the page above still grows while its elements arrive. */
async function activate(button: HTMLElement): Promise<void> {
  button.focus();
  await press('Enter');
}
const unfold = (title: string): Promise<void> =>
  activate([...app.querySelectorAll('summary')].find((one) => one.textContent?.trim() === title)!);

/** What the page hands to the browser to be downloaded. */
async function savedBy(act: () => Promise<void>): Promise<{ name: string; text: string }> {
  let blob: Blob | undefined;
  let name = '';
  const make = URL.createObjectURL.bind(URL);
  const follow = Object.getOwnPropertyDescriptor(HTMLElement.prototype, 'click')!;
  URL.createObjectURL = (one) => {
    blob = one as Blob;
    return make(one);
  };
  HTMLAnchorElement.prototype.click = function () {
    name = this.download;
  };
  try {
    await act();
    await until(() => name, 'the file');
  } finally {
    URL.createObjectURL = make;
    Object.defineProperty(HTMLAnchorElement.prototype, 'click', follow);
  }
  return { name, text: await blob!.text() };
}

/** Chooses a file in the browser's own control, which opens no dialog in a test. */
function choose(text: string, name = 'findings.json'): void {
  const input = labelled(/^FHIR/);
  const chosen = new DataTransfer();
  chosen.items.add(new File([text], name));
  input.files = chosen.files;
  input.dispatchEvent(new Event('change'));
}

const said = (): string => readableText(app.querySelector('fhir-import')!);
const kept = async (): Promise<readonly Visit[]> => store.visits(ID);
const recordOf = (visit: Visit | undefined): unknown => {
  const parsed = parseExaminationText(visit?.fields['pulses'] ?? '');
  return parsed.ok ? parsed.value : undefined;
};

async function openImport(title = 'Import a FHIR file'): Promise<void> {
  await open(`#/patients/${ID}`);
  await unfold(title);
}

/** An Observation of another program: the pressure at an arm, or text in its place. */
const strange = (reference: string | undefined, day: string, text?: string) => ({
  resource: {
    resourceType: 'Observation',
    status: 'final',
    code: { text: 'Systolic pressure', coding: [{ system: 'http://loinc.org', code: '8480-6' }] },
    ...(reference && { subject: { reference } }),
    effectiveDateTime: day,
    ...(text === undefined
      ? { valueQuantity: { value: 128, unit: 'mmHg', system: 'http://unitsofmeasure.org', code: 'mm[Hg]' } }
      : { valueString: text }),
    bodySite: { coding: [{ system: 'http://snomed.info/sct', code: '17137000' }], text: 'right arm' },
  },
});
const own = toBundle(chronic, { subject: { reference: `Patient/${ID}` } });
const mixed = JSON.stringify({ ...own, entry: [...own.entry, strange(`Patient/${ID}`, '', 'perhaps')] });

beforeEach(async () => {
  localStorage.removeItem(LANGUAGE);
  await setViewport({ width: 1280, height: 900 });
  database = `exchange test ${++made}`;
  store = await ClinicStore.open(database);
});

afterEach(() => {
  app.remove();
  store.close();
  indexedDB.deleteDatabase(database);
  localStorage.removeItem(LANGUAGE);
});

describe('a saved visit as a FHIR file', () => {
  for (const version of ['R4', 'R5'] as const) {
    it(`comes back equal as a visit of its own: ${version}`, async () => {
      const before = await kept();
      const [visit] = before;
      await open(`#/patients/${ID}/visits/${visit!.id}`);
      await unfold('Export as FHIR');
      labelled(version).focus();
      await press('Space');
      const file = await savedBy(() => activate(byRole(app, 'button', 'Save as a file (JSON)')));
      expect(file.name).to.match(new RegExp(`^visit-\\d{4}-\\d\\d-\\d\\d-${version.toLowerCase()}\\.json$`));
      expect(file.text).to.contain(`"Patient/${ID}"`);
      expect(file.text).not.to.contain('snomed.info');

      await openImport();
      choose(file.text, file.name);
      await until(() => allByRole(app, 'button', 'Keep as a visit').length, 'what was read');
      expect(said()).to.contain('Everything in the file was read.');
      expect(said()).to.contain('already stands in a visit');
      expect((await kept()).length, 'nothing is kept yet').to.equal(before.length);
      if (labelled('Date of the visit').value === '') labelled('Date of the visit').value = '2026-02-03';
      await activate(byRole(app, 'button', 'Keep as a visit'));
      await until(async () => (await kept()).length === before.length + 1, 'the visit');
      const after = await kept();
      const added = after.find(({ id }) => !before.some((one) => one.id === id));
      expect(recordOf(added)).to.deep.equal(recordOf(visit));
      expect(after.filter((one) => one !== added)).to.deep.equal(before);
    });
  }

  it('carries codes of SNOMED CT only where that is chosen', async () => {
    const [visit] = await kept();
    await open(`#/patients/${ID}/visits/${visit!.id}`);
    await unfold('Export as FHIR');
    labelled('Add codes of SNOMED CT to the findings').focus();
    await press('Space');
    const file = await savedBy(() => activate(byRole(app, 'button', 'Save as a file (JSON)')));
    expect(file.text).to.contain('http://snomed.info/sct');
  });

  it('is the answers to a form where that is chosen, and comes back equal', async () => {
    const [visit] = await kept();
    await open(`#/patients/${ID}/visits/${visit!.id}`);
    await unfold('Export as FHIR');
    labelled(/^Answers to the form/).focus();
    await press('Space');
    const file = await savedBy(() => activate(byRole(app, 'button', 'Save as a file (JSON)')));
    expect(file.name).to.match(/^visit-\d{4}-\d\d-\d\d-form-r4\.json$/);
    expect(JSON.parse(file.text).resourceType).to.equal('QuestionnaireResponse');

    await openImport();
    choose(file.text, file.name);
    await until(() => allByRole(app, 'button', 'Keep as a visit').length, 'what was read');
    expect(said()).to.contain('Everything in the file was read.');
    expect(said()).to.contain('already stands in a visit');
  });

  it('is offered in German with the German examination', async () => {
    localStorage.setItem(LANGUAGE, 'de');
    const [visit] = await kept();
    await open(`#/patients/${ID}/visits/${visit!.id}`);
    await unfold('Als FHIR exportieren');
    const file = await savedBy(() => activate(byRole(app, 'button', 'Als Datei speichern (JSON)')));
    expect(file.text).to.contain('Untersuchung der Pulse');
  });
});

describe('a FHIR file that is imported', () => {
  it('shows what could not be read, with its place and a sentence, and keeps nothing when discarded', async () => {
    const before = await kept();
    await openImport();
    choose(mixed);
    await until(() => allByRole(app, 'button', 'Keep as a visit').length, 'what was read');
    expect(said()).to.contain('Read from “findings.json”');
    expect(said()).to.contain('Not read: 1 entry');
    expect(said()).to.contain(`entry[${own.entry.length}].resource`);
    expect(said()).to.contain('Systolic pressure :');
    const count = Number(/Findings ?: (\d+)/.exec(said())?.[1]);
    expect(count).to.equal(toBundle(chronic, { derived: false }).entry.length - 1);
    await activate(byRole(app, 'button', 'Discard'));
    await until(() => !allByRole(app, 'button', 'Keep as a visit').length, 'the end of it');
    expect(await kept()).to.deep.equal(before);
  });

  it('tells its sentences in German', async () => {
    localStorage.setItem(LANGUAGE, 'de');
    await openImport('FHIR-Datei importieren');
    choose(mixed);
    await until(() => allByRole(app, 'button', 'Als Besuch behalten').length, 'what was read');
    expect(said()).to.contain('Nicht gelesen: 1 Eintrag');
    // What the clinician typed stays in the clinician's language, in quotation marks.
    expect(said().replace(/„[^“]*“/g, '')).not.to.match(/\b(the|does|not)\b/);
  });

  it('asks which day is meant where it holds several, and says what of others is left out', async () => {
    await openImport();
    const entry = ['2026-02-01', '2026-03-01'].map((day) => strange(`Patient/${ID}`, `${day}T10:00:00Z`));
    choose(JSON.stringify({ resourceType: 'Bundle', type: 'collection', entry }));
    await until(() => app.querySelector('fhir-import select'), 'the days');
    expect(allByRole(app, 'button', 'Keep as a visit').length).to.equal(0);
    const days = labelled<HTMLSelectElement>('Day of the findings');
    expect([...days.options].map(({ value }) => value)).to.deep.equal(['', '2026-02-01', '2026-03-01']);
    days.value = '2026-03-01';
    days.dispatchEvent(new Event('change'));
    await until(() => allByRole(app, 'button', 'Keep as a visit').length, 'what was read');
    expect(labelled('Date of the visit').value).to.equal('2026-03-01');
    expect(said()).to.contain('It is of another day.');
  });

  it('warns of findings that do not say whom they are about', async () => {
    await openImport();
    choose(JSON.stringify(toBundle(chronic)));
    await until(() => allByRole(app, 'button', 'Keep as a visit').length, 'what was read');
    expect(said()).to.contain('do not say whom they are about');
  });

  const REFUSED: readonly (readonly [what: string, text: string, sentence: string])[] = [
    ['no JSON', '{"resourceType": "Bundle", ', '“findings.json” is not JSON. Nothing was read.'],
    ['JSON that is no bundle', '[1, 2]', 'holds neither a FHIR bundle nor the answers to a form.'],
    [
      'a file about another patient',
      JSON.stringify(toBundle(chronic, { subject: { reference: 'Patient/okafor' } })),
      'The file is about another patient, not about',
    ],
    [
      'the answers of another patient',
      JSON.stringify(toResponse(chronic, { subject: { reference: 'Patient/okafor' } })),
      'The file is about another patient, not about',
    ],
    ['an empty bundle', '{"resourceType":"Bundle","entry":[]}', 'Nothing in “findings.json” could be read.'],
  ];
  for (const [what, text, sentence] of REFUSED) {
    it(`is refused in a sentence, with nothing to keep: ${what}`, async () => {
      const before = await kept();
      await openImport();
      choose(text);
      await until(() => said().includes(sentence), sentence);
      expect(allByRole(app, 'button', 'Keep as a visit').length).to.equal(0);
      expect(await kept()).to.deep.equal(before);
    });
  }
});
