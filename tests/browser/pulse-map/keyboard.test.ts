import { expect } from '@open-wc/testing';
import { html } from 'lit';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { examined } from '../../tools/examinations.js';
import { click, focused, press, setViewport, type } from '../../tools/real-input.js';
import {
  chooser,
  eventsOf,
  leads,
  mapWithin,
  openMap,
  openSite,
  saidAll,
  saidAt,
  settled,
  site,
  status,
} from '../tools/map.js';
import { allByRole, byRole, nameOf, readableText } from '../tools/perceive.js';
import { markButton, markedRegions, marksIn, startDrawing } from '../tools/skin.js';

/** The site that has the focus, by name; empty when none has. */
function at(): string {
  const element = focused();
  return element?.matches('[part~=site]') ? nameOf(element).replace(/:.*/s, '') : '';
}

async function keys(map: PulseMap, ...pressed: string[]): Promise<void> {
  for (const key of pressed) {
    await press(key);
    await settled(map);
  }
}

async function startAt(map: PulseMap, name: string): Promise<void> {
  site(map, name).focus();
  await settled(map);
}

const HELP_KEYS: Record<string, (map: PulseMap) => Promise<void>> = {
  async 'Up, Down'(map) {
    await startAt(map, 'left popliteal');
    await keys(map, 'ArrowUp', 'ArrowUp');
    expect(at()).to.equal('Left femoral');
    await keys(map, 'ArrowDown', 'ArrowDown', 'ArrowDown');
    expect(at()).to.equal('Left posterior tibial');
  },
  async 'Left, Right'(map) {
    await startAt(map, 'right femoral');
    await keys(map, 'ArrowRight');
    expect(at(), 'the patient’s left lies to the reader’s right').to.equal('Left femoral');
    await keys(map, 'ArrowLeft');
    expect(at()).to.equal('Right femoral');
  },
  async 'Page Up, Page Down'(map) {
    await startAt(map, 'right femoral');
    await keys(map, 'PageDown', 'PageDown');
    expect(at()).to.equal('Right adductor canal');
    await keys(map, 'PageUp');
    expect(at()).to.equal('Left femoral');
  },
  async '0 to 4'(map) {
    await startAt(map, 'left radial');
    for (const [key, said] of [
      ['0', '0, absent'],
      ['1', '1, reduced'],
      ['2', '2, normal'],
      ['3', '3, bounding'],
    ] as const) {
      await keys(map, key);
      expect(saidAt(map, 'left radial')).to.equal(said);
    }
    await keys(map, '4');
    expect(saidAt(map, 'left radial'), 'no such step on 0 to 3').to.equal('3, bounding');
    expect(status(map)).to.equal('4 is not on the scale 0 to 3');
  },
  async B(map) {
    await startAt(map, 'left carotid');
    for (const said of ['no bruit', 'systolic bruit', 'continuous bruit', 'not examined']) {
      await keys(map, 'b');
      expect(saidAt(map, 'left carotid')).to.equal(said);
    }
  },
  async T(map) {
    await startAt(map, 'left femoral');
    await keys(map, 't');
    expect(saidAt(map, 'left femoral')).to.equal('thrill');
    await keys(map, 'T');
    expect(saidAt(map, 'left femoral')).to.equal('not examined');
  },
  async E(map) {
    await startAt(map, 'abdominal aorta');
    await keys(map, 'e');
    expect(saidAt(map, 'abdominal aorta')).to.equal('expansile');
  },
  async X(map) {
    await startAt(map, 'right radial');
    await keys(map, 'x');
    const group = byRole(chooser(map) as HTMLElement, 'radiogroup', 'Not assessable');
    expect(group.contains(focused()), 'the reasons have the focus').to.equal(true);
    await keys(map, 'ArrowDown', 'Enter');
    expect(saidAt(map, 'right radial')).to.equal('not assessable: cast');
    expect(at()).to.equal('Right radial');
  },
  async Enter(map) {
    await startAt(map, 'right brachial');
    await keys(map, 'Enter');
    expect(nameOf(chooser(map) as HTMLElement)).to.equal('Right brachial');
    expect(chooser(map)?.contains(focused()), 'the focus goes along').to.equal(true);
  },
  async Delete(map) {
    await startAt(map, 'right femoral');
    await keys(map, '2', 't', 'Delete');
    expect(saidAt(map, 'right femoral')).to.equal('not examined');
    expect(status(map)).to.equal('Right femoral cleared');
  },
  async A(map) {
    await startAt(map, 'right femoral');
    await keys(map, '1', 'a');
    for (let next; (next = allByRole(map, 'button', /: \d+ pulses? normal/)[0]); await settled(map))
      await click(next);
    expect(Object.values(saidAll(map)).filter((said) => said === '2, normal')).to.have.length(22);
    expect(saidAt(map, 'right femoral')).to.equal('1, reduced');
  },
  async 'Ctrl Z, Ctrl Y'(map) {
    await startAt(map, 'right femoral');
    await keys(map, '1', 'Control+z');
    expect(saidAt(map, 'right femoral')).to.equal('not examined');
    await keys(map, 'Control+y');
    expect(saidAt(map, 'right femoral')).to.equal('1, reduced');
    await keys(map, 'Control+z', 'Control+Shift+z');
    expect(saidAt(map, 'right femoral')).to.equal('1, reduced');
  },
  async Escape(map) {
    await startAt(map, 'right femoral');
    await keys(map, 'Enter', 'Escape');
    expect(chooser(map)).to.equal(undefined);
    expect(at()).to.equal('Right femoral');
    await click(byRole(map, 'button', 'Grade several as 1, reduced'));
    await startAt(map, 'right femoral');
    await keys(map, 'Escape');
    expect(allByRole(map, 'button', 'Stop grading')).to.have.length(0);
  },
  async '?'(map) {
    await startAt(map, 'right femoral');
    await keys(map, '?');
    expect(readableText(map)).to.include('towards the heart');
    expect(at(), 'the focus stays').to.equal('Right femoral');
    await keys(map, '?');
    expect(readableText(map)).to.not.include('towards the heart');
  },
  async 'Arrows on a mark'(map) {
    const mark = await drawingWithMark(map);
    const before = marksIn(map)[0]?.points ?? [];
    mark.focus();
    await keys(map, 'ArrowRight', 'Shift+ArrowUp');
    expect(marksIn(map)[0]?.points).to.deep.equal(
      before.map(([x, y]) => [Math.round((x + 8) * 10) / 10, Math.round((y - 1) * 10) / 10]),
    );
  },
  async 'Enter, Delete on a mark'(map) {
    (await drawingWithMark(map)).focus();
    await keys(map, 'Enter');
    expect(byRole(map, 'button', 'Ulcer').getAttribute('aria-pressed')).to.equal('true');
    markButton(map, /heel/).focus();
    await keys(map, 'Delete');
    expect(marksIn(map)).to.deep.equal([]);
  },
};

async function drawingWithMark(map: PulseMap): Promise<SVGGElement> {
  map.value = markedRegions(['ulcer', 'heel']);
  await settled(map);
  await startDrawing(map);
  return markButton(map, /heel/);
}

describe('the keys that the help panel lists', () => {
  it('are each tried here', async () => {
    const map = await openMap();
    await click(byRole(map, 'button', 'Help and keys'));
    await settled(map);
    const listed = [...(map.shadowRoot?.querySelectorAll('.help dt') ?? [])].map((key) => key.textContent);
    expect(listed).to.have.members(Object.keys(HELP_KEYS));
  });

  for (const [key, does] of Object.entries(HELP_KEYS)) {
    it(`do what it says: ${key}`, async () => does(await openMap()));
  }
});

describe('the sites by keys', () => {
  it('are one tab stop, which remembers where one was', async () => {
    await setViewport({ width: 940, height: 1000 });
    const { map } = await mapWithin(
      html`<div><button>Before</button><pulse-map no-reading></pulse-map><button>After</button></div>`,
    );
    const [before, after] = [
      ...(map.parentElement?.querySelectorAll(':scope > button') ?? []),
    ] as HTMLElement[];
    before?.focus();
    const stops: string[] = [];
    while (focused() !== after && stops.length < 12) {
      await keys(map, 'Tab');
      stops.push(at() || nameOf(focused() as Element));
    }
    expect(stops.filter((stop) => stop === 'Right femoral')).to.have.length(1);
    expect(stops.filter((stop) => /^(Left|Right) [a-z]/.test(stop))).to.have.length(1);
    expect(stops.indexOf('Right femoral'), 'the toolbar is one stop before').to.equal(1);
    await startAt(map, 'right femoral');
    await keys(map, 'ArrowRight', 'ArrowDown');
    after?.focus();
    while (!at()) await keys(map, 'Shift+Tab');
    expect(at()).to.equal('Left adductor canal');
  });

  it('lead from the active site when one comes by mouse', async () => {
    const map = await openMap();
    await openSite(map, 'left brachial');
    await keys(map, 'Escape', 'ArrowDown');
    expect(at()).to.equal('Left radial');
  });

  it('leave keys with Alt, and those of browser and page, alone', async () => {
    const map = await openMap();
    const events = eventsOf(map);
    await startAt(map, 'right femoral');
    const stopped: string[] = [];
    map.parentElement!.addEventListener('keydown', (event) =>
      stopped.push(`${event.key} ${event.defaultPrevented}`),
    );
    await keys(map, 'Alt+2', 'Control+2', 'k');
    expect(stopped.filter((entry) => /^[2k] /.test(entry))).to.deep.equal(['2 false', '2 false', 'k false']);
    expect(events.input).to.equal(0);
  });

  it('say why a key has no effect where one only listens, or only feels', async () => {
    const map = await openMap();
    await startAt(map, 'left renal');
    await keys(map, '2');
    expect(status(map)).to.equal('Left renal is for auscultation only; there is no pulse to grade');
    await startAt(map, 'left radial');
    await keys(map, 'b');
    expect(status(map)).to.equal('Left radial is for palpation only');
  });

  it('can be read but not changed in a read-only map', async () => {
    const map = await openMap({ examination: examined({ 'right femoral': 'reduced' }) });
    map.readOnly = true;
    await startAt(map, 'right femoral');
    await keys(map, '0', 'Delete', 'Enter', 'ArrowRight');
    expect(chooser(map)).to.equal(undefined);
    expect(at()).to.equal('Left femoral');
    expect(saidAt(map, 'right femoral')).to.equal('1, reduced');
  });
});

describe('the chooser by keys', () => {
  it('walks the grades by arrows without recording, takes one by Enter, and gives the focus back', async () => {
    const map = await openMap();
    const events = eventsOf(map);
    await startAt(map, 'left popliteal');
    await keys(map, 'Enter', 'ArrowRight', 'ArrowRight');
    expect(nameOf(focused() as Element)).to.equal('2, normal');
    expect(events.input).to.equal(0);
    await keys(map, 'Enter');
    expect(saidAt(map, 'left popliteal')).to.equal('2, normal');
    expect(at()).to.equal('Left popliteal');
  });

  it('opens at the grade that stands, and takes digits and letters as the sites do', async () => {
    const map = await openMap({ examination: examined({ 'left popliteal': 'reduced' }) });
    await startAt(map, 'left popliteal');
    await keys(map, 'Enter');
    expect(nameOf(focused() as Element)).to.equal('1, reduced');
    await keys(map, 't', '0');
    expect(saidAt(map, 'left popliteal')).to.equal('0, absent; thrill');
    expect(at()).to.equal('Left popliteal');
  });

  it('leaves every letter to the note while it is written', async () => {
    const map = await openMap();
    await startAt(map, 'left radial');
    await keys(map, 'Enter');
    byRole(chooser(map) as HTMLElement, 'button', 'Add a note').focus();
    await keys(map, 'Enter');
    await type('beat at 2 Hz, ask? ');
    await press('ArrowLeft', 'Delete', 'Enter');
    await settled(map);
    expect(saidAt(map, 'left radial')).to.equal('note: beat at 2 Hz, ask?');
  });

  it('goes from site to site, the focus within, and gives it back to the last', async () => {
    const map = await openMap();
    await startAt(map, 'right popliteal');
    await keys(map, 'Enter');
    byRole(chooser(map) as HTMLElement, 'button', 'Next: left popliteal').focus();
    await keys(map, 'Enter');
    expect(chooser(map)?.contains(focused())).to.equal(true);
    await keys(map, '1');
    expect(saidAt(map, 'left popliteal')).to.equal('1, reduced');
    expect(at()).to.equal('Left popliteal');
  });
});

describe('the toolbar by keys', () => {
  it('is walked by arrows, Home and End, and remembers where one was', async () => {
    const map = await openMap();
    byRole(map, 'button', 'Grade several as 0, absent').focus();
    await keys(map, 'ArrowRight');
    expect(nameOf(focused() as Element)).to.equal('Grade several as 1, reduced');
    await keys(map, 'End', 'ArrowRight');
    expect(nameOf(focused() as Element), 'over the end to the first that can be used').to.equal(
      'Grade several as 0, absent',
    );
    await keys(map, 'ArrowRight', 'Tab', 'Shift+Tab');
    expect(nameOf(focused() as Element)).to.equal('Grade several as 1, reduced');
    await keys(map, 'Enter');
    expect(byRole(map, 'button', 'Stop grading')).to.exist;
  });
});

describe('the live region', () => {
  it('says what was recorded and how the reading changed, once', async () => {
    const map = await openMap();
    await startAt(map, 'left femoral');
    await keys(map, '2');
    expect(status(map)).to.equal('Left femoral 2, normal');
    await startAt(map, 'left popliteal');
    await keys(map, '0');
    expect(status(map)).to.equal(
      'Left popliteal 0, absent. Occlusion between left femoral and left popliteal.',
    );
    await startAt(map, 'right radial');
    await keys(map, '2');
    expect(status(map), 'no news, so nothing more').to.equal('Right radial 2, normal');
    await startAt(map, 'left popliteal');
    await keys(map, '2');
    expect(status(map)).to.equal('Left popliteal 2, normal. No occlusive lesion suggested now.');
    await keys(map, 'Control+z');
    expect(status(map)).to.equal('One step taken back. Occlusion between left femoral and left popliteal.');
    expect(leads(map)).to.deep.equal(['Occlusion somewhere between left femoral and left popliteal, 72%']);
  });

  it('is one and the same element throughout, so that it is heard', async () => {
    const map = await openMap();
    const region = byRole(map, 'status');
    await startAt(map, 'left femoral');
    await keys(map, '2', 'Delete', '?');
    expect(byRole(map, 'status')).to.equal(region);
  });
});
