// Minifies the templates of a built module. Bundlers leave them alone, since to them a template is a string.
import remapping from '@jridgewell/remapping';
import { transformSync } from 'esbuild';
import MagicString from 'magic-string';
import ts from 'typescript';

/**
 * White space with a line break next to a tag or an expression only formats the source; inside a tag it separates two
 * bindings.
 */
function compactSvg(text, inTag) {
  if (inTag && /^\s+$/.test(text)) return ' ';
  return text.replace(/(^|>)\s*\n\s*(?=<|$)/g, '$1').replace(/\s+/g, ' ');
}

/** In HTML white space may separate words; one space is enough. */
function compactHtml(text) {
  return text.replace(/\s+/g, ' ');
}

/** Style sheets with expressions cannot be parsed, so only their formatting is removed. */
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

const parse = (code) => ts.createSourceFile('module.js', code, ts.ScriptTarget.ES2022, true);

/** The tag of a template literal to compact, or undefined. */
function tagOf(node) {
  if (!ts.isTaggedTemplateExpression(node) || !ts.isIdentifier(node.tag)) return undefined;
  return Object.hasOwn(COMPACT, node.tag.text) ? node.tag.text : undefined;
}

/** Pieces of a template with expressions, in order. */
const piecesOf = (template) => [template.head, ...template.templateSpans.map((span) => span.literal)];

/** Tracks, from piece to piece, whether the next character is inside a tag, and there inside quotes. */
function reader() {
  let inTag = false;
  let quote = '';
  return {
    where: () => ({ inTag, quoted: quote !== '' }),
    read(text) {
      for (let i = 0; i < text.length; i++) {
        const mark = text[i];
        if (quote) quote = mark === quote ? '' : quote;
        else if (inTag && (mark === '"' || mark === "'")) quote = mark;
        else if (inTag && mark === '>') inTag = false;
        else if (!inTag && mark === '<' && /[a-z/]/i.test(text[i + 1] ?? '')) inTag = true;
      }
    },
  };
}

/**
 * Finds adjacent bindings in a tag, which lit treats as two parts of one attribute: `height=${a}${b}`. Inside quotes that
 * is intended.
 * @param {string} code of a JavaScript module
 * @returns {string[]} the text before each such place
 */
export function gluedBindings(code) {
  const source = parse(code);
  const found = [];
  const visit = (node) => {
    const tag = tagOf(node);
    if (tag && tag !== 'css' && ts.isTemplateExpression(node.template)) {
      const { where, read } = reader();
      for (const [i, piece] of piecesOf(node.template).entries()) {
        const { inTag, quoted } = where();
        // The first piece has no expression before it, the last none after.
        const between = i > 0 && piece.kind === ts.SyntaxKind.TemplateMiddle;
        if (between && inTag && !quoted && piece.text === '')
          found.push(
            code.slice(Math.max(node.getStart(source), piece.getStart(source) - 60), piece.getEnd()),
          );
        read(piece.text);
      }
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** What compacting changes, as `[from, to, text]`. */
function editsOf(code) {
  const source = parse(code);
  const edits = [];
  /** A piece of a template between its marks: a backtick or brace before, a backtick or `${` after. */
  const piece = (node, change) => {
    const from = node.getStart(source) + 1;
    const to =
      node.getEnd() -
      (node.kind === ts.SyntaxKind.TemplateHead || node.kind === ts.SyntaxKind.TemplateMiddle ? 2 : 1);
    const old = code.slice(from, to);
    // An escape may encode intended white space.
    if (!old.includes('\\')) edits.push([from, to, change(old)]);
  };
  const visit = (node) => {
    const tag = tagOf(node);
    if (tag) {
      const { template } = node;
      if (ts.isNoSubstitutionTemplateLiteral(template)) {
        piece(template, tag === 'css' ? minifiedCss : COMPACT[tag]);
      } else {
        const { where, read } = reader();
        for (const part of piecesOf(template)) {
          const { inTag } = where();
          piece(part, (text) => COMPACT[tag](text, inTag));
          read(part.text);
        }
      }
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return edits;
}

function edited(code) {
  const text = new MagicString(code);
  for (const [from, to, now] of editsOf(code)) if (to > from) text.update(from, to, now);
  return text;
}

/**
 * @param {string} code of a JavaScript module
 * @returns {string} the same with compact `html`, `svg` and `css` templates
 */
export const compactTemplates = (code) => edited(code).toString();

/**
 * The same for a module with a source map.
 * @returns the module, and its map to the very first source
 */
export function compactMapped(code, map) {
  const text = edited(code);
  const step = text.generateMap({ hires: 'boundary', includeContent: false });
  let given = false;
  const whole = remapping(step, () => (given ? null : ((given = true), map)));
  return { code: text.toString(), map: { ...whole, file: map.file } };
}
