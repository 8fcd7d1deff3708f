// A QTI 3.0 document as QTI 2.1 has it: other names for the same things, and feedback that holds its text itself.
import { xmlElement, type Child, type Element } from './xml.ts';

const ASI = 'http://www.imsglobal.org/xsd/imsqti_v2p1'; // assessment, section and item; the namespaces are from memory
const PACKAGE = 'http://www.imsglobal.org/xsd/imscp_v1p1';
const SCHEMAS = 'http://www.imsglobal.org/xsd';

const camel = (name: string) => name.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());
/** `qti-response-if` was `responseIf`; elements of XHTML and of the package keep their names. */
const elementName = (name: string) => (name.startsWith('qti-') ? camel(name.slice(4)) : name);
const attributeName = (name: string) => (/^(xml|xsi|data)[:-]|^xmlns/.test(name) ? name : camel(name));

const resourceTypes: Readonly<Record<string, string>> = {
  imsqti_test_xmlv3p0: 'imsqti_test_xmlv2p1',
  imsqti_item_xmlv3p0: 'imsqti_item_xmlv2p1',
};
const texts: Readonly<Record<string, readonly [three: string, two: string]>> = {
  schema: ['QTI Package', 'QTIv2.1 Package'],
  schemaversion: ['3.0.0', '1.0.0'],
};

function attributesOf({ name, attributes }: Element) {
  const isRoot = 'xmlns' in attributes;
  const [space, schema] = name === 'manifest' ? [PACKAGE, 'imscp_v1p1.xsd'] : [ASI, 'imsqti_v2p1.xsd'];
  return Object.fromEntries(
    Object.entries(attributes).map(([key, value]) => {
      if (isRoot && key === 'xmlns') return [key, space];
      if (isRoot && key === 'xsi:schemaLocation') return [key, `${space} ${SCHEMAS}/${schema}`];
      if (key === 'type') return [key, resourceTypes[String(value)] ?? value];
      return [attributeName(key), value];
    }),
  );
}

function child(parent: string, each: Child): readonly Child[] {
  if (typeof each === 'string') return [texts[parent]?.[0] === each ? texts[parent]![1] : each];
  if (each.name === 'qti-content-body') return each.children.flatMap((inner) => child(parent, inner));
  return [inTwoOne(each)];
}

/** The document of 2.1 for one of 3.0 that this export writes. */
export const inTwoOne = (of: Element): Element =>
  xmlElement(elementName(of.name), attributesOf(of), ...of.children.flatMap((each) => child(of.name, each)));
