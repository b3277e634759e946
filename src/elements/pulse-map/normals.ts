import { PULSE_PLACES } from '../../anatomy/index.js';
import { type Unstated, unstatedPortions } from '../../examination/index.js';
import type { Session } from './session.js';

/** What can be stated as normal: sites on the screen alone, in the table all. */
export function unstatedHere({ examination, element, shown }: Session): readonly Unstated[] {
  return unstatedPortions(examination, element.display === 'table' ? PULSE_PLACES : shown);
}

/** Opens or closes the list of what can be stated as normal; the focus goes into it, and back. */
export function showNormals(session: Session, normals: boolean): void {
  const { element } = session;
  session.change({ normals });
  void element.updateComplete.then(() => {
    const to = element.renderRoot.querySelector<HTMLElement>(
      normals ? '.normals button' : '[data-tool="normals"]:enabled',
    );
    // Once everything is stated, the button is disabled and the focus goes on to the active site.
    (to ?? element).focus();
  });
}
