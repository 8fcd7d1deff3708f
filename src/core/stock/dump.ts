// Casks put together for a bottling: what they make, how many bottles, and the age that the label may state.
import { format } from '../format.ts';
import type { Claim, Definition } from '../law/claim.ts';
import { definitions } from '../law/definitions.ts';
import { bottleSpirit, type BottlingRun } from '../maturing/bottling.ts';
import { vat, type Vatting } from '../maturing/vatting.ts';
import { count, litres20, litresOfAlcohol, type Portion, type Quantity } from '../quantity.ts';
import { isRefusal, refuse, type Refusal } from '../refusal.ts';
import type { CaskGroup } from './group.ts';
import type { HeldCask } from './held.ts';

/** So many casks of a group, each holding `held`. */
export interface Dumped {
  readonly group: CaskGroup;
  readonly held: HeldCask;
  readonly casks: number;
}

/** The figures of a house by which it bottles. */
export interface BottlingFigures {
  readonly bottlingStrength: Quantity<'strength'>;
  readonly filterLoss: Quantity<'percent'>;
  readonly bottleSize: Quantity<'bottle'>;
  /** Spirit that stays in each emptied cask, L. */
  readonly caskResidue: Quantity<'volume20'>;
}

export interface Bottling {
  readonly vatting: Vatting;
  readonly run: BottlingRun;
}

const CASE = count(6); // bottles, a customary case; common practice

/**
 * What comes out of one cask: what it holds, less what stays in it.
 * @example emptiedCask({ volume: 100, strength: 60, alcohol: 60 }, litres20(1)) // { volume: 99, strength: 60, alcohol: 59.4 } (100 less 1)
 */
export function emptiedCask(held: Portion, caskResidue: Quantity<'volume20'>): Portion {
  const volume = litres20(Math.max(0, held.volume - caskResidue));
  return { volume, strength: held.strength, alcohol: litresOfAlcohol((volume * held.strength) / 100) };
}

/** Bottles from a spirit as the house bottles it. Refuses one that is weaker than the bottling strength. */
function bottled(spirit: Portion, figures: BottlingFigures): BottlingRun | Refusal {
  const { bottlingStrength: to, filterLoss: lost, bottleSize: bottle } = figures;
  if (spirit.strength < to)
    return refuse(
      `At ${format(spirit.strength, 'strength')} it is below the bottling strength, ${format(to, 'strength')}; water cannot strengthen it.`,
    );
  return bottleSpirit(spirit, { to, lost, bottle, perCase: CASE });
}

/**
 * Whole bottles from one cask by itself: a barrel and a butt give theirs, and the mean cask is in no room.
 * @example bottlesFromOne({ volume: 71, strength: 40, alcohol: 28.4 }, { bottlingStrength: strength(40), filterLoss: percent(0), bottleSize: 70, caskResidue: 1 }) // 100 (70 ÷ 0.7)
 */
export function bottlesFromOne(held: Portion, figures: BottlingFigures): Quantity<'count'> | Refusal {
  const out = emptiedCask(held, figures.caskResidue);
  if (!(out.volume > 0)) return refuse('Nothing comes out of it.');
  const run = bottled(out, figures);
  return isRefusal(run) ? run : run.bottles;
}

/**
 * Casks emptied into one vat, let down to the bottling strength, filtered and bottled. The age is that of the youngest
 * cask, in whole years that are over. Refuses casks of which nothing comes, and a vat weaker than the bottling strength.
 * @example dumpCasks([], { bottlingStrength: strength(40), filterLoss: percent(0), bottleSize: 70, caskResidue: 1 }) // refuses: No cask is chosen (none is)
 */
export function dumpCasks(dumped: readonly Dumped[], figures: BottlingFigures): Bottling | Refusal {
  const parts = dumped.flatMap(({ held, casks }) => {
    const out = emptiedCask(held, figures.caskResidue);
    return casks > 0 && out.volume > 0
      ? [{ volume: litres20(out.volume * casks), strength: out.strength, age: held.age }]
      : [];
  });
  if (parts.length === 0) return refuse('No cask is chosen that gives anything.');
  const vatting = vat(parts);
  const run = bottled(vatting, figures);
  return isRefusal(run) ? run : { vatting, run };
}

/** A spirit at whose casks no rule takes offence. */
const faultless: Claim = {
  madeIn: 'Scotland',
  maturedIn: 'Scotland',
  grain: 'malted barley only',
  still: 'pot still',
  oneDistillery: true,
  distilledAt: 70,
  filledAt: 60,
  added: 'water only',
  wood: 'used or uncharred oak',
  largestCask: 200,
  years: 50,
  bottledAt: 46,
};

/** One thing that rules ask and these casks do not give, and the names that it bars. */
export interface Barred {
  readonly asks: string;
  readonly names: readonly string[];
}

/**
 * What the rules of core/law ask of age, size, wood and strength in the bottle that a vatting does not give, the same demand once.
 * @example barredBy([{ group: { size: 200, wood: 'american' }, held: {}, casks: 1 }], { age: 12 }, strength(46)) // [] (oak, small, old and strong enough for every rule)
 */
export function barredBy(
  dumped: readonly Dumped[],
  { age }: Vatting,
  bottledAt: Quantity<'strength'>,
  rules: readonly Definition[] = definitions,
): readonly Barred[] {
  const groups = dumped.filter(({ casks }) => casks > 0).map(({ group }) => group);
  const isOak = groups.every(({ wood }) => wood !== 'other');
  const casks = {
    years: age,
    largestCask: Math.max(...groups.map(({ size }) => size)),
    wood: isOak ? faultless.wood : ('other wood' as const),
    bottledAt,
  };
  const barred = new Map<string, string[]>();
  const [best, found] = [faultless, { ...faultless, ...casks }];
  for (const { name, points } of rules)
    for (const { asks, meets } of points)
      if (meets(best) && !meets(found)) barred.set(asks, [...(barred.get(asks) ?? []), name]);
  return [...barred].map(([asks, names]) => ({ asks, names }));
}
