import { expect } from '@open-wc/testing';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { examined } from '../../tools/examinations.js';
import { press, type } from '../../tools/real-input.js';
import { choose, eventsOf, openMap, openSite, settled, status } from '../tools/map.js';
import { allByRole } from '../tools/perceive.js';
import { markButton, markedRegions, marksIn, startDrawing } from '../tools/skin.js';

async function inForm(): Promise<{ form: HTMLFormElement; map: PulseMap }> {
  const map = await openMap({ examination: examined({ 'left femoral': 'absent' }) });
  const form = document.createElement('form');
  map.name = 'pulses';
  map.before(form);
  form.append(map);
  await settled(map);
  return { form, map };
}

const noteOf = (map: PulseMap): string | undefined => map.examination.pulses?.radial?.left?.note;

describe('a note being typed in the chooser', () => {
  it('is in the value and in the form at every key, spaces on the way kept in the field', async () => {
    const { form, map } = await inForm();
    await openSite(map, 'left radial');
    await choose(map, 'button', 'Add a note');
    const events = eventsOf(form);
    const said = status(map);
    await type('Art ');
    await settled(map);
    expect(noteOf(map)).to.equal('Art');
    await type('line');
    await settled(map);
    expect(noteOf(map)).to.equal('Art line');
    expect(String(new FormData(form).get('pulses'))).to.include('"note":"Art line"');
    expect(allByRole<HTMLTextAreaElement>(map, 'textbox')[0]?.value).to.equal('Art line');
    expect(events).to.deep.equal({ input: 7, change: 0 });
    expect(status(map), 'nothing is spoken over the typing').to.equal(said);
    await press('Enter');
    await settled(map);
    expect(events).to.deep.equal({ input: 7, change: 1 });
    expect(status(map)).to.include('note: Art line');
  });

  it('is one step of undo', async () => {
    const { map } = await inForm();
    await openSite(map, 'left radial');
    await choose(map, 'button', 'Add a note');
    await type('Cold hand');
    await press('Escape');
    await settled(map);
    expect(noteOf(map)).to.equal('Cold hand');
    map.undo();
    expect(noteOf(map)).to.equal(undefined);
    expect(map.store.canUndo).to.equal(false);
    map.redo();
    expect(noteOf(map)).to.equal('Cold hand');
  });

  it('stays with its record: of another one the field shows and records its own note', async () => {
    const { map } = await inForm();
    await openSite(map, 'left radial');
    await choose(map, 'button', 'Add a note');
    await type('Art line');
    await settled(map);
    map.value = JSON.stringify(examined({ 'left radial': { grade: 'absent', note: 'cold' } }));
    await settled(map);
    expect(allByRole<HTMLTextAreaElement>(map, 'textbox')[0]?.value).to.equal('cold');
    await press('End');
    await type('!');
    expect(noteOf(map)).to.equal('cold!');
  });

  it('is sent by a submit in the middle of it, and survives removal from the page', async () => {
    const { form, map } = await inForm();
    let got: unknown;
    form.addEventListener('submit', (event) => {
      event.preventDefault();
      got = new FormData(form).get('pulses');
    });
    await openSite(map, 'left radial');
    await choose(map, 'button', 'Add a note');
    await type('Dressing');
    form.requestSubmit();
    expect(got).to.include('"note":"Dressing"');
    map.remove();
    expect(map.value).to.equal(got);
  });
});

describe('a note being typed on a mark of the skin', () => {
  it('is in the value and in the form at every key, and one step of undo', async () => {
    const { form, map } = await inForm();
    map.examination = markedRegions(['ulcer', 'heel']);
    await settled(map);
    await startDrawing(map);
    markButton(map, /ulcer/).focus();
    await press('Enter');
    await settled(map);
    const field = map.shadowRoot?.querySelector('.palette input') as HTMLInputElement;
    field.focus();
    const events = eventsOf(form);
    const seen: unknown[] = [];
    for (const key of 'wet 2') {
      await type(key);
      await settled(map);
      seen.push(marksIn(map)[0]?.note);
      expect(field.value.length, 'a space on the way stays in the field').to.equal(seen.length);
    }
    expect(seen).to.deep.equal(['w', 'we', 'wet', 'wet', 'wet 2']);
    expect(String(new FormData(form).get('pulses'))).to.include('"note":"wet 2"');
    expect(events).to.deep.equal({ input: 4, change: 0 });
    await press('Tab');
    expect(events.change).to.equal(1);
    map.undo();
    expect(marksIn(map)[0]?.note).to.equal(undefined);
    expect(map.store.canUndo).to.equal(false);
    map.redo();
    expect(marksIn(map)[0]?.note).to.equal('wet 2');
  });
});
