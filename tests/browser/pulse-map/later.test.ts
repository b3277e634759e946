// What a map fetches after its first paint, where it comes late or cannot be had. Nothing here fetches it beforehand.
import { expect } from '@open-wc/testing';
import 'pulse-map/elements/pulse-map/define';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { later } from '../../../src/elements/pulse-map/fetched.js';
import { reader } from '../../../src/elements/pulse-reading/reader.js';
import { examined } from '../../tools/examinations.js';
import { allByRole, byRole, painted, readableText } from '../tools/perceive.js';

const { load: fetchLater } = later;
const { load: fetchReader } = reader;

/** A map on a page that can fetch nothing more. */
function mapOffline(): PulseMap {
  later.load = reader.load = () => Promise.resolve();
  const map = document.createElement('pulse-map') as unknown as PulseMap;
  document.body.append(map);
  return map;
}

function online(): void {
  later.load = fetchLater;
  reader.load = fetchReader;
}

describe('a map whose later parts cannot be had', () => {
  let map: PulseMap;

  beforeEach(() => (map = mapOffline()));
  afterEach(() => {
    online();
    map.remove();
  });

  it('still shows a record, and what the bedside rule says of it', async () => {
    map.value = examined({ 'left femoral': 'normal', 'left popliteal': 'absent' });
    await map.updateComplete;
    await painted();
    const text = readableText(map);
    expect(text).to.include('Block between left femoral and left popliteal');
    expect(text, 'no probability').not.to.include('%');
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
});
