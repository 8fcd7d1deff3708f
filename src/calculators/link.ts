// A calculator's own figures in an address: what a trainer typed, for a trainee to begin with.
import { formatNumber, rangeProblem } from '../core/format.ts';
import { isRefusal } from '../core/refusal.ts';
import { quotedGiven } from '../core/quoted-given.ts';
import { isNumber, isRows, type AnyCalculator, type AnyGiven, type Input } from './define.ts';

export const SUM_MARK = '#with=';
const LONGEST = 2000; // characters of a link that is read

/** True for what is the calculator's own: figures of the house are the reader's, and tables are too long for an address. */
const isOwn = (input: Input): boolean => !('house' in input) && !isRows(input);

/** The part of an address that carries a calculator's own figures; nothing where it has none. */
export function sumLink({ inputs }: AnyCalculator, given: AnyGiven): string {
  const own = Object.entries(inputs).filter(([, input]) => isOwn(input));
  if (own.length === 0) return '';
  return SUM_MARK + own.map(([name]) => `${name}:${encodeURIComponent(String(given[name]))}`).join(',');
}

/** What is wrong with one figure of a link, or its value. */
function read(input: Input | undefined, name: string, text: string): number | string | { readonly wrong: string } {
  if (input === undefined || !isOwn(input)) return { wrong: `“${quotedGiven(name)}” is nothing that this sum takes.` };
  if (isNumber(input)) {
    const value = text.trim() === '' ? NaN : Number(text);
    const [low, high] = input.range;
    return value >= low && value <= high ? value : { wrong: rangeProblem(input.label, Number.isFinite(value) ? formatNumber(value, 3) : quotedGiven(text), input.kind, input.range) };
  }
  const options = 'options' in input ? input.options : {};
  return Object.hasOwn(options, text) ? text : { wrong: `“${quotedGiven(text)}” is none of its choices.` };
} // prettier-ignore

/**
 * The figures of a link, and a sentence for each that cannot be used. `all` is what the sum stands on without it: figures
 * that it refuses together are left out together.
 */
export function readSumLink(
  of: AnyCalculator,
  hash: string,
  all: AnyGiven,
): { readonly own: AnyGiven; readonly problems: readonly string[] } | undefined {
  if (!hash.startsWith(SUM_MARK)) return undefined;
  if (hash.length > LONGEST) return { own: {}, problems: ['The link is too long to be read.'] };
  const own: Record<string, AnyGiven[string]> = {};
  const problems: string[] = [];
  for (const each of hash.slice(SUM_MARK.length).split(',')) {
    const [name = '', text = ''] = each.split(':');
    const said = read(Object.hasOwn(of.inputs, name) ? of.inputs[name] : undefined, name, decoded(text));
    if (typeof said === 'object') problems.push(said.wrong);
    else own[name] = said as AnyGiven[string];
  }
  const together = { ...all, ...own };
  const result = of.refuse?.(together) ?? of.compute(together);
  const refused = typeof result === 'string' ? result : isRefusal(result) ? result.refused : undefined;
  return refused === undefined ? { own, problems } : { own: {}, problems: [...problems, refused] };
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
