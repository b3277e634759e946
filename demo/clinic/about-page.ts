import { html, type TemplateResult } from 'lit';
import './ask-first.js';

/** What this page is and is not. */
export function aboutPage(onStartAgain: () => void): TemplateResult {
  return html`<main class="page narrow prose">
    <h1 tabindex="-1">About this demonstration</h1>
    <h2>Nothing here is real</h2>
    <p>
      Alder Row Clinic does not exist. Its three patients, their visits and every finding are invented to show
      how the pulse map sits in a clinic’s own form. Likeness to any person is chance.
    </p>
    <p>
      What you enter stays in this browser on this machine, and whoever uses the browser can read it. Do not
      enter anything about a real person.
    </p>
    <h2>What the map is not</h2>
    <p>
      It is not a diagnosis and not a substitute for one. It records what a hand felt and an ear heard, and
      draws from that where a block may lie. A finger errs: pulses are missed, and felt where there are none.
      A felt pulse does not exclude disease.
    </p>
    <p>
      Your local pathways and a licensed clinician decide what is done. A limb that turns cold, pale, painful,
      numb or weak within hours is an emergency: act by your acute-limb pathway at once, whatever this page
      shows.
    </p>
    <h2>Without a connection</h2>
    <p>
      Once it was loaded from where it is published, this demonstration works without a connection, lessons
      and all, and the browser can install it. A newer version is announced and comes in when you ask for it.
    </p>
    <h2>Start again</h2>
    <p>The invented patients can be put back as they were at first.</p>
    <ask-first
      label="Start again"
      question="Forget every visit entered here and put the invented patients back?"
      confirm="Forget and start again"
      keep="Keep everything"
      @confirmed=${onStartAgain}
    ></ask-first>
  </main>`;
}
