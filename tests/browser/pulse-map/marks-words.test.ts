import { expect, fixture, html } from '@open-wc/testing';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import {
  emptyExamination,
  type Mark,
  MARK_KINDS,
  MOST_MARKS,
  parseExaminationText,
} from '../../../src/examination/index.js';
import { regionShape } from '../../../src/anatomy/index.js';
import { click, emulate, focused, press, type } from '../../tools/real-input.js';
import { eventsOf, openMap, settled, status } from '../tools/map.js';
import { allByRole, byRole, nameOf, readableText } from '../tools/perceive.js';
import { drawnMarks, listed, markButton, marksIn, markedRegions, startDrawing } from '../tools/skin.js';

const three = () => markedRegions(['ulcer', 'heel', 'dry'], ['cold', 'shin'], ['gangrene', 'great-toe']);

function summary(map: PulseMap): HTMLElement {
  return map.shadowRoot?.querySelector('.marks summary') as HTMLElement;
}

/** Opens the list and finds its two choices and its button. */
async function adding(map: PulseMap) {
  if (!summary(map).parentElement?.hasAttribute('open')) await click(summary(map));
  await settled(map);
  return {
    kind: byRole<HTMLSelectElement>(map, 'combobox', /^Kind of mark/),
    place: byRole<HTMLSelectElement>(map, 'combobox', /^Place/),
    add: byRole(map, 'button', 'Add'),
  };
}

describe('marks without drawing', () => {
  afterEach(() => emulate({}));

  it('are recorded by keys alone: kind, place, Add', async () => {
    const map = await openMap();
    summary(map).focus();
    await press('Enter', 'Tab');
    expect(nameOf(focused() as Element)).to.match(/^Kind of mark/);
    await type('Gan');
    await press('Tab');
    // By arrows: in WebKit a space, as in “Left great toe”, opens the list instead of going on to look for it.
    const { options, selectedIndex } = focused() as HTMLSelectElement;
    const wanted = [...options].findIndex(({ label }) => label === 'Left great toe');
    await press(...new Array<string>(wanted - selectedIndex).fill('ArrowDown'));
    await press('Tab');
    const events = eventsOf(map);
    await press('Enter');
    await settled(map);
    expect(status(map)).to.equal('Left great toe gangrene recorded');
    expect(listed(map)).to.deep.equal(['Left great toe gangrene']);
    expect(drawnMarks(map)).to.deep.equal(['gangrene']);
    expect(events).to.deep.equal({ input: 1, change: 1 });
  });

  it('ask for a place where none is chosen, and record nothing', async () => {
    const map = await openMap();
    await click((await adding(map)).add);
    await settled(map);
    expect(status(map)).to.equal('Choose a place');
    expect(map.value).to.equal('');
  });

  it('can be put on every region of either side, each kind in its own form', async () => {
    const map = await openMap();
    const { kind, place, add } = await adding(map);
    const places = [...place.options].filter(({ value }) => value);
    expect(places.filter(({ text }) => text.startsWith('Left ')).length).to.equal(28);
    expect(places.filter(({ text }) => text.startsWith('Right ')).length).to.equal(28);
    for (const [i, word] of MARK_KINDS.entries()) {
      const { text, value } = places[(i * 7) % places.length] as HTMLOptionElement;
      kind.value = word;
      place.value = value;
      await click(add);
      await settled(map);
      expect(status(map).startsWith(text), `${status(map)}: ${text}`).to.equal(true);
    }
    expect(marksIn(map).map((mark) => mark.kind)).to.deep.equal([...MARK_KINDS]);
  });

  it('stop at as many as a record holds, and say so', async () => {
    const points = regionShape({ region: 'heel', side: 'left' }, 'area').map(([x, y]): [number, number] => [
      x,
      y,
    ]);
    const marks = Array.from({ length: MOST_MARKS }, (_, i): Mark => ({
      id: `m${i}`,
      kind: 'ulcer',
      points,
    }));
    const map = await openMap({ examination: { ...emptyExamination(), marks } });
    const { place, add } = await adding(map);
    place.value = '5';
    await click(add);
    await settled(map);
    expect(status(map)).to.equal(`Nothing recorded: a record holds at most ${MOST_MARKS} marks.`);
    expect(marksIn(map)).to.have.length(MOST_MARKS);
  });
});

describe('marks by keys on the figure', () => {
  it('are buttons while one draws, and only then', async () => {
    const map = await openMap({ examination: three() });
    expect(markButton(map, /./)).to.equal(undefined);
    await startDrawing(map);
    expect(
      allByRole(map, 'button', /^Left/)
        .filter((button) => button.matches('[part~=mark]'))
        .map(nameOf),
    ).to.deep.equal([
      'Left heel: ulcer; note: dry',
      'Left mid shin: cold below this line',
      'Left great toe: gangrene',
    ]);
  });

  it('are moved by arrows, changed by Enter, deleted by Delete, and undone', async () => {
    const map = await openMap({ examination: three() });
    await startDrawing(map);
    const [before] = marksIn(map) as [Mark];
    markButton(map, /heel/).focus();
    await press('ArrowUp', 'Shift+ArrowLeft');
    await settled(map);
    expect(marksIn(map)[0]?.points).to.deep.equal(
      before.points.map(([x, y]) => [Math.round((x - 1) * 10) / 10, Math.round((y - 8) * 10) / 10]),
    );
    expect(nameOf(focused() as Element)).to.match(/^Left heel: ulcer/);
    await press('Enter');
    await settled(map);
    expect(nameOf(focused() as Element)).to.equal('Ulcer');
    await press('ArrowRight', 'Enter');
    await settled(map);
    expect(listed(map)[0]).to.equal('Left heel gangrene dry');
    await press('Control+z', 'Control+z', 'Control+z');
    await settled(map);
    expect(marksIn(map)[0]).to.deep.equal(before);
    markButton(map, /great toe/).focus();
    await press('Delete');
    await settled(map);
    expect(listed(map)).to.have.length(2);
    expect(map.contains(document.activeElement), 'the focus stays in the map').to.equal(true);
    expect(focused()).to.not.equal(map);
  });

  it('the whole way: from the toolbar to a changed mark and back', async () => {
    const map = await openMap({ examination: three() });
    byRole(map, 'button', 'Draw on the skin').focus();
    await press('Enter', 'Escape');
    await settled(map);
    expect(nameOf(focused() as Element)).to.equal('Draw on the skin');
    expect(byRole(map, 'button', 'Draw on the skin').getAttribute('aria-pressed')).to.equal('false');
    await press('Enter');
    markButton(map, /mid shin/).focus();
    await press('Enter', 'Escape', 'Escape');
    await settled(map);
    expect(nameOf(focused() as Element)).to.equal('Draw on the skin');
  });
});

describe('the list of marks', () => {
  it('says each in words, with what can be done to it', async () => {
    const map = await openMap({ examination: three() });
    expect(listed(map)).to.deep.equal([
      'Left heel ulcer dry',
      'Left mid shin cold below this line',
      'Left great toe gangrene',
    ]);
    for (const what of [
      'Left heel: ulcer',
      'Left mid shin: cold below this line',
      'Left great toe: gangrene',
    ]) {
      byRole(map, 'button', `Edit: ${what}`);
      byRole(map, 'button', `Delete: ${what}`);
    }
  });

  it('opens a mark for change, takes a note, and gives the focus back', async () => {
    const map = await openMap({ examination: three() });
    await click(byRole(map, 'button', 'Edit: Left heel: ulcer'));
    await settled(map);
    expect(readableText(map)).to.contain('Left heel: ulcer');
    expect(byRole(map, 'button', 'Ulcer').getAttribute('aria-pressed')).to.equal('true');
    const note = map.shadowRoot?.querySelector('.palette input') as HTMLInputElement;
    expect(note.value).to.equal('dry');
    note.select();
    await type('wet, 2 cm');
    await press('Enter');
    await settled(map);
    expect(listed(map)[0]).to.equal('Left heel ulcer wet, 2 cm');
    expect(status(map)).to.equal('Left heel ulcer; note: wet, 2 cm');
    await press('Control+a', 'Delete', 'Tab');
    await settled(map);
    expect(listed(map)[0]).to.equal('Left heel ulcer');
    await click(byRole(map, 'button', 'Done'));
    await settled(map);
    expect(nameOf(focused() as Element)).to.equal('Edit: Left heel: ulcer');
  });

  it('deletes a mark and leaves the focus on the next', async () => {
    const map = await openMap({ examination: three() });
    for (const [what, next] of [
      ['Left heel: ulcer', 'Delete: Left mid shin: cold below this line'],
      ['Left great toe: gangrene', 'Delete: Left mid shin: cold below this line'],
    ]) {
      await click(byRole(map, 'button', `Delete: ${what}`));
      await settled(map);
      expect(nameOf(focused() as Element)).to.equal(next);
    }
    await click(byRole(map, 'button', /^Delete: /));
    await settled(map);
    expect(focused()).to.equal(summary(map));
    expect(map.value).to.equal('');
    await click(byRole(map, 'button', 'Undo'));
    await settled(map);
    expect(listed(map)).to.deep.equal(['Left mid shin cold below this line']);
    await click(byRole(map, 'button', 'Redo'));
    await settled(map);
    expect(listed(map)).to.deep.equal([]);
  });

  it('shows the half of the body that a mark is on, where only one fits', async () => {
    const map = await openMap({
      width: 360,
      examination: markedRegions(['cyanosis', 'hand'], ['ulcer', 'heel']),
    });
    expect(drawnMarks(map)).to.deep.equal(['ulcer']);
    await click(byRole(map, 'button', /^Edit: Left hand/));
    await settled(map);
    expect(drawnMarks(map)).to.include('cyanosis selected');
    await click(byRole(map, 'button', /^Edit: Left heel/));
    await settled(map);
    expect(drawnMarks(map)).to.deep.equal(['ulcer selected']);
  });

  for (const state of ['readOnly', 'disabled'] as const) {
    it(`is there to be read where nothing may change (${state})`, async () => {
      const map = await openMap({ examination: three() });
      await startDrawing(map);
      map[state] = true;
      await settled(map);
      expect(listed(map)).to.have.length(3);
      expect(drawnMarks(map)).to.have.length(3);
      expect(allByRole(map, 'button', /^(Edit|Delete|Add|Eraser)/)).to.deep.equal([]);
      expect(byRole(map, 'button', 'Draw on the skin').hasAttribute('disabled')).to.equal(true);
    });
  }
});

describe('marks in a form', () => {
  it('go out with the record and come back unchanged', async () => {
    const form = await fixture<HTMLFormElement>(html`<form><pulse-map name="pulses"></pulse-map></form>`);
    const map = form.querySelector('pulse-map') as unknown as PulseMap;
    map.value = three();
    await settled(map);
    const sent = String(new FormData(form).get('pulses'));
    expect(parseExaminationText(sent)).to.deep.equal({ ok: true, value: three() });
    const other = await openMap();
    other.value = sent;
    await settled(other);
    expect(listed(other)).to.deep.equal(listed(map));
    expect(drawnMarks(other)).to.deep.equal(drawnMarks(map));
    form.reset();
    await settled(map);
    expect(listed(map)).to.deep.equal([]);
  });

  it('that are faulty seal the map, with the name of the field for developers', async () => {
    const map = await openMap({ examination: three() });
    map.value = JSON.stringify({
      ...three(),
      marks: [
        {
          id: 'a',
          kind: 'ulcer',
          points: [
            [1, 1],
            [2, 2],
          ],
        },
      ],
    });
    await settled(map);
    expect(map.faults[0]?.path).to.deep.equal(['marks', 0, 'points']);
    expect(map.recordState).to.equal('sealed');
    expect(readableText(map)).to.include('cannot be shown here');
  });
});
