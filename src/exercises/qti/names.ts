// The names that QTI 3.0 documents share: namespaces, tool, identifiers.

const ASI = 'http://www.imsglobal.org/xsd/imsqtiasi_v3p0'; // assessment, section and item
const PACKAGE = 'http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1';
const SCHEMAS = 'https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd';

const spaces = (namespace: string, schema: string) => ({
  xmlns: namespace,
  'xmlns:xsi': 'http://www.w3.org/2001/XMLSchema-instance',
  'xsi:schemaLocation': `${namespace} ${SCHEMAS}/${schema}`,
});
export const asiSpaces = spaces(ASI, 'imsqti_asiv3p0_v1p0.xsd');
export const packageSpaces = spaces(PACKAGE, 'imsqtiv3p0_imscpv1p2_v1p0.xsd');

export const toolMetadata = (version: string) => ({
  'tool-name': 'Malt Spirit Handbook',
  'tool-version': version,
});

/** An identifier from a text: an NCName without full stops, which part names in a test's expressions. */
export const identifierOf = (text: string): string =>
  text.replace(/[^A-Za-z0-9_-]+/g, '-').replace(/^(?![A-Za-z_])/, '_');
