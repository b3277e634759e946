import 'pulse-map';
import { worksAsPublished } from './smoke.js';

describe('the published modules', () => {
  worksAsPublished(() => import('pulse-map/locale/de'));
});
