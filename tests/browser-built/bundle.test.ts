import 'pulse-map/bundle';
import { worksAsPublished } from './smoke.js';

/** The file of words for pages without a build, which stands beside the bundle. */
const WORDS = new URL('/.cache/built/node_modules/pulse-map/dist/pulse-map.locale-de.js', import.meta.url);

describe('the published single file', () => {
  worksAsPublished(() => import(WORDS.href));
});
