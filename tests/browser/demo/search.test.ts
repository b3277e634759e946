import { expect } from '@open-wc/testing';
import { VISITS, PATIENTS } from '../../../demo/clinic/samples.js';
import '../../../demo/clinic/patient-list.js';
import { click, press, setViewport, type } from '../../tools/real-input.js';
import { withClinicStyle } from '../tools/clinic.js';
import { namedIn, oneIn } from '../tools/named.js';
import { until } from '../tools/until.js';

withClinicStyle();
before(() => setViewport({ width: 390, height: 844 }));

async function open(): Promise<HTMLElementTagNameMap['patient-list']> {
  const list = document.createElement('patient-list');
  list.rows = PATIENTS.map((patient) => ({
    patient,
    visits: VISITS.filter(({ patientId }) => patientId === patient.id),
    draft: undefined,
  }));
  document.body.append(list);
  await list.updateComplete;
  return list;
}

describe('the search among the patients', () => {
  let list: HTMLElementTagNameMap['patient-list'];
  beforeEach(async () => {
    list = await open();
  });
  afterEach(() => list.remove());
  const field = () =>
    oneIn<HTMLLabelElement>(list, 'label', 'Search names, findings, flags').control as HTMLInputElement;
  const holds = async (words: string) => {
    await until(() => field().value === words, `the field holds "${words}"`);
    await list.updateComplete;
  };
  const search = async (words: string) => {
    await click(field());
    await press('Control+a');
    await type(words);
    await holds(words);
  };

  it('shows every patient while nothing is asked', () => {
    expect(namedIn(list, 'li', /./)).to.have.length(PATIENTS.length);
  });

  it('finds a visit by its red flag, says where, and leads there', async () => {
    await search('Acute ischaemia RIGHT');
    expect(namedIn(list, 'li', /./)).to.have.length(1);
    expect(namedIn(list, '[role=status]', `1 of ${PATIENTS.length} patients`)).to.have.length(1);
    const visit = oneIn<HTMLAnchorElement>(list, 'a', /^2 November 2026: /);
    expect(visit.hash).to.match(/okafor/);
  });

  it('says that nothing was found, and shows all again when the words go', async () => {
    await search('nothing-of-the-kind');
    expect(namedIn(list, 'p', 'No patient and no visit with these words.')).to.have.length(1);
    await press('Control+a');
    await press('Backspace');
    await holds('');
    expect(namedIn(list, 'li', /./)).to.have.length(PATIENTS.length);
  });
});
