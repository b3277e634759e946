import '../limb-report/define.js';
import '../bedside-test/define.js';
import '../limb-context/define.js';
import '../limb-flags/define.js';
import '../limb-history/define.js';
import '../limb-inspection/define.js';
import '../limb-letter/define.js';
import '../limb-note/define.js';
import '../limb-pressures/define.js';
import '../limb-staging/define.js';
import '../pulse-map/define.js';
import { LimbExamination } from './element.js';

if (!customElements.get('limb-examination')) customElements.define('limb-examination', LimbExamination);

export { LimbExamination };
