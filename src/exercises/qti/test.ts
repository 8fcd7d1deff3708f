// A sheet of questions as a QTI 3.0 assessment test, which refers to its items.
import { asiSpaces, toolMetadata } from './names.ts';
import { xmlElement, type Element } from './xml.ts';

export interface ItemReference {
  readonly identifier: string;
  /** File of the item, from the test's own folder. */
  readonly href: string;
}

export interface TestSettings {
  readonly identifier: string;
  readonly title: string;
  readonly version: string;
}

/** The test: questions in the order given, answered in any order, each once, with its feedback. */
export function testElement(
  items: readonly ItemReference[],
  { identifier, title, version }: TestSettings,
): Element {
  const names = ['SCORE', 'MAXSCORE'];
  return xmlElement(
    'qti-assessment-test',
    { ...asiSpaces, identifier, title, ...toolMetadata(version) },
    ...names.map((name) =>
      xmlElement(
        'qti-outcome-declaration',
        { identifier: name, cardinality: 'single', 'base-type': 'float' },
        xmlElement('qti-default-value', {}, xmlElement('qti-value', {}, '0')),
      ),
    ),
    xmlElement(
      'qti-test-part',
      { identifier: 'part', 'navigation-mode': 'nonlinear', 'submission-mode': 'individual' },
      xmlElement('qti-item-session-control', { 'max-attempts': 1, 'show-feedback': true }),
      xmlElement(
        'qti-assessment-section',
        { identifier: 'questions', title, visible: true },
        ...items.map((item) => xmlElement('qti-assessment-item-ref', { ...item })),
      ),
    ),
    xmlElement(
      'qti-outcome-processing',
      {},
      ...names.map((name) =>
        xmlElement(
          'qti-set-outcome-value',
          { identifier: name },
          xmlElement(
            'qti-sum',
            {},
            xmlElement('qti-test-variables', { 'variable-identifier': name, 'base-type': 'float' }),
          ),
        ),
      ),
    ),
  );
}
