// The list of a QTI 3.0 package's files: imsmanifest.xml.
import { packageSpaces } from './names.ts';
import type { ItemReference } from './test.ts';
import { element, type Element } from './xml.ts';

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
    element(
      'resource',
      { identifier: name, type, href },
      element('file', { href }),
      ...needs.map((item) => element('dependency', { identifierref: item.identifier })),
    );
  return element(
    'manifest',
    { ...packageSpaces, identifier },
    element('metadata', {}, element('schema', {}, 'QTI Package'), element('schemaversion', {}, '3.0.0')),
    element('organizations'),
    element(
      'resources',
      {},
      resource('imsqti_test_xmlv3p0', test, items),
      ...items.map((item) => resource('imsqti_item_xmlv3p0', item, [])),
    ),
  );
}
