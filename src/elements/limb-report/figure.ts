import { html, nothing, type TemplateResult } from 'lit';
import { unsafeSVG } from 'lit/directives/unsafe-svg.js';
import { limbKey, LIMBS } from '../../anatomy/index.js';
import { drawnRecord, type View } from '../../drawing/index.js';
import { PRINTED } from '../../drawing/palette.js';
import { stillPicture } from '../../drawing/still/index.js';
import type { BodyPart } from '../../report/index.js';
import { limbLine } from '../pulse-reading/limb-line.js';
import type { ReportView } from './view.js';

/** Width for which the picture is laid out, in px: of one limb with its names beside it, of more without. */
const NAMED = 400;
const SMALL = 300;

/** The view that shows every affected part. */
function viewOf(affected: readonly BodyPart[]): View {
  const has = (part: BodyPart): boolean => affected.includes(part);
  const legs = has('left leg') || has('right leg');
  const arms = has('left arm') || has('right arm');
  const elsewhere = has('right head') || has('left head');
  if (elsewhere || (legs && arms) || !(legs || arms)) return 'whole';
  const kind = legs ? 'leg' : 'arm';
  if (has(`right ${kind}`) && has(`left ${kind}`)) return `${kind}s`;
  return has(`right ${kind}`) ? `right-${kind}` : `left-${kind}`;
}

/** The affected limb as a picture, and laid flat; nothing while no pulse is graded. */
export function renderPicture(view: ReportView): TemplateResult | typeof nothing {
  const { examination, earlier, report, words, parts } = view;
  if (!examination.pulses && !examination.marks) return nothing;
  const named = report.conclusion.limbs.map(({ limb }) => limb);
  const affected = report.parts.filter((part) => part.affected).map(({ at }) => at);
  const shown = viewOf(named.length ? named : affected);
  const one = /-(leg|arm)$/.test(shown);
  const picture = stillPicture(examination, {
    words,
    view: shown,
    width: one ? NAMED : SMALL,
    names: one,
    scheme: view.printing ? 'light' : 'page',
    ...(view.printing && { colours: PRINTED }),
    ...(earlier && { earlier }),
  });
  return html`<figure part="figure" class="picture ${one ? 'one' : ''}">
    ${unsafeSVG(picture.text)}
    ${one ? nothing : html`<figcaption>${parts.report.scale(examination.scale)}</figcaption>`}
  </figure>`;
}

/** The limbs in which something is found, each laid flat. */
export function renderLines(view: ReportView): TemplateResult | typeof nothing {
  const { examination, earlier, report, words } = view;
  const limbs = LIMBS.filter((limb) => report.conclusion.limbs.some((one) => one.limb === limbKey(limb)));
  if (!limbs.length) return nothing;
  const { marks, flow } = drawnRecord(examination, earlier);
  return html`${limbs.map(
    (limb) =>
      html`<figure class="line">
        <figcaption>${words.reading.limbTitle(limb)}</figcaption>
        ${limbLine(
          examination,
          limb,
          marks.filter((mark) => mark.limb === limbKey(limb)),
          flow,
          words,
        )}
      </figure>`,
  )}`;
}
