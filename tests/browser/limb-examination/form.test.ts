import { readableText } from '../tools/perceive.js';
import { click, press, setViewport } from '../../tools/real-input.js';
import { examined } from '../../tools/examinations.js';
import { behavesLikeAFormControl } from '../tools/form-contract.js';
import { keepsWhatItCannotRead, UNREADABLE_RECORDS } from '../tools/unread-contract.js';
import { allByRole, byRole } from '../tools/perceive.js';
import { drawn } from '../tools/limbs.js';
import 'pulse-map/elements/limb-examination/define';

before(() => setViewport({ width: 1000, height: 900 }));

const FIRST = JSON.stringify({
  ...examined({ 'left femoral': 'normal', 'left popliteal': 'absent' }),
  history: { leg: { left: { symptom: 'claudication', distance: 150 } } },
});
const SECOND = JSON.stringify({ ...examined({}), pressures: { toe: { left: 44 } } });

keepsWhatItCannotRead({ tag: 'limb-examination', readable: FIRST, unreadable: UNREADABLE_RECORDS });

behavesLikeAFormControl({
  tag: 'limb-examination',
  first: FIRST,
  second: SECOND,
  seen: (control) => readableText(control),
  async act(control) {
    await drawn(control);
    await click(byRole(control, 'radio', 'Acute'));
    await drawn(control);
  },
  async tryAll(control) {
    await drawn(control);
    const radio = allByRole(control, 'radio', 'Chronic')[0];
    if (radio) {
      await click(radio);
      radio.focus();
      await press('1', 'ArrowRight', 'Delete', 'Control+z');
    }
    for (const button of allByRole(control, 'button', /^(Undo|Redo)$/)) await click(button);
    for (const box of allByRole(control, 'checkbox').slice(0, 3)) await click(box, { kind: 'touch' });
    await drawn(control);
  },
  takesFocus: (element) => (element?.getRootNode() as ShadowRoot)?.host?.localName === 'limb-examination',
});
