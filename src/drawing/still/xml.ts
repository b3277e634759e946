/** Characters that XML does not allow: control characters, lone surrogates and two noncharacters. */
const NOT_IN_XML = /(?![\t\n\r])\p{Cc}|\p{Cs}|[\uFFFE\uFFFF]/gu;
const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** What may stand as it is; most texts are nothing else. */
const PLAIN = /^[ !#-%'-;=?-~]*$/;

/** A text as it may stand in XML, between tags or in an attribute. What XML has no way to write becomes U+FFFD. */
export function xmlText(text: string): string {
  if (PLAIN.test(text)) return text;
  return text.replace(NOT_IN_XML, '\uFFFD').replace(/[&<>"]/g, (one) => ENTITIES[one] as string);
}

/** A number to a tenth. */
export const tenth = (value: number): number => Math.round(value * 10) / 10;

/** An element; attributes that are undefined or empty are left out. */
export function tag(
  name: string,
  attributes: Readonly<Record<string, string | number | undefined>>,
  content = '',
): string {
  let text = `<${name}`;
  for (const [key, value] of Object.entries(attributes))
    if (value !== undefined && value !== '')
      text += ` ${key}="${typeof value === 'number' ? value : xmlText(value)}"`;
  return content ? `${text}>${content}</${name}>` : `${text}/>`;
}

/** A group, or nothing where it would hold nothing. */
export function group(attributes: Parameters<typeof tag>[1], content: string): string {
  return content && tag('g', attributes, content);
}

/** A path, or nothing where it would draw nothing. */
export function pathOf(d: string, attributes: Parameters<typeof tag>[1] = {}): string {
  return d && tag('path', attributes).slice(0, -2) + ` d="${d}"/>`;
}
