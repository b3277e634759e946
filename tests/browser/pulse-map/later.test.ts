// What a map fetches after its first paint, where it comes late or cannot be had. Nothing here fetches it beforehand.
import { expect } from '@open-wc/testing';
import 'pulse-map/elements/pulse-map/define';
import 'pulse-map/locale/de';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { later } from '../../../src/elements/pulse-map/fetched.js';
import { reader } from '../../../src/elements/pulse-reading/reader.js';
import { examined } from '../../tools/examinations.js';
import { allByRole, byRole, painted, readableText } from '../tools/perceive.js';

const { load: fetchLater } = later;
const { load: fetchReader } = reader;
/** What a test before this one has fetched. */
let fetched = later.part;

/** A map on a page that can fetch nothing more. */
function mapOffline(): PulseMap {
  fetched ??= later.part;
  later.part = reader.part = undefined;
  later.load = reader.load = () => Promise.resolve();
  const map = document.createElement('pulse-map') as unknown as PulseMap;
  document.body.append(map);
  return map;
}

/** The arteries that are drawn as without flow. */
const hollow = (map: PulseMap): string | null | undefined =>
  map.shadowRoot?.querySelector('.ground .hollow')?.getAttribute('d');

function online(): void {
  later.load = async () => {
    if (fetched) later.part = fetched;
    else await fetchLater.call(later);
  };
  reader.load = fetchReader;
}

describe('a map whose later parts come', () => {
  for (const lang of ['en', 'de'])
    for (const width of [320, 390, 500, 820, 1024, 1280])
      it(`moves nothing on the page by a line or more, ${width} px wide, in ${lang}`, async () => {
        const map = mapOffline();
        map.lang = lang;
        map.style.inlineSize = `${width}px`;
        await map.updateComplete;
        await painted();
        const before = map.offsetHeight;
        online();
        await later.load();
        map.requestUpdate();
        await painted();
        await map.updateComplete;
        expect(map.shadowRoot?.querySelector('pulse-reading'), 'the reading is there').to.not.equal(null);
        expect(Math.abs(map.offsetHeight - before)).to.be.below(24);
        map.remove();
      });
});

describe('a map whose later parts cannot be had', () => {
  let map: PulseMap;

  beforeEach(() => (map = mapOffline()));
  afterEach(async () => {
    online();
    await later.load();
    await map.updateComplete;
    map.remove();
  });

  it('still takes findings, says that their reading follows, and gives it as soon as it can', async () => {
    await map.updateComplete;
    for (const [name, key] of [
      ['femoral', '2'],
      ['popliteal', '0'],
    ] as const) {
      const site = byRole(map, 'button', new RegExp(`^Left ${name}: `));
      site.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, composed: true }));
      await map.updateComplete;
    }
    await painted();
    const text = readableText(map);
    expect(text).to.include('Left popliteal 0, absent');
    expect(text).to.include('Recorded. The reading follows');
    expect(text, 'no claim').not.to.match(/occlusion|%/i);
    expect(hollow(map), 'the arteries as in health').to.equal('');
    online();
    map.requestUpdate();
    await map.updateComplete;
    expect(readableText(map)).to.include('Occlusion somewhere between left femoral and left popliteal');
    expect(hollow(map), 'the artery without a pulse').not.to.equal('');
  });

  it('says so where a hand asks for one, and gives it as soon as it can', async () => {
    await map.updateComplete;
    map.openPlace('left femoral');
    await painted();
    expect(readableText(map)).to.include('could not be fetched');
    byRole(map, 'button', 'Table').click();
    await painted();
    expect(map.display, 'the figure stays').to.equal('figure');
    expect(allByRole(map, 'dialog')).to.be.empty;
    online();
    map.openPlace('left femoral');
    await map.updateComplete;
    expect(allByRole(map, 'dialog')).to.have.length(1);
  });

  it('keeps a record that it cannot read yet as it came, says so, and reads it on request', async () => {
    const given = ` ${JSON.stringify(examined({ 'left femoral': 'normal', 'left popliteal': 'absent' }))}`;
    map.value = given;
    await map.updateComplete;
    await painted();
    expect(readableText(map)).to.match(/^This entry stays exactly as it is\. .* Try again$/);
    expect([map.value, map.recordState]).to.deep.equal([given, 'waiting']);
    online();
    byRole(map, 'button', 'Try again').click();
    await later.load();
    await map.updateComplete;
    expect(map.recordState).to.equal('readable');
    expect(readableText(map)).to.include('Occlusion between left femoral and left popliteal');
  });
});
