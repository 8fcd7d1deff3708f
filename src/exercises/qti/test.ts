// A sheet of questions as a QTI 3.0 assessment test, which refers to its items.
import { asiSpaces, tool } from './names.ts';
import { element, type Element } from './xml.ts';

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
  return element(
    'qti-assessment-test',
    { ...asiSpaces, identifier, title, ...tool(version) },
    ...names.map((name) =>
      element(
        'qti-outcome-declaration',
        { identifier: name, cardinality: 'single', 'base-type': 'float' },
        element('qti-default-value', {}, element('qti-value', {}, '0')),
      ),
    ),
    element(
      'qti-test-part',
      { identifier: 'part', 'navigation-mode': 'nonlinear', 'submission-mode': 'individual' },
      element('qti-item-session-control', { 'max-attempts': 1, 'show-feedback': true }),
      element(
        'qti-assessment-section',
        { identifier: 'questions', title, visible: true },
        ...items.map((item) => element('qti-assessment-item-ref', { ...item })),
      ),
    ),
    element(
      'qti-outcome-processing',
      {},
      ...names.map((name) =>
        element(
          'qti-set-outcome-value',
          { identifier: name },
          element(
            'qti-sum',
            {},
            element('qti-test-variables', { 'variable-identifier': name, 'base-type': 'float' }),
          ),
        ),
      ),
    ),
  );
}
