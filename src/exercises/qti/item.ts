// One question as a QTI 3.0 assessment item that marks itself.
import type { Chart } from '../../calculators/define.ts';
import { format } from '../../core/format.ts';
import { kinds, type KindName } from '../../core/kinds.ts';
import { boundsOf, ROUNDED_BY } from '../bounds.ts';
import { reachOf } from '../mark-number.ts';
import { letterOfPlace } from '../letters.ts';
import {
  isChoiceQuestion,
  isNumberQuestion,
  isOrderQuestion,
  type ChoiceQuestion,
  type NumberQuestion,
  type OrderQuestion,
  type Question,
} from '../question.ts';
import { asiSpaces, toolMetadata } from './names.ts';
import { xmlDouble, xmlElement, xmlDocument, type Element } from './xml.ts';

export interface ItemSettings {
  /** An NCName of its own. */
  readonly identifier: string;
  /** The handbook's version. */
  readonly version: string;
  readonly rules?: ItemRules | undefined;
}
/** What a trainer may choose; by itself whole marks, with the working, and a point for decimals. */
export interface ItemRules {
  /** Half a mark for a number that is right but rounded too far, as the handbook gives. */
  readonly half?: boolean;
  /** False where the working is not shown. */
  readonly working?: boolean;
  /** The system takes numbers with a comma. */
  readonly comma?: boolean;
  /** Marks of the question; by itself 1. */
  readonly marks?: number;
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
const TYPED = 1e-9; // about a number that was typed, for what binary fractions leave over
const SLACK = 1 + 1e-9; // lets in an answer that lies on the edge itself
const paragraph = (text: string) => xmlElement('p', {}, text);
const variable = (identifier: string) => xmlElement('qti-variable', { identifier });
const correct = xmlElement('qti-correct', { identifier: RESPONSE });
const value = (baseType: 'float' | 'identifier', text: string) =>
  xmlElement('qti-base-value', { 'base-type': baseType }, text);
const set = (identifier: string, to: Element) => xmlElement('qti-set-outcome-value', { identifier }, to);
const say = (feedback: string) => set('FEEDBACK', value('identifier', feedback));
const scoreOf = ({ marks = 1 }: ItemRules, part = 1) => set('SCORE', value('float', xmlDouble(part * marks)));
const isRight = xmlElement('qti-match', {}, variable(RESPONSE), correct);

const declare = (
  cardinality: 'single' | 'ordered',
  baseType: 'float' | 'identifier',
  values: readonly string[],
): Element =>
  xmlElement(
    'qti-response-declaration',
    { identifier: RESPONSE, cardinality, 'base-type': baseType },
    xmlElement('qti-correct-response', {}, ...values.map((text) => xmlElement('qti-value', {}, text))),
  );

/** If, else if as often as needed, else. */
const condition = (
  branches: readonly (readonly [when: Element, ...then: Element[]])[],
  otherwise: readonly Element[],
): Element =>
  xmlElement(
    'qti-response-condition',
    {},
    ...branches.map((branch, i) =>
      xmlElement(i === 0 ? 'qti-response-if' : 'qti-response-else-if', {}, ...branch),
    ),
    ...(otherwise.length > 0 ? [xmlElement('qti-response-else', {}, ...otherwise)] : []),
  );

function table({ caption, columns }: Chart): Element {
  const row = (cells: readonly Element[]) => xmlElement('tr', {}, ...cells);
  return xmlElement(
    'table',
    {},
    xmlElement('caption', {}, caption),
    xmlElement('thead', {}, row(columns.map(({ label }) => xmlElement('th', { scope: 'col' }, label)))),
    xmlElement(
      'tbody',
      {},
      ...columns[0]!.values.map((_, i) =>
        row(columns.map(({ kind, values }) => xmlElement('td', {}, format(values[i]!, kind)))),
      ),
    ),
  );
}

const namesOfUnits: Readonly<Record<string, string>> = { money: 'money', '°': 'degrees' };
const unitOf = (of: KindName) => namesOfUnits[kinds[of].unit] ?? kinds[of].unit;

function instruction({ form, of, digits }: NumberQuestion, { comma = false }: ItemRules): string {
  const unit = unitOf(of);
  const wanted = unit === '' ? 'as a plain number' : `in ${unit}`;
  const decimals = digits === 0 ? 'the whole number' : `${digits} decimal${digits === 1 ? '' : 's'}`;
  const exact = form === 'estimate' ? '; a rough figure will do' : `, to ${decimals}`;
  return `Give the answer ${wanted}${exact}. Write the number alone, ${comma ? 'with a comma for decimals and no points' : 'with a point for decimals and no commas'}.`;
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

/** Numbers that are right but rounded too far: the answer to fewer decimals, or to tens and more, outside what counts as right. */
export function roundedOf(question: NumberQuestion): readonly number[] {
  const { answer, digits, form, whole } = question;
  if (form === 'estimate' || whole || answer === 0) return [];
  const { low, high } = boundsOf(question);
  const found: number[] = [];
  for (let place = digits - 1; 10 ** -place < 2 * Math.abs(answer); place--) {
    const rounded = Number((Math.round(answer * 10 ** place) / 10 ** place).toPrecision(12));
    if (Math.abs(rounded - answer) > ROUNDED_BY * Math.abs(answer)) break;
    if (rounded < low || rounded > high) found.push(rounded);
  }
  return [...new Set(found)];
}

function numberParts(question: NumberQuestion, rules: ItemRules): Parts {
  const { answer, digits, slips, of, curve, prompt } = question;
  const { low, high } = boundsOf(question);
  // The value expected comes first: an absolute tolerance is laid about the first expression.
  const near = (centre: number, [below, above]: readonly [number, number]) =>
    xmlElement(
      'qti-equal',
      { 'tolerance-mode': 'absolute', tolerance: `${xmlDouble(below * SLACK)} ${xmlDouble(above * SLACK)}` },
      value('float', xmlDouble(centre)),
      variable(RESPONSE),
    );
  const unit = unitOf(of);
  const halves = rules.half ? roundedOf(question) : [];
  return {
    declaration: declare('single', 'float', [xmlDouble(Number(answer.toFixed(digits)))]),
    body: [
      paragraph(prompt),
      ...(curve ? [table(curve)] : []),
      paragraph(instruction(question, rules)),
      xmlElement(
        'p',
        {},
        'Answer: ',
        xmlElement('qti-text-entry-interaction', { 'response-identifier': RESPONSE, 'expected-length': 12 }),
        unit === '' ? '' : ` ${unit}`,
      ),
    ],
    rules: [
      condition(
        [
          [near(answer, [answer - low, high - answer]), scoreOf(rules), say('right')],
          ...slips.map((slip, i) => [near(slip.value, reach(question, i)), say(`slip-${i + 1}`)] as const),
          ...halves.map((each) => [near(each, [TYPED, TYPED]), scoreOf(rules, 0.5), say('rounded')] as const),
        ],
        [say('wrong')],
      ),
    ],
    feedback: {
      right: 'Right.',
      ...(halves.length > 0 && { rounded: 'Right, but rounded too far: half the marks.' }),
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
  xmlElement(
    name,
    { 'response-identifier': RESPONSE, shuffle: false, ...attributes },
    xmlElement('qti-prompt', {}, what),
    ...texts.map((text, i) => xmlElement('qti-simple-choice', { identifier: identifier(i) }, text)),
  );

function choiceParts({ options, answer, prompt }: ChoiceQuestion, rules: ItemRules): Parts {
  const option = (place: number) => `option-${letterOfPlace(place)}`;
  const texts = options.map(({ text }) => text);
  return {
    declaration: declare('single', 'identifier', [option(answer)]),
    body: [
      paragraph(prompt),
      choices(texts, option, ['qti-choice-interaction', { 'max-choices': 1 }], 'Choose one.'),
    ],
    rules: [set('FEEDBACK', variable(RESPONSE)), condition([[isRight, scoreOf(rules)]], [])],
    feedback: Object.fromEntries(
      options.map(({ why }, i) => [option(i), i === answer ? `Right. ${why}` : why]),
    ),
  };
}

function orderParts({ items, answer, prompt }: OrderQuestion, rules: ItemRules): Parts {
  const step = (place: number) => `step-${letterOfPlace(place)}`;
  return {
    declaration: declare('ordered', 'identifier', answer.map(step)),
    body: [
      paragraph(prompt),
      choices(items, step, ['qti-order-interaction', {}], 'Put the steps in order, the first at the top.'),
    ],
    rules: [condition([[isRight, scoreOf(rules), say('right')]], [say('wrong')])],
    feedback: {
      right: 'Right.',
      wrong: 'Some steps are out of place; compare yours with the right order.',
    },
  };
}

function partsOf(question: Question, rules: ItemRules): Parts {
  if (isNumberQuestion(question)) return numberParts(question, rules);
  if (isChoiceQuestion(question)) return choiceParts(question, rules);
  if (isOrderQuestion(question)) return orderParts(question, rules);
  return question satisfies never;
}

const outcome = (
  identifier: string,
  baseType: 'float' | 'identifier',
  attributes: Readonly<Record<string, string | number>>,
  start: string,
) =>
  xmlElement(
    'qti-outcome-declaration',
    { identifier, cardinality: 'single', 'base-type': baseType, ...attributes },
    xmlElement('qti-default-value', {}, xmlElement('qti-value', {}, start)),
  );

const modal = (variableName: string, identifier: string, lines: readonly string[], title?: string) =>
  xmlElement(
    'qti-modal-feedback',
    {
      'outcome-identifier': variableName,
      'show-hide': 'show',
      identifier,
      ...(title === undefined ? {} : { title }),
    },
    xmlElement('qti-content-body', {}, ...lines.map(paragraph)),
  );

/** The item. SCORE goes from 0 to the marks; FEEDBACK tells which sentence is shown; the working is shown to everybody, unless it is left out. */
export function itemElement(
  question: Question,
  { identifier, version, rules: chosen = {} }: ItemSettings,
): Element {
  const { declaration, body, rules, feedback } = partsOf(question, chosen);
  const isEmpty = xmlElement('qti-is-null', {}, variable(RESPONSE));
  const { marks = 1, working = true } = chosen;
  return xmlElement(
    'qti-assessment-item',
    {
      ...asiSpaces,
      identifier,
      title: question.title,
      'xml:lang': 'en-GB',
      ...toolMetadata(version),
      adaptive: false,
      'time-dependent': false,
    },
    declaration,
    outcome('SCORE', 'float', { 'normal-maximum': marks, 'normal-minimum': 0 }, '0'),
    outcome('MAXSCORE', 'float', {}, xmlDouble(marks)),
    outcome('FEEDBACK', 'identifier', {}, 'none'),
    ...(working ? [outcome('WORKING', 'identifier', {}, 'none')] : []),
    xmlElement('qti-item-body', {}, ...body),
    xmlElement(
      'qti-response-processing',
      {},
      ...(working ? [set('WORKING', value('identifier', 'working'))] : []),
      condition([[isEmpty, say('unanswered')]], rules),
    ),
    modal('FEEDBACK', 'unanswered', ['Not answered.']),
    ...Object.entries(feedback).map(([name, sentence]) => modal('FEEDBACK', name, [sentence])),
    ...(working ? [modal('WORKING', 'working', question.working, 'Working')] : []),
  );
}

/** The item's document in QTI 3.0. */
export const qtiItem = (question: Question, settings: ItemSettings): string =>
  xmlDocument(itemElement(question, settings));
