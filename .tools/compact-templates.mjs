// Takes the white space that only people need out of the templates of a built module: bundlers keep it, since to them a
// template is text like any other.
import { transformSync } from 'esbuild';
import ts from 'typescript';

/** White space that has a line break in it and stands beside a tag or an expression lays out the source, not the drawing. */
function compactSvg(text) {
  return text.replace(/(^|>)\s*\n\s*(?=<|$)/g, '$1').replace(/\s+/g, ' ');
}

/** In HTML any white space may part two words; one space does it as well as many. */
function compactHtml(text) {
  return text.replace(/\s+/g, ' ');
}

/** Style sheets with expressions in them can't be parsed; of these only the layout goes. */
function compactCss(text) {
  return text
    .replace(/\/\*[^]*?\*\//g, '')
    .replace(/\s+/g, ' ')
    .replace(/ ?([{};,]) ?/g, '$1');
}

function minifiedCss(text) {
  return transformSync(text, { loader: 'css', minify: true, logLevel: 'error' }).code.trim();
}

const COMPACT = { html: compactHtml, svg: compactSvg, css: compactCss };

/**
 * @param {string} code of a JavaScript module
 * @returns {string} the same with compact `html`, `svg` and `css` templates
 */
export function compactTemplates(code) {
  const source = ts.createSourceFile('module.js', code, ts.ScriptTarget.ES2022, true);
  const edits = [];
  /** A piece of a template between its marks: a backtick or brace before, a backtick or `${` after. */
  const piece = (node, change) => {
    const from = node.getStart(source) + 1;
    const to =
      node.getEnd() -
      (node.kind === ts.SyntaxKind.TemplateHead || node.kind === ts.SyntaxKind.TemplateMiddle ? 2 : 1);
    const old = code.slice(from, to);
    // An escape may stand for white space that is meant.
    if (!old.includes('\\')) edits.push([from, to, change(old)]);
  };
  const visit = (node) => {
    const tag = ts.isTaggedTemplateExpression(node) && ts.isIdentifier(node.tag) ? node.tag.text : '';
    if (Object.hasOwn(COMPACT, tag)) {
      const { template } = node;
      if (ts.isNoSubstitutionTemplateLiteral(template)) {
        piece(template, tag === 'css' ? minifiedCss : COMPACT[tag]);
      } else {
        for (const part of [template.head, ...template.templateSpans.map((span) => span.literal)])
          piece(part, COMPACT[tag]);
      }
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return edits
    .sort((a, b) => b[0] - a[0])
    .reduce((text, [from, to, now]) => text.slice(0, from) + now + text.slice(to), code);
}
