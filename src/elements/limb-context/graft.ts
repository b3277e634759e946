import { html, nothing, type TemplateResult } from 'lit';
import type { RevascularisedArtery } from '../../examination/index.js';
import { choices, large, optionsOf, toggles } from '../common/choices.js';
import type { ContextForm } from './form.js';

type Change = { readonly [K in keyof RevascularisedArtery]?: RevascularisedArtery[K] | undefined };

function change({ value, edit }: ContextForm, i: number, fields: Change): void {
  const list = (value?.revascularisations ?? []).map((one, j) => {
    if (j !== i) return one;
    return Object.fromEntries(
      Object.entries({ ...one, ...fields }).filter(([, field]) => field !== undefined),
    );
  });
  edit(['revascularisations'], list);
}

function remove({ value, edit }: ContextForm, i: number): void {
  const rest = (value?.revascularisations ?? []).filter((_, j) => j !== i);
  edit(['revascularisations'], rest.length ? rest : undefined);
}

/** A bypass or stent of the list, with its own pulse and what is seen over it. */
export function graft(form: ContextForm, i: number): TemplateResult | typeof nothing {
  const { context: words } = form.words;
  const one = form.value?.revascularisations?.[i];
  if (!one) return nothing;
  const { kind, artery, side, route, graftPulse, infectionSigns } = one;
  const vessel = words.repair(kind, form.mapWords.anatomy.vessel({ artery, side }));
  const said = large(route ? `${vessel}, ${words.routes[route]}` : vessel);
  return html`<li>
    <span>${said}</span>
    ${
      form.editable
        ? html`<button
            type="button"
            class="button"
            aria-label=${words.remove(said)}
            @click=${() => remove(form, i)}
          >
            ${words.removeShort}
          </button>`
        : nothing
    }
    <span class="of-graft">
      <span class="hint" aria-hidden="true">${words.graftPulse}</span>
      ${choices<NonNullable<RevascularisedArtery['graftPulse']>>({
        label: `${words.graftPulse}: ${said}`,
        options: optionsOf(words.graftPulses),
        value: graftPulse,
        disabled: !form.editable,
        pick: (pulse) => change(form, i, { graftPulse: pulse }),
      })}
      <span class="hint" aria-hidden="true">${words.graftSigns}</span>
      ${toggles<NonNullable<RevascularisedArtery['infectionSigns']>[number]>({
        label: `${words.graftSigns}: ${said}`,
        options: optionsOf(words.graftSignOptions),
        value: infectionSigns,
        none: words.noSigns,
        disabled: !form.editable,
        pick: (signs) => change(form, i, { infectionSigns: signs }),
      })}
    </span>
  </li>`;
}
