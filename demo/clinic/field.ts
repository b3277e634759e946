import { html, nothing, type TemplateResult } from 'lit';
import type { Field } from './form-fields.js';

/** One question of the form with its initial answer; afterwards the browser owns the input. */
export function fieldControl(field: Field, value: string): TemplateResult {
  const { name, label, hint, required, choices = [], unit } = field;
  const id = `field-${name}`;
  const hintId = hint ? `${id}-hint` : undefined;
  const more = html`${required ? nothing : html` <span class="optional">optional</span>`}`;
  const below = hint ? html`<p class="hint" id=${hintId!}>${hint}</p>` : nothing;

  if (field.kind === 'radio') {
    return html`<fieldset class="field choice-field">
      <legend>${label}${more}</legend>
      <div class="choices">
        ${choices.map(
          ([stored, shown]) =>
            html`<label class="choice">
              <input type="radio" name=${name} value=${stored} ?checked=${stored === value} />
              <span>${shown}</span>
            </label>`,
        )}
      </div>
    </fieldset>`;
  }
  return html`<div class=${unit ? 'field with-unit' : 'field'}>
    <label for=${id}>${label}${more}</label>
    ${control(field, id, hintId, value)}${unit ? html`<span class="unit" aria-hidden="true">${unit}</span>` : nothing}
    ${below}
  </div>`;
}

function control(field: Field, id: string, hintId: string | undefined, value: string): TemplateResult {
  const { name, kind, required = false, choices = [], unit } = field;
  const describedBy = hintId ?? nothing;
  switch (kind) {
    case 'lines':
      return html`<textarea
        id=${id}
        name=${name}
        rows="3"
        aria-describedby=${describedBy}
        .value=${value}
        ?required=${required}
      ></textarea>`;
    case 'select':
      return html`<select id=${id} name=${name} aria-describedby=${describedBy} ?required=${required}>
        <option value="" ?selected=${value === ''}>Choose…</option>
        ${choices.map(
          ([stored, shown]) => html`<option value=${stored} ?selected=${stored === value}>${shown}</option>`,
        )}
      </select>`;
    default:
      return html`<input
        id=${id}
        type=${kind}
        name=${name}
        min=${kind === 'number' ? '0' : nothing}
        inputmode=${kind === 'number' ? 'numeric' : nothing}
        aria-label=${unit ? `${field.label}, ${unit}` : nothing}
        aria-describedby=${describedBy}
        autocomplete="off"
        .value=${value}
        ?required=${required}
      />`;
  }
}
