// The export in QTI 3.0: documents keep to the standard's content models, and mark as the handbook marks.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawQuestion } from '../../src/exercises/draw.ts';
import { questionKinds } from '../../src/exercises/kinds/index.ts';
import { mark } from '../../src/exercises/mark.ts';
import { questionsTable } from '../../src/exercises/exchange/questions-csv.ts';
import { resultsJson } from '../../src/exercises/exchange/results-json.ts';
import { qtiItem, roundedOf, type ItemRules } from '../../src/exercises/qti/item.ts';
import { identifierOf } from '../../src/exercises/qti/names.ts';
import { qtiPackage } from '../../src/exercises/qti/package.ts';
import { oneLineOfXml } from '../../src/exercises/qti/xml.ts';
import {
  isNumberQuestion,
  type ChoiceQuestion,
  type NumberQuestion,
  type OrderQuestion,
  type Question,
} from '../../src/exercises/question.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { attribute, everyNode, faults, named, parse, textOf } from './qti-model.ts';
import { run } from './qti-run.ts';

const HOSTILE = `"Fore" & 'feints': 3 < 4 > 2 ]]> <b>&amp; </p> \u0000\u0001\u001b\u007f\u0085 \ud800 \udc00\ud800 \ufffe\uffff 🥃 é\n\tnew line`;
const about = { topic: 'strength', level: 1, sources: [] } as const;

const sum: NumberQuestion = {
  ...about,
  kind: 'pure-alcohol',
  title: 'Pure alcohol in a vat',
  form: 'calculation',
  prompt: 'A vat at Harrowmere holds 1,250 L of spirit at 64 % vol. How much pure alcohol is that?',
  answer: 800,
  of: 'alcohol',
  digits: 1,
  tolerance: 8,
  slips: [
    { family: 'percent', value: 80_000, say: 'The percentage was not divided by 100.' },
    { family: 'upsideDown', value: 1953.125, say: 'Divided by the strength instead of multiplied.' },
    { family: 'forgotten', value: 1250, say: 'That is the whole volume, not its alcohol.' },
    { family: 'contraction', value: 1260, say: 'Water was added to it, and none is.' },
  ],
  working: ['Volume × strength ÷ 100', '1,250 × 64 ÷ 100 = 800 L of pure alcohol'],
};
const estimate: NumberQuestion = {
  ...sum,
  form: 'estimate',
  tolerance: 240,
  slips: [sum.slips[0]!],
  digits: 0,
};
const small: NumberQuestion = {
  ...sum,
  of: 'gravity',
  digits: 4,
  answer: 0.9985,
  tolerance: 0.0001,
  slips: [{ family: 'sign', value: -0.0015, say: 'That is its distance from water.' }],
};
const money: NumberQuestion = { ...sum, of: 'money', digits: 2, slips: [] };
const curve: NumberQuestion = {
  ...sum,
  form: 'curve',
  of: 'gravity',
  digits: 3,
  answer: 1.031,
  tolerance: 0.002,
  slips: [],
  prompt: 'When the washback has worked 18 hours, what is its gravity?',
  curve: {
    caption: 'The gravity of a washback, hour by hour',
    columns: [
      { kind: 'hours', label: 'Time', values: [0, 12, 24, 36] },
      { kind: 'gravity', label: 'Gravity', values: [1.058, 1.043, 1.019, 1.002] },
    ],
  },
};
const impossible: ChoiceQuestion = {
  ...about,
  kind: 'which-cannot-be',
  title: 'Which figure cannot be true?',
  form: 'impossible',
  prompt: 'One of these readings cannot be true. Which?',
  options: [
    { text: 'Low wines at 23 % vol', why: 'Low wines are often of that strength.' },
    { text: 'Spirit at 101 % vol', why: 'Nothing is stronger than pure alcohol.' },
    { text: 'Wash at 8 % vol', why: 'A wash is often of that strength.' },
  ],
  answer: 1,
  working: ['Spirit at 101 % vol: nothing is stronger than pure alcohol.'],
};
const judgement: ChoiceQuestion = { ...impossible, form: 'judgement', title: 'What would you do?' };
const order: OrderQuestion = {
  ...about,
  kind: 'order-of-a-day',
  title: 'In what order?',
  form: 'order',
  prompt: 'Put the steps of malting in order.',
  items: ['Kilning', 'Steeping', 'Germination'],
  answer: [1, 2, 0],
  working: ['1. Steeping', '2. Germination', '3. Kilning'],
};
const withText = (text: string): Question[] => {
  const plain = { title: text, prompt: text, working: [text, text] };
  return [
    { ...sum, ...plain, slips: sum.slips.map((slip) => ({ ...slip, say: text })) },
    {
      ...curve,
      ...plain,
      curve: {
        caption: text,
        columns: curve.curve!.columns.map((column) => ({ ...column, label: text })),
      },
    },
    { ...impossible, ...plain, options: impossible.options.map(() => ({ text, why: text })) },
    { ...order, ...plain, items: order.items.map(() => text) },
  ];
};
const samples: readonly (readonly [string, Question])[] = [
  ['a sum', sum],
  ['an estimate', estimate],
  ['small figures', small],
  ['an amount of money', money],
  ['a curve', curve],
  ['a figure that cannot be true', impossible],
  ['a judgement', judgement],
  ['an order', order],
  ...withText(HOSTILE).map((question) => [`${question.form} with hostile text`, question] as const),
];

const drawn = questionKinds.flatMap((kind) => drawQuestion(kind, '1', builtInHouse) ?? []);

const settings = { identifier: 'question-1', version: '1.0' };
const item = (question: Question) => qtiItem(question, settings);
const sheet = { sheet: '7 of spring', title: 'Spirit & water', version: '1.0' };
const questions = samples.map(([, question]) => question);
const files = qtiPackage(questions, sheet);

describe('documents keep to the content models', () => {
  test.each(samples)('%s', (_, question) => {
    expect(faults(item(question))).toEqual([]);
  });
  test.each(Object.keys(files))('of a package: %s', (name) => {
    expect(faults(files[name]!)).toEqual([]);
  });
  test('a sheet without questions', () => {
    expect(Object.values(qtiPackage([], sheet)).flatMap(faults)).toEqual([]);
  });
  test('every kind of question that there is', () => {
    expect(drawn.flatMap((question) => faults(item(question)))).toEqual([]);
  });
  test('whatever the text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), fc.string({ unit: 'grapheme' }), (one, other) => {
        for (const question of withText(one + HOSTILE + other)) expect(faults(item(question))).toEqual([]);
      }),
      { numRuns: 10 },
    );
  });
  test('whatever the sheet is called', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (name) => {
        expect(
          Object.values(qtiPackage([sum], { ...sheet, sheet: name, title: name })).flatMap(faults),
        ).toEqual([]);
        expect(identifierOf(name)).toMatch(/^[A-Za-z_][A-Za-z0-9_-]*$/);
      }),
    );
  });
});

describe('what is written can be read again', () => {
  test.each(samples)('%s', (_, question) => {
    const root = parse(item(question));
    expect(attribute(root, 'title')).toBe(oneLineOfXml(question.title));
    expect(attribute(root, 'xml:lang')).toBe('en-GB');
    expect(attribute(root, 'tool-name')).toBe('Malt Spirit Handbook');
    expect(attribute(root, 'tool-version')).toBe('1.0');
    expect(textOf(named(root, 'p')[0]!)).toBe(oneLineOfXml(question.prompt));
    const [last] = named(root, 'qti-modal-feedback').slice(-1);
    expect(named(last!, 'p').map(textOf)).toEqual(question.working.map(oneLineOfXml));
  });
  test('nothing but what XML cannot hold is lost', () => {
    expect(oneLineOfXml(HOSTILE)).toBe(
      `"Fore" & 'feints': 3 < 4 > 2 ]]> <b>&amp; </p> \u007f\u0085    🥃 é new line`,
    );
  });
  test('the unit and the decimals wanted', () => {
    const asked = (question: Question) =>
      named(parse(item(question)), 'p')
        .map(textOf)
        .join('\n');
    expect(asked(sum)).toContain('in L pure alcohol, to 1 decimal.');
    expect(asked(small)).toContain('as a plain number, to 4 decimals.');
    expect(asked({ ...sum, digits: 0 })).toContain(', to the whole number.');
    expect(asked(estimate)).toContain('; a rough figure will do.');
  });
  test('the curve as a table', () => {
    const [table] = named(parse(item(curve)), 'table');
    expect(named(table!, 'caption').map(textOf)).toEqual(['The gravity of a washback, hour by hour']);
    expect(named(table!, 'th').map(textOf)).toEqual(['Time', 'Gravity']);
    expect(named(table!, 'td').slice(2, 4).map(textOf)).toEqual(['12.0\u00a0h', '1.043']);
  });
});

describe('names', () => {
  test.each(samples)('all that %s uses are declared', (_, question) => {
    const root = parse(item(question));
    const identifiers = (name: string) => named(root, name).map((node) => attribute(node, 'identifier'));
    const responses = identifiers('qti-response-declaration');
    const outcomes = identifiers('qti-outcome-declaration');
    const variables = [...responses, ...outcomes];
    expect(new Set(variables).size).toBe(variables.length);
    expect(variables).toEqual(expect.arrayContaining(identifiers('qti-variable')));
    expect(responses).toEqual(expect.arrayContaining(identifiers('qti-correct')));
    expect(outcomes).toEqual(expect.arrayContaining(identifiers('qti-set-outcome-value')));
    const bound = everyNode(root).flatMap((node) => node.attributes.get('response-identifier') ?? []);
    expect(bound).toEqual(responses);

    const feedback = named(root, 'qti-modal-feedback');
    expect(outcomes).toEqual(
      expect.arrayContaining(feedback.map((node) => attribute(node, 'outcome-identifier'))),
    );
    const shown = feedback.map((node) => attribute(node, 'identifier'));
    expect(new Set(shown).size).toBe(shown.length);
    const options = identifiers('qti-simple-choice');
    expect(new Set(options).size).toBe(options.length);
    const values = named(root, 'qti-base-value')
      .filter((node) => attribute(node, 'base-type') === 'identifier')
      .map(textOf);
    expect(shown).toEqual(expect.arrayContaining(values));
    if (options.length > 0)
      expect(options).toEqual(
        expect.arrayContaining(named(named(root, 'qti-correct-response')[0]!, 'qti-value').map(textOf)),
      );
  });

  test('the files of a package, from manifest to item', () => {
    const manifest = parse(files['imsmanifest.xml']!);
    const resources = named(manifest, 'resource');
    const hrefs = resources.map((node) => attribute(node, 'href'));
    expect(['imsmanifest.xml', ...hrefs]).toEqual(Object.keys(files));
    expect(resources.flatMap((node) => named(node, 'file').map((file) => attribute(file, 'href')))).toEqual(
      hrefs,
    );
    resources.forEach((node) =>
      expect(attribute(parse(files[attribute(node, 'href')]!), 'identifier')).toBe(
        attribute(node, 'identifier'),
      ),
    );
    const references = named(parse(files['test.xml']!), 'qti-assessment-item-ref');
    expect(references).toHaveLength(questions.length);
    references.forEach((node) =>
      expect(attribute(parse(files[attribute(node, 'href')]!), 'identifier')).toBe(
        attribute(node, 'identifier'),
      ),
    );
    expect(named(manifest, 'dependency').map((node) => attribute(node, 'identifierref'))).toEqual(
      references.map((node) => attribute(node, 'identifier')),
    );
    const all = everyNode(manifest).flatMap((node) => node.attributes.get('identifier') ?? []);
    expect(new Set(all).size).toBe(all.length);
  });
});

describe('an item marks as the handbook does', () => {
  const working = (question: Question) => question.working.map(oneLineOfXml).join('\n');
  const numbers = [sum, estimate, small, money, curve];

  test.each(numbers.map((question) => [question.of, question] as const))('%s', (_, question) => {
    const root = parse(item(question));
    const { answer, tolerance, slips } = question;
    const tried = [
      ...[answer, ...slips.map(({ value }) => value)].flatMap((value) =>
        [-3, -1.01, -0.99, -0.4, 0, 0.4, 0.99, 1.01, 3].map((by) => value + by * tolerance),
      ),
      ...slips.flatMap(({ value }) => [-0.011, -0.009, 0.009, 0.011].map((by) => value * (1 + by))),
      1254.9,
      1255.1,
    ];
    for (const value of tried.map((each) => Number(each.toFixed(5)))) {
      const { score, shown } = run(root, value);
      const own = mark(question, value.toFixed(5));
      expect([value, score]).toEqual([value, own.verdict === 'right' ? 1 : 0]);
      const recognised = [...slips.map(({ say }) => say), 'Right.'];
      const expected = recognised.includes(own.say) ? own.say : expect.stringContaining('That is not it.');
      expect([value, ...shown]).toEqual([value, expected, working(question)]);
    }
  });
  test.each(numbers.map((question) => [question.of, question] as const))(
    'the answer shown for %s is right',
    (_, question) => {
      const root = parse(item(question));
      const [shown] = named(named(root, 'qti-correct-response')[0]!, 'qti-value');
      expect(run(root, Number(textOf(shown!))).score).toBe(1);
    },
  );
  test('the answer and the known mistakes of every kind that there is', () => {
    for (const question of drawn.filter(isNumberQuestion)) {
      const root = parse(item(question));
      const [shown] = named(named(root, 'qti-correct-response')[0]!, 'qti-value');
      expect([question.kind, run(root, Number(textOf(shown!))).score]).toEqual([question.kind, 1]);
      for (const { value, say } of question.slips) expect(run(root, value).shown[0]).toBe(oneLineOfXml(say));
    }
  });
  test('each option of a choice', () => {
    impossible.options.forEach((_, i) => {
      const own = mark(impossible, 'ABC'[i]!);
      expect(run(parse(item(impossible)), `option-${'ABC'[i]!}`)).toEqual({
        score: own.verdict === 'right' ? 1 : 0,
        shown: [own.say, working(impossible)],
      });
    });
  });
  test('an order, right and wrong', () => {
    const root = parse(item(order));
    expect(run(root, ['step-B', 'step-C', 'step-A'])).toEqual({
      score: 1,
      shown: ['Right.', working(order)],
    });
    const wrong = run(root, ['step-A', 'step-B', 'step-C']);
    expect(wrong.score).toBe(0);
    expect(wrong.shown).toEqual([expect.stringContaining('out of place'), working(order)]);
  });
  test.each(samples)('no answer to %s', (_, question) => {
    const { score, shown } = run(parse(item(question)), undefined);
    expect(score).toBe(0);
    expect(shown).toEqual(['Not answered.', working(question).trim()]);
  });
});

describe('what a trainer may choose', () => {
  const root = (question: Question, rules: ItemRules) => parse(qtiItem(question, { ...settings, rules }));
  test('half marks go to what the handbook gives half marks for', () => {
    const of: NumberQuestion = { ...sum, answer: 812.34, digits: 1, tolerance: 0.06, slips: [] };
    expect(roundedOf(of)).toEqual([812, 810, 800]); // by hand: to whole ones, tens, and hundreds, which is 1.5 % off; to a thousand it is 23 % off
    for (const given of roundedOf(of)) {
      expect(run(root(of, { half: true }), given).score).toBe(0.5);
      expect(run(root(of, {}), given).score).toBe(0);
      expect([given, mark(of, String(given)).verdict]).toEqual([given, 'rounded']);
    }
    expect(run(root(of, { half: true }), 813).score).toBe(0);
    for (const question of drawn.filter(isNumberQuestion))
      for (const given of roundedOf(question))
        expect(run(root(question, { half: true }), given).score).toBe(
          run(root(question, {}), given).shown[0]!.startsWith('That is not it') ? 0.5 : 0,
        );
  });
  test('marks of a question go into its score and its highest score', () => {
    for (const [question, answer] of [
      [sum, 800],
      [impossible, 'option-B'],
      [order, ['step-B', 'step-C', 'step-A']],
    ] as const) {
      expect(run(root(question, { marks: 3 }), answer).score).toBe(3);
      expect(
        faults(
          qtiItem(question, { ...settings, rules: { marks: 3, half: true, working: false, comma: true } }),
        ),
      ).toEqual([]);
    }
    expect(run(root({ ...sum, answer: 812.34, tolerance: 0.06 }, { marks: 3, half: true }), 812).score).toBe(
      1.5,
    );
  });
  test('without the working none of it is in the document', () => {
    const without = qtiItem(sum, { ...settings, rules: { working: false } });
    expect(without).not.toContain('WORKING');
    expect(without).not.toContain(sum.working[1]!);
    expect(run(parse(without), 800)).toEqual({ score: 1, shown: ['Right.'] });
  });
  test('a comma is asked for where the system takes one', () => {
    expect(qtiItem(sum, { ...settings, rules: { comma: true } })).toContain('with a comma for decimals');
    expect(item(sum)).toContain('with a point for decimals');
  });
});

describe('QTI 2.1', () => {
  const old = qtiPackage(questions, { ...sheet, standard: '2.1' });
  test.each(Object.keys(old))(
    '%s is well-formed, in the namespaces of 2.1, and has no name of 3.0',
    (name) => {
      const root = parse(old[name]!);
      expect(root.namespace).toMatch(name === 'imsmanifest.xml' ? /imscp_v1p1$/ : /imsqti_v2p1$/);
      for (const node of everyNode(root)) {
        expect(node.name).not.toMatch(/^qti-|-/);
        for (const key of node.attributes.keys()) expect(key).not.toMatch(/^(?!xml|xsi|data-).*-/);
      }
    },
  );
  test('the names of 2.1 stand where those of 3.0 stood, with the same text', () => {
    const root = parse(old['items/question-1.xml']!);
    expect(root.name).toBe('assessmentItem');
    for (const name of [
      'responseDeclaration',
      'correctResponse',
      'outcomeDeclaration',
      'itemBody',
      'textEntryInteraction',
      'responseProcessing',
      'responseCondition',
      'responseIf',
      'responseElse',
      'setOutcomeValue',
      'baseValue',
      'modalFeedback',
    ])
      expect([name, named(root, name).length > 0]).toEqual([name, true]);
    expect(attribute(named(root, 'textEntryInteraction')[0]!, 'responseIdentifier')).toBe('RESPONSE');
    expect(attribute(root, 'timeDependent')).toBe('false');
    expect(named(root, 'contentBody')).toEqual([]);
    const texts = (xml: string) => named(parse(xml), 'p').map(textOf);
    for (const name of Object.keys(old).filter((each) => each.startsWith('items/')))
      expect(texts(old[name]!)).toEqual(texts(files[name]!));
    expect(named(parse(old['test.xml']!), 'assessmentItemRef')).toHaveLength(questions.length);
    expect(old['imsmanifest.xml']).toContain('type="imsqti_item_xmlv2p1"');
  });
});

describe('a table and results', () => {
  test('a row a question, formulas disarmed, numbers as the spreadsheet has them', () => {
    const versions = [{ version: 2, questions: [sum, impossible, order, withText('=1+1')[0]!], marks: [3, 1, 1, 1] }];
    const lines = questionsTable(versions, { working: false, comma: false }).split('\r\n');
    expect(lines[0]!.split(',')).toHaveLength(15);
    expect(lines[1]).toMatch(/^2,1,pure-alcohol,calculation,strength,1,3,Pure alcohol in a vat,"A vat .*",,800,/);
    expect(questionsTable(versions, { working: false, comma: false })).toContain(",'=1+1");
    const small2 = { ...sum, answer: 0.9985, digits: 4, of: 'gravity', tolerance: 0.0001, slips: [] } as NumberQuestion;
    expect(questionsTable([{ version: 1, questions: [small2] }], { working: false, comma: true })).toContain(';0,9985;');
    expect(questionsTable(versions, { working: true, comma: false })).toContain('1,250 × 64');
  });
  test('results as JSON say what the result says', () => {
    const text = resultsJson([{ sheet: 'abc1234', version: 2, name: 'Una Thornwath', marks: [{ verdict: 'right' }, { verdict: 'rounded' }, { verdict: 'wrong', family: 'percent' }] }]);
    expect(JSON.parse(text)).toMatchObject({
      formatVersion: 1,
      results: [{ name: 'Una Thornwath', sheet: 'abc1234', sheetVersion: 2, points: 1.5, of: 3, questions: [{ question: 1, verdict: 'right', points: 1 }, { points: 0.5 }, { verdict: 'wrong', mistake: expect.any(String) }] }],
    });
  });
}); // prettier-ignore

describe('a broken document is refused', () => {
  const broken: readonly (readonly [string, string, string | RegExp, string])[] = [
    ['a tag left open', item(sum), '</p>', ''],
    ['a bare ampersand', item(sum), 'vat at', 'vat & at'],
    ['a control character', item(sum), 'vat at', 'vat \u0001 at'],
    ['an attribute twice', item(order), 'shuffle="false"', 'shuffle="false" shuffle="true"'],
    ['another namespace', item(sum), 'xmlns="http://www.imsglobal.org/xsd/imsqtiasi_v3p0"', ''],
    ['another version’s namespace', item(sum), /imsqtiasi_v3p0/g, 'imsqti_v2p2'],
    ['another version’s names', item(sum), /qti-correct-response/g, 'correctResponse'],
    ['no title', item(sum), / title="[^"]*"/, ''],
    ['no time-dependent', item(sum), ' time-dependent="false"', ''],
    ['a word for a truth', item(sum), 'time-dependent="false"', 'time-dependent="no"'],
    ['an identifier with a space', item(sum), 'identifier="question-1"', 'identifier="question 1"'],
    ['an identifier that starts with a digit', item(sum), 'identifier="question-1"', 'identifier="1"'],
    ['an attribute of ours', item(sum), 'adaptive=', 'difficulty="1" adaptive='],
    ['a cardinality that is none', item(sum), 'cardinality="single"', 'cardinality="one"'],
    ['a base type that is none', item(sum), 'base-type="float"', 'base-type="number"'],
    ['a tolerance in words', item(sum), /tolerance="[^"]*"/, 'tolerance="8 or so"'],
    ['an answer to nothing', item(sum), 'response-identifier="RESPONSE"', 'response-identifier="ANSWER"'],
    ['three things compared', item(order), '<qti-correct ', '<qti-variable identifier="RESPONSE"/><qti-correct '],
    ['a response twice', item(sum), /(<qti-response-declaration[^]*<\/qti-response-declaration>)/, '$1$1'],
    ['an else before its if', item(sum), /qti-response-if/g, 'qti-response-else'],
    ['the body after the rules', item(sum), /(<qti-item-body>[^]*<\/qti-item-body>)\s*(<qti-response-processing>[^]*<\/qti-response-processing>)/, '$2$1'],
    ['text on its own in the body', item(sum), '<qti-item-body>', '<qti-item-body>Read this.'],
    ['a text entry on its own in the body', item(sum), '<qti-item-body>', '<qti-item-body><qti-text-entry-interaction response-identifier="RESPONSE"/>'],
    ['feedback without its wrapper', item(sum), /<\/?qti-content-body>/g, ''],
    ['feedback neither shown nor hidden', item(sum), ' show-hide="show"', ''],
    ['an empty body', item(sum), /<qti-item-body>[^]*<\/qti-item-body>/, '<qti-item-body/>'],
    ['a head without rows', item(curve), /<thead>[^]*<\/thead>/, '<thead/>'],
    ['the caption below the table', item(curve), /(<caption>[^]*<\/caption>)([^]*)<\/table>/, '$2$1</table>'],
    ['options without a prompt’s place', item(impossible), /(<qti-prompt>.*<\/qti-prompt>)([^]*)<\/qti-choice-interaction>/, '$2$1</qti-choice-interaction>'],
    ['no options', item(impossible), /<qti-simple-choice.*<\/qti-simple-choice>/g, ''],
    ['a test without parts', files['test.xml']!, /<qti-test-part[^]*<\/qti-test-part>/, ''],
    ['a section neither visible nor hidden', files['test.xml']!, ' visible="true"', ''],
    ['a way through that is none', files['test.xml']!, 'nonlinear', 'free'],
    ['an item without a file', files['test.xml']!, / href="[^"]*"/, ''],
    ['a manifest without organizations', files['imsmanifest.xml']!, '<organizations/>', ''],
    ['a manifest of another version', files['imsmanifest.xml']!, '3.0.0', '3.0'],
    ['a resource of an older type', files['imsmanifest.xml']!, 'imsqti_item_xmlv3p0', 'imsqti_item_xmlv2p2'],
    ['a resource without files', files['imsmanifest.xml']!, /<file [^>]*>/, ''],
    ['a dependency on nothing', files['imsmanifest.xml']!, /identifierref="[^"]*"/, 'identifierref="lost"'],
    ['another kind of document', '<lesson/>', 'lesson', 'book'],
  ]; // prettier-ignore
  test.each(broken)('%s', (_, whole, from, to) => {
    const changed = whole.replace(from, to);
    expect(changed).not.toBe(whole);
    expect(faults(changed)).not.toEqual([]);
  });
});
