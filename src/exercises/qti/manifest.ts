// The list of a QTI 3.0 package's files: imsmanifest.xml.
import { packageSpaces } from './names.ts';
import type { ItemReference } from './test.ts';
import { xmlElement, type Element } from './xml.ts';

/** The manifest: the test, which depends on its items, and the items. */
export function manifestElement(
  identifier: string,
  test: ItemReference,
  items: readonly ItemReference[],
): Element {
  const resource = (
    type: string,
    { identifier: name, href }: ItemReference,
    needs: readonly ItemReference[],
  ) =>
    xmlElement(
      'resource',
      { identifier: name, type, href },
      xmlElement('file', { href }),
      ...needs.map((item) => xmlElement('dependency', { identifierref: item.identifier })),
    );
  return xmlElement(
    'manifest',
    { ...packageSpaces, identifier },
    xmlElement(
      'metadata',
      {},
      xmlElement('schema', {}, 'QTI Package'),
      xmlElement('schemaversion', {}, '3.0.0'),
    ),
    xmlElement('organizations'),
    xmlElement(
      'resources',
      {},
      resource('imsqti_test_xmlv3p0', test, items),
      ...items.map((item) => resource('imsqti_item_xmlv3p0', item, [])),
    ),
  );
}
