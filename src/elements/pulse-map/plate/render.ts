import { nothing, svg, type SVGTemplateResult } from 'lit';
import { drawnFlow, type DrawnFlow, type Layout } from '../../../drawing/index.js';
import { DASH, INSIDE } from '../../../drawing/plates/paint.js';
import { deepPath, type PlatePart, plateParts } from '../../../drawing/plates/parts.js';
import { emptyExamination } from '../../../examination/index.js';
import type { PreparedPlate } from '../../../drawing/plates/prepared.js';

const ARTERIES: readonly PlatePart['kind'][] = ['near', 'deep', 'faint', 'thinning', 'behind'];

function partPath({ kind, d, width, opacity = 1 }: PlatePart): SVGTemplateResult {
  const path = (name: string, share: number): SVGTemplateResult =>
    svg`<path class=${name} part=${kind === 'body' ? 'body' : ARTERIES.includes(kind) ? 'artery' : nothing} d=${d} opacity=${kind === 'behind-hollow' ? nothing : opacity}
      stroke-width=${width === undefined ? nothing : width * share}
      stroke-dasharray=${width === undefined ? nothing : `${width * DASH.length} ${width * DASH.gap}`}></path>`;
  return kind === 'behind-hollow'
    ? svg`<g opacity=${opacity}>${path('p-behind-hollow', 1)}${path('p-behind-inside', INSIDE)}</g>`
    : path(`p-${kind}`, 1);
}

/**
 * Skin, landmarks and arteries of a plate, in tenths of its unit.
 * @param flow empty where it has not been worked out: all is drawn as in health
 */
export function renderPlate(
  plate: PreparedPlate,
  flow: readonly DrawnFlow[],
  { view, width, height }: Layout,
): SVGTemplateResult {
  const parts = plateParts(plate, flow.length ? flow : drawnFlow(emptyExamination(), []));
  const skin = parts.find(({ kind }) => kind === 'body')?.d ?? '';
  const [across, down] = plate.size;
  // The drawing may be in the document twice, in another size for print; ids are private to the shadow tree.
  const id = `${view}-${width}-${height}`;
  return svg`<clipPath id=${`box-${id}`}><rect width=${across * 10} height=${down * 10}></rect></clipPath>
    <clipPath id=${`skin-${id}`}><path d=${skin}></path></clipPath><clipPath id=${`deep-${id}`}><path d=${deepPath(plate)}></path></clipPath>
    <g class="plate" transform="scale(.1)" clip-path=${`url(#box-${id})`}>${parts.map((part) =>
      part.clip ? svg`<g clip-path=${`url(#${part.clip}-${id})`}>${partPath(part)}</g>` : partPath(part),
    )}</g>`;
}
