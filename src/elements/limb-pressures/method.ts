import { html, type TemplateResult } from 'lit';
import { type Method, METHODS } from '../../examination/index.js';
import type { PartMessages } from '../../locale/parts.js';
import { DEFAULT_PRESSURE_SETTINGS, type PressureChoices } from '../../pressures/index.js';
import type { MethodStatement } from '../../statements/index.js';
import { selectField } from '../common/select.js';

export interface MethodView {
  readonly words: PartMessages['pressures'];
  /** What the record chose. */
  readonly method: Method | undefined;
  /** What the page chose, which goes before the record and cannot be changed here. */
  readonly settings: PressureChoices;
  readonly disabled: boolean;
  readonly known: (field: keyof Method, label: string, control: () => TemplateResult) => TemplateResult;
  readonly set: (field: keyof Method, option: string | undefined) => void;
}

/** The methods and limits of a record, one list each; the first entry of each is the default. */
export function methodFields(view: MethodView): TemplateResult[] {
  const { words, method, settings } = view;
  return (Object.keys(words.settings) as (keyof Method)[]).map((field) => {
    const { label, options } = words.settings[field];
    const named = options as Readonly<Record<string, string>>;
    const usual = { field, option: DEFAULT_PRESSURE_SETTINGS[field] } as MethodStatement;
    return view.known(field, label, () =>
      selectField<string>({
        label,
        empty: `${named[usual.option] ?? ''} (${words.byDefault})`,
        options: METHODS[field].map((option) => [option, named[option] ?? ''] as const),
        value: settings[field] ?? method?.[field],
        disabled: view.disabled || settings[field] !== undefined,
        set: (option) => view.set(field, option),
      }),
    );
  });
}

/** What the methods are by, said beside the heading of the fold: the criterion of limb threat and the standard of the index. */
export function methodLine({ words, method, settings }: Omit<MethodView, 'known' | 'set'>): TemplateResult {
  const said = (['threat', 'standard'] as const).map((field) => {
    const chosen = settings[field] ?? method?.[field];
    const option = chosen ?? DEFAULT_PRESSURE_SETTINGS[field];
    const word = (words.settings[field].options as Readonly<Record<string, string>>)[option] ?? '';
    return chosen ? word : `${word} (${words.byDefault})`;
  });
  return html`<span class="hint">${said.join(' · ')}</span>`;
}
