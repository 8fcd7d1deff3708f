// What figures are by custom: it tells which of several suspects to look at first, and never that one is wrong.
import type { SourceId } from '../sources.ts';
import { quotableFigures, type QuotableName } from './quoted.ts';
import { usual } from './relations.ts';

type Custom = Readonly<{ value: number; spread: number; why: string; source: SourceId }>;

/** Beside what is usual of a figure that is not quoted. */
const custom: Partial<Readonly<Record<QuotableName, Custom>>> = {
  ...usual,
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

const MOST = 5; // spreads from custom, beyond which one more tells no more

/** Squared distance of a figure from custom, in its spread; nothing where there is no custom. */
function strangeness(figure: QuotableName, value: number): number {
  const [known, [least, most]] = [custom[figure], quotableFigures[figure].range];
  if (value < least || value > most) return MOST ** 2;
  return known ? Math.min(MOST, Math.abs(value - known.value) / known.spread) ** 2 : 0;
}

/** How much nearer to custom a figure would be at another value: above 0 when the change would bring it nearer. */
export function nearerCustom(figure: QuotableName, from: number, to: number): number {
  return strangeness(figure, from) - strangeness(figure, to);
}
