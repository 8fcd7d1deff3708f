// The units of the table in running text, with the things that guides count, and what each is in the handbook's own units.
import { measures, type Dimension as Measured } from '../core/measures.ts';
import { unitNames } from '../core/reading/unit-names.ts';
import { unitsOf, unitsRead } from '../core/units.ts';

/** What a unit measures; a number with no unit measures `bare`. */
export type SaidDimension =
  | Measured
  | 'milling' | 'flow' | 'ratio' | 'clock' | 'mashes' | 'washbacks' | 'stills' | 'casks' | 'bottles' | 'times' | 'people' | 'share' | 'date' | 'bare'; // prettier-ignore

export interface SaidUnit {
  /** As the handbook prints it; empty for things counted. */
  readonly unit: string;
  readonly dimension: SaidDimension;
}

interface Spelling extends SaidUnit {
  readonly says: RegExp;
}

const spelling = (unit: string, dimension: SaidDimension, says: string, sign = false): Spelling => ({
  unit,
  dimension,
  says: new RegExp(sign ? says : `(?:${says})(?![\\wà-ÿ])`, 'iy'),
});
/** Things counted, with up to three words that describe them before: wooden wash backs, Oregon pine washbacks. */
const described = "(?:(?!(?:of|in|and|or|the|a|an|at|to|for|with|is|are|from|per|on|we|it|its|that|this|then|times?|by|into|so|but|low|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\\w+teen|\\w+ty|litres?|liters?|tonnes?|days?|weeks?|years?|hours?)\\b)[a-zà-ÿ]{2,14}[\\s-]){0,3}?"; // prettier-ignore
const counted = (dimension: SaidDimension, says: string) =>
  spelling('', dimension, `${described}(?:${says})`);

/** A number or its beginning: what stands before “times” is then multiplied and counts no times. */
const another =
  '[.£$€]?\\d|point\\b|half\\b|an?\\s+(?:hundred|thousand|half|quarter|third)\\b|(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\\w+teen|(?:twen|thir|for|fif|six|seven|eigh|nine)ty)\\b(?!\\s+(?:days?|weeks?|months?|years?|shifts?)\\b)';

const litres = 'l|lit(?:re|er)s?|ltrs?';
const perHour =
  '\\s*(?:/|\\b(?:an|per|by|every|each|in\\s+an|in\\s+one|in\\s+the|in|at|to\\s+the)\\b)\\s*(?:h|hrs?|hours?)';
const rates: readonly Spelling[] = [
  spelling('t/h', 'milling', `(?:t|tonnes?|tons?)(?:\\s+of\\s+[a-z]+)?${perHour}`),
  spelling('kg/h', 'milling', `(?:kgs?|kilos?|kilogram(?:me)?s?)(?:\\s+of\\s+[a-z]+)?${perHour}`),
  spelling('L/h', 'flow', `(?:${litres})(?:\\s+of\\s+[a-z]+)?${perHour}`),
  spelling('m³/h', 'flow', `(?:m3|m³|cubic\\s+met(?:re|er)s?)${perHour}`),
  spelling('L/min', 'flow', `(?:${litres})\\s*(?:/|\\b(?:a|per)\\b)\\s*min(?:ute)?`),
  spelling(
    'L/kg',
    'ratio',
    `(?:${litres})(?:\\s+of\\s+[a-z]+)?\\s*(?:/|\\b(?:a|per|to|on|for)\\b(?:\\s+(?:the|a|each|every|one))?)\\s*(?:kgs?|kilos?|kilogram(?:me)?s?)`,
  ),
  spelling(
    'L/kg',
    'ratio',
    ':\\s*1(?![.,]?\\d)|to\\s+(?:one|1)(?![.,]\\d|\\s+(?:hundred|thousand|million|point)\\b)',
  ), // not “1,300 to 1,600”
  spelling('L/kg', 'ratio', '(?:for|to)\\s+(?:every|each|the|a|one)\\s+(?:kg|kilo)'),
];

// The first that fits counts.
const spellings: readonly Spelling[] = [
  ...rates,
  spelling('L/kg', 'ratio', 'times\\s+(?:of\\s+)?(?:the\\s+)?malt'),
  spelling('kt', 'mass', 'kt|kilotonnes?'),
  spelling('quintals', 'mass', 'quintals?|quintali'),
  spelling('kL', 'volume', 'kilolit(?:re|er)s?|kl'),
  spelling('m³', 'volume', 'kubik|cubics?'),
  spelling('pence', 'money', 'pence|p(?=\\s+(?:an?|per|each|on)\\b)'),
  spelling('proof gal', 'alcohol', 'proof[\\s-]+gal(?:lon)?s?|gal(?:lon)?s?\\s+at\\s+proof'),
  ...unitNames.flatMap(({ unit, dimension, says, sign }) =>
    says === undefined ? [] : [spelling(unit, dimension, says, sign)],
  ),
  spelling('', 'clock', "o['’]?\\s?clock|[ap]\\.?m\\.?"),
  spelling('', 'times', `times(?!\\s+(?:bigger|larger|as|more|that|${another}))|x`),
  counted('washbacks', 'wash[\\s-]?backs?|wash\\s+bags|fermenters?|fermentors?|vats'),
  counted('mashes', 'mash(?:es|ings)|brews'),
  counted('stills', 'stills|steels|kettles|stils'),
  counted('casks', 'casks?|casts|barrels?|hogsheads?|butts|hoggies|puncheons?'),
  counted('bottles', 'bottles?|btls?'),
  counted('people', 'people|men|women|persons?|guests?|visitors?|staff'),
];

const afterwards = /(\s+|\s?-\s?)?/y;

/** The unit that begins at a place in a text, after spaces or a hyphen, and where it ends. */
export function unitAt(text: string, at: number): (SaidUnit & { readonly end: number }) | undefined {
  afterwards.lastIndex = at;
  const gap = afterwards.exec(text)?.[0] ?? '';
  if (gap.length > 3 || /\n\s*\n/.test(gap)) return undefined;
  const from = at + gap.length;
  for (const { says, ...unit } of spellings) {
    if (unit.unit === '' && gap.includes('\n')) continue;
    says.lastIndex = from;
    const found = says.exec(text);
    if (found) return { ...unit, end: from + found[0].length };
  }
  return undefined;
}

const proof = (unit: string) => unitsOf('strength').find((each) => each.unit === unit)!.toCore;
/** Proof of a country that is not named is the former British, unless the text has settled it otherwise before. */
const proofs: Readonly<Record<string, readonly [toCore: (value: number) => number, most: number]>> = {
  '° proof': [proof('° former UK proof'), 175],
  '° former UK proof': [proof('° former UK proof'), 175],
  '° US proof': [proof('° US proof'), 200],
};
const knownProofs = new Map(Object.keys(proofs).map((unit) => [unit, new Map<number, number>()])); // a proof is a root to be found
function proofOf(value: number, unit: string): number {
  const [toCore, most] = proofs[unit]!;
  const known = knownProofs.get(unit)!;
  let strength = known.get(value);
  if (strength === undefined) {
    strength = toCore(Math.min(Math.max(value, 0), most));
    if (known.size < 2000) known.set(value, strength);
  }
  return strength;
}
const gravities = new Map(unitsRead('gravity').map(({ unit, toCore }) => [unit, toCore]));
const BRITISH_PROOF = 0.571; // litres of pure alcohol in a litre at the former British proof; from memory
const sizes = new Map([
  ...measures.map(({ unit, size }) => [unit, size] as const),
  ['proof gal', BRITISH_PROOF * measures.find(({ unit }) => unit === 'UK gal')!.size!] as const,
  ['t/h', 1] as const,
  ['kg/h', 0.001] as const,
]);

/** What a value in a said unit is in a unit of the handbook: kg, L, cL, h, years, °C, % vol, gravity. NaN never: an unknown unit stays as it is. */
export function inUnit(value: number, unit: string, wanted: string): number {
  if (unit === wanted) return value;
  if (unit === '°F') return (value - 32) / 1.8;
  if (Object.hasOwn(proofs, unit)) return proofOf(value, unit);
  const extract = wanted === 'gravity' ? gravities.get(unit) : undefined;
  if (extract && unit !== '') return extract(Math.min(Math.max(value, -20), unit === '° gravity' ? 200 : 32));
  if (wanted === 'gravity')
    return value >= 800 ? value / 1000 : value > 1.2 || value <= 0 ? 1 + value / 1000 : value; // 1058, 58, 1.058; −2 is 0.998
  const own = sizes.get(unit);
  const other = wanted === 'kg' || wanted === 'L' ? 1 : sizes.get(wanted);
  return own === undefined || other === undefined ? value : (value * own) / other;
}
