// XML as text: elements, and text and attributes escaped.

export interface Element {
  readonly name: string;
  readonly attributes: Attributes;
  readonly children: readonly Child[];
}
export type Child = Element | string;
type Attributes = Readonly<Record<string, string | number | boolean>>;

export const xmlElement = (name: string, attributes: Attributes = {}, ...children: Child[]): Element => ({
  name,
  attributes,
  children,
});

/** The text without what XML 1.0 cannot hold: control characters, halves of a surrogate pair, U+FFFE and U+FFFF. */
export const allowedInXml = (text: string): string =>
  text.replace(/[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu, '');

/** Text on one line; a reader of XML would change the line ends in any case. */
export const oneLineOfXml = (text: string): string => allowedInXml(text).replace(/[\t\n\r]+/g, ' ');

const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const escaped = (text: string) => oneLineOfXml(text).replace(/[&<>"]/g, (sign) => escapes[sign]!);

/** A number as XML Schema's double, without the noise of binary fractions. */
export const xmlDouble = (value: number): string => String(Number(value.toPrecision(12)));

function written({ name, attributes, children }: Element, indent: string): string {
  const start = [
    name,
    ...Object.entries(attributes).map(([key, value]) => `${key}="${escaped(String(value))}"`),
  ].join(' ');
  if (children.length === 0) return `<${start}/>`;
  const deeper = `${indent}  `;
  const isMixed = children.some((child) => typeof child === 'string');
  const inner = children.map((child) =>
    typeof child === 'string' ? escaped(child) : written(child, isMixed ? indent : deeper),
  );
  // Space counts beside text, and only there.
  return isMixed
    ? `<${start}>${inner.join('')}</${name}>`
    : `<${start}>\n${inner.map((line) => `${deeper}${line}\n`).join('')}${indent}</${name}>`;
}

/** A whole document, for a file in UTF-8. */
export const xmlDocument = (root: Element): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n${written(root, '')}\n`;
