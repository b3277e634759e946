import { worksAsPublished } from './smoke.js';

/** The chunked files for pages without a build, as they would be loaded from a server. */
const DIST = '/.cache/built/node_modules/pulse-map/dist/';
const at = (file: string): string => new URL(DIST + file, import.meta.url).href;

before(() => import(at('chunks/pulse-map.js')));

describe('the published chunks', () => {
  worksAsPublished(() => import(at('pulse-map.locale-de.js')));
});
