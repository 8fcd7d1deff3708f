// Response processing of an item, carried out as QTI 3.0 tells it, for the rules that the export uses.
import { attribute, inside, named, textOf, type Node } from './qti-model.ts';

type Value = number | string | readonly string[] | undefined;

const valueOf = (baseType: string, text: string): Value => (baseType === 'float' ? Number(text) : text);

/** What an item makes of an answer: its score, and the text of each feedback that it shows. */
export function run(
  item: Node,
  response: Value,
): { readonly score: Value; readonly shown: readonly string[] } {
  const variables = new Map<string, Value>();
  const correct = new Map<string, Value>();
  for (const declared of [
    ...named(item, 'qti-response-declaration'),
    ...named(item, 'qti-outcome-declaration'),
  ]) {
    const found = named(declared, 'qti-value').map((each) =>
      valueOf(attribute(declared, 'base-type'), textOf(each)),
    );
    const whole = attribute(declared, 'cardinality') === 'single' ? found[0] : (found as string[]);
    const isResponse = declared.name === 'qti-response-declaration';
    variables.set(attribute(declared, 'identifier'), isResponse ? response : whole);
    if (isResponse) correct.set(attribute(declared, 'identifier'), whole);
  }

  function evaluate(node: Node): Value | boolean {
    const [first, second] = inside(node).map(evaluate);
    switch (node.name) {
      case 'qti-base-value':
        return valueOf(attribute(node, 'base-type'), textOf(node));
      case 'qti-variable':
        return variables.get(attribute(node, 'identifier'));
      case 'qti-correct':
        return correct.get(attribute(node, 'identifier'));
      case 'qti-is-null':
        return first === undefined;
      case 'qti-match':
        return first !== undefined && JSON.stringify(first) === JSON.stringify(second);
      case 'qti-equal': {
        const [below, above = below] = attribute(node, 'tolerance').split(' ').map(Number);
        if (typeof first !== 'number' || typeof second !== 'number') return undefined;
        return second >= first - below! && second <= first + above!;
      }
      default:
        throw new Error(`no rule for ${node.name}`);
    }
  }

  function carryOut(rule: Node): void {
    if (rule.name === 'qti-set-outcome-value')
      return void variables.set(attribute(rule, 'identifier'), evaluate(inside(rule)[0]!) as Value);
    for (const branch of inside(rule)) {
      const [when, ...then] = inside(branch);
      if (branch.name === 'qti-response-else') return inside(branch).forEach(carryOut);
      if (evaluate(when!) === true) return then.forEach(carryOut);
    }
  }
  named(item, 'qti-response-processing').flatMap(inside).forEach(carryOut);

  const shown = named(item, 'qti-modal-feedback').filter(
    (each) => variables.get(attribute(each, 'outcome-identifier')) === attribute(each, 'identifier'),
  );
  return {
    score: variables.get('SCORE'),
    shown: shown.map((each) => textOf(each).trim().replace(/\n\s*/g, '\n')),
  };
}
