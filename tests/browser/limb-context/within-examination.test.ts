import { expect, fixture } from '@open-wc/testing';
import type { LimbExamination } from 'pulse-map';
import { click, setViewport } from '../../tools/real-input.js';
import { drawn } from '../tools/limbs.js';
import { allByRole, byRole } from '../tools/perceive.js';
import 'pulse-map/elements/limb-examination/define';

before(() => setViewport({ width: 1000, height: 900 }));

describe('the clinical background, within the whole examination', () => {
  it('goes into the record and the summary, with one undo, and leaves what history asks alone', async () => {
    const control = await fixture<LimbExamination>('<limb-examination></limb-examination>');
    await drawn(control);
    const summary = [...control.renderRoot.querySelectorAll('summary')].find((s) =>
      s.textContent?.includes('Clinical background'),
    );
    await click(summary!);
    await click(byRole(control, 'radio', '60 to 79'));
    await click(byRole(control, 'radio', 'Embolism'));
    await drawn(control);
    expect(control.examination.context).to.deep.equal({ ageBand: '60-79', mechanism: 'embolic' });
    expect(allByRole(control, 'radiogroup', /Claudication in, right leg/)).to.have.length(0);
    await control.openPart('summary');
    await drawn(control);
    await click(byRole(control, 'button', 'Letter'));
    await drawn(control);
    const letter = byRole(control, 'textbox', /^Text, to be changed/) as HTMLTextAreaElement;
    expect(letter.value).to.contain('Age 60 to 79; cause thought to be embolism.');
    control.undo();
    expect(control.examination.context).to.deep.equal({ ageBand: '60-79' });
  });
});
