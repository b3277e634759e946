import { expect } from '@open-wc/testing';
import { bruitAt, parseExaminationText, PLACES, pulseAt } from 'pulse-map/core';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { isListeningSite, isPulseSite } from '../../../src/anatomy/index.js';
import { examined, place } from '../../tools/examinations.js';
import { click, focused, press } from '../../tools/real-input.js';
import { choose, chooser, eventsOf, openMap, saidAt, settled, status } from '../tools/map.js';
import { allByRole, byRole, nameOf, readableText } from '../tools/perceive.js';

async function openTable(examination = examined({})): Promise<PulseMap> {
  const map = await openMap({ width: 1200, examination });
  await click(byRole(map, 'button', 'Table'));
  await settled(map);
  return map;
}

/** Picks an option of a list by keys, as one does who can't see the figure. */
async function pick(map: PulseMap, list: string, option: string): Promise<void> {
  const select = byRole<HTMLSelectElement>(map, 'combobox', list);
  const index = [...select.options].findIndex(({ text }) => text.trim() === option);
  if (index < 0)
    throw new Error(
      `no "${option}" in ${list}: ${[...select.options].map(({ text }) => text.trim()).join()}`,
    );
  select.focus();
  for (let at = select.selectedIndex; at !== index; at += Math.sign(index - at)) {
    await press(index > at ? 'ArrowDown' : 'ArrowUp');
  }
  await settled(map);
}

function recordOf(map: PulseMap) {
  const parsed = parseExaminationText(map.value);
  if (!parsed.ok) throw new Error(map.value);
  return parsed.value;
}

describe('the table', () => {
  it('has a list for every pulse and every bruit, each by name', async () => {
    const map = await openTable();
    const table = byRole(map, 'table', 'Pulses and bruits, from the trunk outward');
    const lists = allByRole(table, 'combobox').map(nameOf);
    expect(new Set(lists).size).to.equal(lists.length);
    const expected =
      PLACES.filter(({ site }) => isPulseSite(site)).length +
      PLACES.filter(({ site }) => isListeningSite(site)).length;
    expect(lists).to.have.length(expected);
    expect(lists).to.include.members([
      'Left femoral, pulse',
      'Left femoral, bruit',
      'Abdominal aorta, pulse',
      'Right renal, bruit',
    ]);
  });

  it('goes from the trunk outward, arms before legs', async () => {
    const map = await openTable();
    const rows = [...byRole(map, 'table').querySelectorAll('tbody tr:not(.part) > th')].map((th) =>
      th.textContent?.trim(),
    );
    expect(rows.indexOf('Femoral')).to.be.below(rows.indexOf('Popliteal'));
    expect(rows.indexOf('Subclavian')).to.be.below(rows.indexOf('Radial'));
    expect(rows.indexOf('Radial')).to.be.below(rows.indexOf('Abdominal aorta'));
  });

  it('records a grade, a reason and a bruit by keys, tells the page, and shows the same on the figure', async () => {
    const map = await openTable();
    const events = eventsOf(map);
    await pick(map, 'Left popliteal, pulse', '1, reduced');
    expect(status(map)).to.match(/^Left popliteal 1, reduced/);
    expect(events.change).to.be.above(0);
    await pick(map, 'Right radial, pulse', 'Line in place');
    await pick(map, 'Left femoral, bruit', 'Systolic');
    const record = recordOf(map);
    expect(pulseAt(record, place('left popliteal'))).to.deep.equal({ grade: 'reduced' });
    expect(pulseAt(record, place('right radial'))).to.deep.equal({ couldNotExamine: 'line-in-place' });
    expect(bruitAt(record, place('left femoral'))).to.deep.equal({ bruit: 'systolic' });
    await click(byRole(map, 'button', 'Figure'));
    await settled(map);
    expect(saidAt(map, 'left popliteal')).to.equal('1, reduced');
    expect(saidAt(map, 'right radial')).to.equal('not assessable: line in place');
  });

  it('shows in its lists what the record says after undo and redo, too', async () => {
    const map = await openTable();
    const said = (): (string | undefined)[] =>
      ['Left popliteal, pulse', 'Left femoral, bruit'].map((list) =>
        byRole<HTMLSelectElement>(map, 'combobox', list).selectedOptions[0]?.text.trim(),
      );
    const grades = ['2, normal', '1, reduced', '0, absent'] as const;
    await pick(map, 'Left popliteal, pulse', grades[0]);
    const seen = [said()];
    for (const act of [
      () => pick(map, 'Left popliteal, pulse', grades[1]),
      () => pick(map, 'Left femoral, bruit', 'None'),
      () => pick(map, 'Left popliteal, pulse', grades[2]),
    ]) {
      await act();
      seen.push(said());
    }
    for (const to of ['undo', 'redo', 'undo'] as const) {
      for (let i = 1; i < seen.length; i++) {
        map[to]();
        await settled(map);
        expect(said(), `${to} ${i}`).to.deep.equal(to === 'undo' ? seen.at(-1 - i) : seen[i]);
      }
    }
  });

  it('takes back a pulse without the bruit at the same site', async () => {
    const map = await openTable(examined({ 'left femoral': { grade: 'reduced', note: 'scar' } }));
    await pick(map, 'Left femoral, bruit', 'Continuous');
    await pick(map, 'Left femoral, pulse', 'Not examined');
    const record = recordOf(map);
    expect(pulseAt(record, place('left femoral'))?.grade).to.equal(undefined);
    expect(bruitAt(record, place('left femoral'))).to.deep.equal({ bruit: 'continuous' });
  });

  it('shows what was recorded on the figure: marks, Doppler signal, notes, and which sites are asymmetrical', async () => {
    const map = await openTable(
      examined({
        'left popliteal': { grade: 'absent', doppler: 'monophasic', note: 'warm knee' },
        'right popliteal': { grade: 'normal', thrill: true },
      }),
    );
    const row = [...byRole(map, 'table').querySelectorAll('tr')].find((tr) =>
      readableText(tr).startsWith('Popliteal'),
    );
    const text = readableText(row as Element);
    expect(text).to.include('asymmetrical');
    expect(text).to.include('Thrill');
    expect(text).to.match(/Doppler signal ?: monophasic/);
    expect(text).to.include('Left: warm knee');
    expect(
      byRole<HTMLSelectElement>(map, 'combobox', 'Left popliteal, pulse').selectedOptions[0]?.text.trim(),
    ).to.equal('0, absent');
  });

  it('opens the chooser for the rest, and gives the focus back', async () => {
    const map = await openTable();
    await click(byRole(map, 'button', 'Left popliteal: thrill, Doppler, note and more'));
    await settled(map);
    expect(nameOf(chooser(map) as HTMLElement)).to.equal('Left popliteal');
    await choose(map, 'button', 'Thrill');
    expect(readableText(byRole(map, 'table'))).to.include('Thrill');
    await press('Escape');
    await settled(map);
    expect(chooser(map)).to.equal(undefined);
    expect(nameOf(focused() as Element)).to.match(/^Left popliteal/);
  });

  it('speaks the scale in use', async () => {
    const map = await openTable();
    await pick(map, 'Scale', '0 to 4');
    const options = [...byRole<HTMLSelectElement>(map, 'combobox', 'Left femoral, pulse').options].map(
      ({ text }) => text.trim(),
    );
    expect(options).to.include.members(['3, increased', '4, bounding']);
  });

  it('can be read but not changed in a read-only map', async () => {
    const map = await openTable(examined({ 'left femoral': 'reduced' }));
    map.readOnly = true;
    await settled(map);
    const lists = allByRole<HTMLSelectElement>(byRole(map, 'table'), 'combobox');
    expect(lists.length).to.be.above(20);
    for (const list of lists) expect(list.disabled).to.equal(true);
    expect(readableText(byRole(map, 'table'))).to.include('Femoral');
  });
});
