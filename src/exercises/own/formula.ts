// A formula in plain notation, read by a strict grammar of our own into a tree; nothing in it is ever run as code.
import { refuse, type Refusal } from '../../core/refusal.ts';
import { quotedGiven } from '../../core/quoted-given.ts';

/*
 *   sum     = [ − ] product { ( + | − ) product }
 *   product = power { ( × | / ) power }
 *   power   = part [ ^ [ − ] power ]
 *   part    = number [ unit ] | name [ unit ] | function ( sum { ; sum } ) | ( sum )
 *   unit    = [ any text but a bracket ]
 */
export type Operation = '+' | '−' | '×' | '/' | '^';
export type Formula =
  | { readonly is: 'number'; readonly value: number; readonly unit?: string }
  | { readonly is: 'name'; readonly name: string; readonly unit?: string }
  | { readonly is: 'negative'; readonly of: Formula }
  | { readonly is: Operation; readonly left: Formula; readonly right: Formula }
  | { readonly is: 'call'; readonly name: FunctionName; readonly of: readonly Formula[] };

/** The functions of a formula, each with how many values it takes. */
export const formulaFunctions = {
  sqrt: [1, 1],
  abs: [1, 1],
  exp: [1, 1],
  ln: [1, 1],
  log: [1, 1],
  up: [1, 1],
  down: [1, 1],
  least: [2, 6],
  most: [2, 6],
} as const satisfies Readonly<Record<string, readonly [number, number]>>;
export type FunctionName = keyof typeof formulaFunctions;
export const isFunction = (name: string): name is FunctionName => Object.hasOwn(formulaFunctions, name);

export const LONGEST_FORMULA = 300; // characters
const DEEPEST = 30; // brackets within brackets
/** What a value may be called: a letter, then letters, digits or _; 24 signs at most. */
export const VALUE_NAME = /^[A-Za-z][A-Za-z0-9_]{0,23}$/;

interface Sign {
  readonly is: 'number' | 'name' | 'unit' | 'sign' | 'end';
  readonly text: string;
  readonly at: number;
}
/** Thrown within this file; leaves it as a refusal. */
class Unreadable extends Error {}

const SIGNS = /\s*(?:(\d+(?:\.\d+)?)|([A-Za-z][A-Za-z0-9_]*)|\[([^[\]]*)\]|([-+−*×·/÷^();]))/y;
const PLAIN: Readonly<Record<string, string>> = { '-': '−', '*': '×', '·': '×', '÷': '/' };

function signsOf(text: string): readonly Sign[] {
  const signs: Sign[] = [];
  SIGNS.lastIndex = 0;
  let at = 0;
  while (text.slice(at).trim() !== '') {
    SIGNS.lastIndex = at;
    const found = SIGNS.exec(text);
    if (!found) throw new Unreadable(strange(text.slice(at).trim()));
    const [, number, name, unit, sign] = found;
    at = SIGNS.lastIndex;
    if (number !== undefined) signs.push({ is: 'number', text: number, at });
    else if (name !== undefined) signs.push({ is: 'name', text: name, at });
    else if (unit !== undefined) signs.push({ is: 'unit', text: unit.trim(), at });
    else signs.push({ is: 'sign', text: PLAIN[sign!] ?? sign!, at });
  }
  return [...signs, { is: 'end', text: '', at }];
}

function strange(rest: string): string {
  if (rest.startsWith(','))
    return 'A comma stands in the formula: write 1.5 with a point, 1000 without a comma, and a semicolon between the values of a function.';
  if (rest.startsWith('%')) return 'Write / 100 for per cent: the sign % is not used in a formula.';
  if (rest.startsWith('.')) return 'Write 0.5 with its nought, and no point at the end of a number.';
  if (rest.startsWith('[')) return 'A bracket [ of a unit is not closed.';
  return `“${quotedGiven(rest.slice(0, 12))}” is no part of a formula: it has numbers, names, + − × / ^ and brackets.`;
}

/** Reads a formula; a sentence where it cannot be read. Names are not looked up here. */
export function readFormula(text: string): Formula | Refusal {
  if (text.length > LONGEST_FORMULA)
    return refuse(`The formula has ${text.length} signs; it may have ${LONGEST_FORMULA}.`);
  if (text.trim() === '') return refuse('The formula is empty.');
  try {
    return parsed(signsOf(text));
  } catch (problem) {
    if (problem instanceof Unreadable) return refuse(problem.message);
    throw problem;
  }
}

function parsed(signs: readonly Sign[]): Formula {
  let at = 0;
  let depth = 0;
  const here = () => signs[at]!;
  const isSign = (...texts: readonly string[]) => here().is === 'sign' && texts.includes(here().text);
  const fail = (what: string): never => {
    const { is, text } = here();
    throw new Unreadable(
      is === 'end'
        ? `The formula ends where ${what} should stand.`
        : `“${quotedGiven(text)}” stands where ${what} should.`,
    );
  };
  const take = () => signs[at++]!;
  const close = () => {
    if (!isSign(')')) fail('a closing bracket');
    at++;
    depth--;
  };
  const opened = () => {
    at++;
    if (++depth > DEEPEST)
      throw new Unreadable(`The formula has more than ${DEEPEST} brackets within one another.`);
  };
  const unit = () => (here().is === 'unit' ? { unit: take().text } : {});

  function sum(): Formula {
    let left: Formula;
    if (isSign('−')) {
      at++;
      left = { is: 'negative', of: product() };
    } else left = product();
    while (isSign('+', '−')) {
      const is = take().text as Operation;
      left = { is, left, right: product() };
    }
    return left;
  }
  function product(): Formula {
    let left = power();
    while (isSign('×', '/')) {
      const is = take().text as Operation;
      left = { is, left, right: power() };
    }
    if (['number', 'name'].includes(here().is) || isSign('('))
      throw new Unreadable(
        `A sign is missing before “${quotedGiven(here().text)}”: write × where you multiply.`,
      );
    return left;
  }
  function power(): Formula {
    const left = part();
    if (!isSign('^')) return left;
    at++;
    if (++depth > DEEPEST) throw new Unreadable(`The formula has more than ${DEEPEST} powers of powers.`);
    const isNegative = isSign('−');
    if (isNegative) at++;
    const right = power();
    depth--;
    return { is: '^', left, right: isNegative ? { is: 'negative', of: right } : right };
  }
  function part(): Formula {
    if (here().is === 'number') {
      const value = Number(take().text);
      if (!(value <= 1e12))
        throw new Unreadable('A number in the formula is larger than anything in a house.');
      return { is: 'number', value, ...unit() };
    }
    if (here().is === 'name') {
      const name = take().text;
      if (!isSign('(')) return { is: 'name', name, ...unit() };
      if (!isFunction(name))
        throw new Unreadable(
          `There is no function “${quotedGiven(name)}”: there are ${Object.keys(formulaFunctions).join(', ')}. Write × before a bracket.`,
        );
      opened();
      const of = [sum()];
      while (isSign(';')) {
        at++;
        of.push(sum());
      }
      close();
      const [fewest, most] = formulaFunctions[name];
      if (of.length < fewest || of.length > most)
        throw new Unreadable(
          `The function ${name} takes ${fewest === most ? fewest : `${fewest} to ${most}`} value${most === 1 ? '' : 's, with a semicolon between them'}; here it has ${of.length}.`,
        );
      return { is: 'call', name, of };
    }
    if (isSign('(')) {
      opened();
      const inner = sum();
      close();
      return inner;
    }
    return fail('a number, a name or a bracket');
  }

  const whole = sum();
  if (here().is !== 'end') fail('a sign or the end');
  return whole;
}

/** The names of values that a formula uses, each once. */
export function namesIn(formula: Formula): readonly string[] {
  const found = new Set<string>();
  const look = (each: Formula): void => {
    if (each.is === 'name') found.add(each.name);
    else if (each.is === 'negative') look(each.of);
    else if (each.is === 'call') each.of.forEach(look);
    else if (each.is !== 'number') [each.left, each.right].forEach(look);
  };
  look(formula);
  return [...found];
}

const RANK = { '+': 1, '−': 1, '×': 2, '/': 2, '^': 4 } as const;
const rankOf = (formula: Formula) =>
  formula.is in RANK ? RANK[formula.is as Operation] : formula.is === 'negative' ? 1 : 5;

/** A formula as text again, with only the brackets that it needs; `name` and `number` say how those are written. */
export function formulaText(
  formula: Formula,
  name: (of: Extract<Formula, { is: 'name' }>) => string = ({ name, unit }) =>
    unit === undefined ? name : `${name}[${unit}]`,
  number: (of: Extract<Formula, { is: 'number' }>) => string = ({ value, unit }) =>
    unit === undefined ? plainNumber(value) : `${plainNumber(value)}[${unit}]`,
): string {
  const bracketed = (each: Formula, least: number) => (rankOf(each) < least ? `(${text(each)})` : text(each));
  function text(each: Formula): string {
    if (each.is === 'number') return number(each);
    if (each.is === 'name') return name(each);
    if (each.is === 'negative') return `−${bracketed(each.of, 2)}`;
    if (each.is === 'call') return `${each.name}(${each.of.map(text).join('; ')})`;
    const rank = RANK[each.is];
    if (each.is === '^') {
      const right =
        each.right.is === 'negative' ? `−${bracketed(each.right.of, 4)}` : bracketed(each.right, 4);
      return `${bracketed(each.left, 5)}^${right}`;
    }
    return `${bracketed(each.left, rank)} ${each.is} ${bracketed(each.right, rank + 1)}`;
  }
  return text(formula);
}

/** A number written with no power of ten, as the grammar reads it. */
const plainNumber = (value: number): string =>
  Number.isInteger(value) ? value.toFixed(0) : value.toFixed(20).replace(/0+$/, '');
