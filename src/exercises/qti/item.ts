// One question as a QTI 3.0 assessment item that marks itself.
import type { Chart } from '../../calculators/define.ts';
import { format } from '../../core/format.ts';
import { kinds, type KindName } from '../../core/kinds.ts';
import { boundsOf } from '../bounds.ts';
import { reachOf } from '../mark-number.ts';
import { letter } from '../letters.ts';
import {
  isChoiceQuestion,
  isNumberQuestion,
  isOrderQuestion,
  type ChoiceQuestion,
  type NumberQuestion,
  type OrderQuestion,
  type Question,
} from '../question.ts';
import { asiSpaces, tool } from './names.ts';
import { double, element, xmlDocument, type Element } from './xml.ts';

export interface ItemSettings {
  /** An NCName of its own. */
  readonly identifier: string;
  /** The handbook's version. */
  readonly version: string;
}

/** What differs between the forms of a question. */
interface Parts {
  readonly declaration: Element;
  readonly body: readonly Element[];
  /** Rules for an answer that is there: SCORE, and which feedback. */
  readonly rules: readonly Element[];
  /** Sentence by the identifier that FEEDBACK takes. */
  readonly feedback: Readonly<Record<string, string>>;
}

const RESPONSE = 'RESPONSE';
const SLACK = 1 + 1e-9; // lets in an answer that lies on the edge itself
const paragraph = (text: string) => element('p', {}, text);
const variable = (identifier: string) => element('qti-variable', { identifier });
const correct = element('qti-correct', { identifier: RESPONSE });
const value = (baseType: 'float' | 'identifier', text: string) =>
  element('qti-base-value', { 'base-type': baseType }, text);
const set = (identifier: string, to: Element) => element('qti-set-outcome-value', { identifier }, to);
const say = (feedback: string) => set('FEEDBACK', value('identifier', feedback));
const score = set('SCORE', value('float', '1'));
const isRight = element('qti-match', {}, variable(RESPONSE), correct);

const declare = (
  cardinality: 'single' | 'ordered',
  baseType: 'float' | 'identifier',
  values: readonly string[],
): Element =>
  element(
    'qti-response-declaration',
    { identifier: RESPONSE, cardinality, 'base-type': baseType },
    element('qti-correct-response', {}, ...values.map((text) => element('qti-value', {}, text))),
  );

/** If, else if as often as needed, else. */
const condition = (
  branches: readonly (readonly [when: Element, ...then: Element[]])[],
  otherwise: readonly Element[],
): Element =>
  element(
    'qti-response-condition',
    {},
    ...branches.map((branch, i) =>
      element(i === 0 ? 'qti-response-if' : 'qti-response-else-if', {}, ...branch),
    ),
    ...(otherwise.length > 0 ? [element('qti-response-else', {}, ...otherwise)] : []),
  );

function table({ caption, columns }: Chart): Element {
  const row = (cells: readonly Element[]) => element('tr', {}, ...cells);
  return element(
    'table',
    {},
    element('caption', {}, caption),
    element('thead', {}, row(columns.map(({ label }) => element('th', { scope: 'col' }, label)))),
    element(
      'tbody',
      {},
      ...columns[0]!.values.map((_, i) =>
        row(columns.map(({ kind, values }) => element('td', {}, format(values[i]!, kind)))),
      ),
    ),
  );
}

const namesOfUnits: Readonly<Record<string, string>> = { money: 'money', '°': 'degrees' };
const unitOf = (of: KindName) => namesOfUnits[kinds[of].unit] ?? kinds[of].unit;

function instruction({ form, of, digits }: NumberQuestion): string {
  const unit = unitOf(of);
  const wanted = unit === '' ? 'as a plain number' : `in ${unit}`;
  const decimals = digits === 0 ? 'the whole number' : `${digits} decimal${digits === 1 ? '' : 's'}`;
  const exact = form === 'estimate' ? '; a rough figure will do' : `, to ${decimals}`;
  return `Give the answer ${wanted}${exact}. Write the number alone, with a point for decimals and no commas.`;
}

/** How far below and above a known mistake an answer may lie, and still be taken for it rather than for its neighbour. */
function reach(question: NumberQuestion, at: number): readonly [number, number] {
  const { slips } = question;
  const own = slips[at]!.value;
  const widest = reachOf(question, slips[at]!);
  const others = slips.filter((_, i) => i !== at).map((slip) => slip.value - own);
  return [
    Math.min(widest, ...others.filter((off) => off < 0).map((off) => -off / 2)),
    Math.min(widest, ...others.filter((off) => off > 0).map((off) => off / 2)),
  ];
}

function numberParts(question: NumberQuestion): Parts {
  const { answer, digits, slips, of, curve, prompt } = question;
  const { low, high } = boundsOf(question);
  // The value expected comes first: an absolute tolerance is laid about the first expression.
  const near = (centre: number, [below, above]: readonly [number, number]) =>
    element(
      'qti-equal',
      { 'tolerance-mode': 'absolute', tolerance: `${double(below * SLACK)} ${double(above * SLACK)}` },
      value('float', double(centre)),
      variable(RESPONSE),
    );
  const unit = unitOf(of);
  return {
    declaration: declare('single', 'float', [double(Number(answer.toFixed(digits)))]),
    body: [
      paragraph(prompt),
      ...(curve ? [table(curve)] : []),
      paragraph(instruction(question)),
      element(
        'p',
        {},
        'Answer: ',
        element('qti-text-entry-interaction', { 'response-identifier': RESPONSE, 'expected-length': 12 }),
        unit === '' ? '' : ` ${unit}`,
      ),
    ],
    rules: [
      condition(
        [
          [near(answer, [answer - low, high - answer]), score, say('right')],
          ...slips.map((slip, i) => [near(slip.value, reach(question, i)), say(`slip-${i + 1}`)] as const),
        ],
        [say('wrong')],
      ),
    ],
    feedback: {
      right: 'Right.',
      wrong: 'That is not it. Follow the working step by step, and find where yours parts from it.',
      ...Object.fromEntries(slips.map((slip, i) => [`slip-${i + 1}`, slip.say])),
    },
  };
}

const choices = (
  texts: readonly string[],
  identifier: (place: number) => string,
  [name, attributes]: readonly [string, Readonly<Record<string, number>>],
  what: string,
) =>
  element(
    name,
    { 'response-identifier': RESPONSE, shuffle: false, ...attributes },
    element('qti-prompt', {}, what),
    ...texts.map((text, i) => element('qti-simple-choice', { identifier: identifier(i) }, text)),
  );

function choiceParts({ options, answer, prompt }: ChoiceQuestion): Parts {
  const option = (place: number) => `option-${letter(place)}`;
  const texts = options.map(({ text }) => text);
  return {
    declaration: declare('single', 'identifier', [option(answer)]),
    body: [
      paragraph(prompt),
      choices(texts, option, ['qti-choice-interaction', { 'max-choices': 1 }], 'Choose one.'),
    ],
    rules: [set('FEEDBACK', variable(RESPONSE)), condition([[isRight, score]], [])],
    feedback: Object.fromEntries(
      options.map(({ why }, i) => [option(i), i === answer ? `Right. ${why}` : why]),
    ),
  };
}

function orderParts({ items, answer, prompt }: OrderQuestion): Parts {
  const step = (place: number) => `step-${letter(place)}`;
  return {
    declaration: declare('ordered', 'identifier', answer.map(step)),
    body: [
      paragraph(prompt),
      choices(items, step, ['qti-order-interaction', {}], 'Put the steps in order, the first at the top.'),
    ],
    rules: [condition([[isRight, score, say('right')]], [say('wrong')])],
    feedback: {
      right: 'Right.',
      wrong: 'Some steps are out of place; compare yours with the right order.',
    },
  };
}

function partsOf(question: Question): Parts {
  if (isNumberQuestion(question)) return numberParts(question);
  if (isChoiceQuestion(question)) return choiceParts(question);
  if (isOrderQuestion(question)) return orderParts(question);
  return question satisfies never;
}

const outcome = (
  identifier: string,
  baseType: 'float' | 'identifier',
  attributes: Readonly<Record<string, string | number>>,
  start: string,
) =>
  element(
    'qti-outcome-declaration',
    { identifier, cardinality: 'single', 'base-type': baseType, ...attributes },
    element('qti-default-value', {}, element('qti-value', {}, start)),
  );

const modal = (variableName: string, identifier: string, lines: readonly string[], title?: string) =>
  element(
    'qti-modal-feedback',
    {
      'outcome-identifier': variableName,
      'show-hide': 'show',
      identifier,
      ...(title === undefined ? {} : { title }),
    },
    element('qti-content-body', {}, ...lines.map(paragraph)),
  );

/** The item's document. SCORE is 0 or 1; FEEDBACK tells which sentence is shown; the working is shown to everybody. */
export function qtiItem(question: Question, { identifier, version }: ItemSettings): string {
  const { declaration, body, rules, feedback } = partsOf(question);
  const isEmpty = element('qti-is-null', {}, variable(RESPONSE));
  return xmlDocument(
    element(
      'qti-assessment-item',
      {
        ...asiSpaces,
        identifier,
        title: question.title,
        'xml:lang': 'en-GB',
        ...tool(version),
        adaptive: false,
        'time-dependent': false,
      },
      declaration,
      outcome('SCORE', 'float', { 'normal-maximum': 1, 'normal-minimum': 0 }, '0'),
      outcome('MAXSCORE', 'float', {}, '1'),
      outcome('FEEDBACK', 'identifier', {}, 'none'),
      outcome('WORKING', 'identifier', {}, 'none'),
      element('qti-item-body', {}, ...body),
      element(
        'qti-response-processing',
        {},
        set('WORKING', value('identifier', 'working')),
        condition([[isEmpty, say('unanswered')]], rules),
      ),
      modal('FEEDBACK', 'unanswered', ['Not answered.']),
      ...Object.entries(feedback).map(([name, sentence]) => modal('FEEDBACK', name, [sentence])),
      modal('WORKING', 'working', question.working, 'Working'),
    ),
  );
}
