// What figures are by custom: it tells which of several suspects to look at first, and never that one is wrong.
import type { SourceId } from '../sources.ts';
import { quotableFigures, type QuotableName } from './quoted.ts';
import type { Rules } from './distilled.ts';

type Custom = Readonly<{ value: number; spread: number; why: string; source: SourceId }>;

/** Beside what is usual of a figure that is not quoted; of a house that distils twice. */
const custom: Partial<Readonly<Record<QuotableName, Custom>>> = {
  originalGravity: { value: 1.06, spread: 0.006, why: '1.050 to 1.070 (recalled)', source: 'memory' },
  finalGravity: { value: 0.998, spread: 0.0015, why: '0.996 to 1.000 (recalled), and drier washes', source: 'memory' },
  washStrength: { value: 8.2, spread: 1, why: '7 to 8 % vol, and 8 to 10 in newer houses', source: 'common-practice' },
  lowWinesStrength: { value: 22.5, spread: 2.5, why: '20 to 25 % vol', source: 'common-practice' },
  chargeStrength: { value: 26, spread: 2.5, why: '24 to 28 % vol', source: 'common-practice' },
  heartBegins: { value: 74, spread: 2.5, why: 'foreshots fall to 72 to 75 % vol', source: 'common-practice' },
  heartEnds: { value: 61, spread: 2.5, why: 'a heart falls to 60 % vol, or is ended sooner', source: 'common-practice' },
  spiritYield: { value: 400, spread: 15, why: '385 to 420 L a tonne (recalled)', source: 'memory' },
  weeksPerYear: { value: 45, spread: 4, why: 'a year less a silent season', source: 'common-practice' },
}; // prettier-ignore

/** What differs where all is distilled three times, or a part of it. */
const ofThree: Readonly<Record<Exclude<Rules['scheme'], 'twice'>, typeof custom>> = {
  thrice: {
    chargeStrength: { value: 60, spread: 6, why: 'strong feints of an intermediate still', source: 'common-practice' },
    heartBegins: { value: 84, spread: 3, why: 'from a charge of strong feints', source: 'common-practice' },
    heartEnds: { value: 71, spread: 5, why: 'three distillations are cut high', source: 'common-practice' },
  },
  'part-thrice': {
    chargeStrength: { value: 32, spread: 5, why: 'low wines with stronger ones', source: 'common-practice' },
    heartBegins: { value: 78, spread: 3, why: 'from a charge that is stronger than low wines', source: 'common-practice' },
    heartEnds: { value: 63, spread: 4, why: 'as in two distillations, or sooner', source: 'common-practice' },
  },
}; // prettier-ignore

const MOST = 5; // spreads from custom, beyond which one more tells no more

/** Squared distance of a figure from custom, in its spread; nothing where there is no custom. */
function strangeness({ scheme, usual }: Rules, figure: QuotableName, value: number): number {
  const own = scheme === 'twice' ? undefined : ofThree[scheme][figure];
  const [known, [least, most]] = [own ?? custom[figure] ?? usual[figure], quotableFigures[figure].range];
  if (value < least || value > most) return MOST ** 2;
  return known ? Math.min(MOST, Math.abs(value - known.value) / known.spread) ** 2 : 0;
}

/**
 * How much nearer to custom a figure would be at another value: above 0 when the change would bring it nearer.
 * @example nearerCustom(DISTILLED_TWICE, 'heartStrength', 70, 70) // 0 (it did not move)
 */
export function nearerCustom(rules: Rules, figure: QuotableName, from: number, to: number): number {
  return strangeness(rules, figure, from) - strangeness(rules, figure, to);
}
