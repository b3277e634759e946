import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compactTemplates, gluedBindings } from '../../../.tools/compact-templates.mjs';

describe('compactTemplates', () => {
  it('leaves one space wherever HTML had white space, since it may part two words', () => {
    const code = 'const t = html`\n  <p>\n    <b>${a}</b>\n    ${b}   c</p>\n`;';
    expect(compactTemplates(code)).toBe('const t = html` <p> <b>${a}</b> ${b} c</p> `;');
  });

  it('closes up the tags of a drawing, and keeps the spaces inside its texts', () => {
    const code = 'svg `<g>\n  <text>Post. tibial  artery ${x} mm</text>\n  ${more}\n</g>`';
    expect(compactTemplates(code)).toBe('svg `<g><text>Post. tibial artery ${x} mm</text>${more}</g>`');
  });

  it('minifies a style sheet as one, and keeps what depends on its spaces', () => {
    const code = "css`\n  .a :hover > b {\n    width: calc(100% - 8px);\n    content: '  ';\n  }\n`";
    expect(compactTemplates(code)).toBe('css`.a :hover>b{width:calc(100% - 8px);content:"  "}`');
  });

  it('takes the layout alone out of a style sheet with expressions', () => {
    const code = 'css`\n  /* why */\n  :host {\n    ${tokens}\n    color: var(--_ink);\n  }\n`';
    expect(compactTemplates(code)).toBe('css` :host{${tokens} color: var(--_ink);}`');
  });

  it('compacts a template inside an expression of another', () => {
    const code = 'html`<i>  ${on ? svg`<g>\n  <path></path>\n</g>` : nothing}  </i>`';
    expect(compactTemplates(code)).toBe('html`<i> ${on ? svg`<g><path></path></g>` : nothing} </i>`');
  });

  it('leaves code, strings, other templates and escapes alone', () => {
    const code =
      'const a = "html`  `";\nconst b = `two  spaces`;\nconst c = other`  `;\nconst d = html`a\\n   b`;\n';
    expect(compactTemplates(code)).toBe(code);
  });

  it('keeps two bindings of one tag apart', () => {
    const code = 'svg`<svg\n  height=${h}\n  ${ref()}\n  class=${c}\n>\n  ${a}\n  ${b}\n</svg>`';
    expect(compactTemplates(code)).toBe('svg`<svg height=${h} ${ref()} class=${c} >${a}${b}</svg>`');
  });

  it('glues no bindings together, however the tag is laid out', () => {
    const space = fc.stringMatching(/^[ \n]{1,6}$/);
    const binding = fc.constantFrom(
      '${r}',
      'x=${r}',
      'd="M${r}${r} ${r}"',
      "@click=${() => go('>')}",
      '.v=${r}',
    );
    const tag = fc.array(fc.tuple(space, binding), { maxLength: 6 });
    fc.assert(
      fc.property(fc.constantFrom('html', 'svg'), fc.array(tag, { maxLength: 3 }), (name, tags) => {
        const markup = tags.map((parts) => `<g${parts.flat().join('')}\n>\n \${t}\n</g>`).join('\n');
        expect(gluedBindings(compactTemplates(`${name}\`${markup}\``))).toEqual([]);
      }),
    );
  });
});

describe('gluedBindings', () => {
  it('finds two bindings in one attribute, and two without a space between them', () => {
    expect(gluedBindings('svg`<svg height=${h}${ref()} width="1">${x}</svg>`')).toHaveLength(1);
    expect(gluedBindings('html`<p title="a > b" ${a}${b}></p>`')).toHaveLength(1);
  });

  it('is content with parts of a quoted value, with text, and with spaces', () => {
    const code = 'html`<p class="${a}${b}" id=${c} ${d}>${e}${f}</p> 1 < 2 ${g}${h}`';
    expect(gluedBindings(code)).toEqual([]);
    expect(gluedBindings('css`a{${b}${c}}`; const text = `<p ${a}${b}>`;')).toEqual([]);
  });
});
