// What must hold of quoted figures in a house by the way it distils: twice; three times; or a part of its low wines three times.
import { runStill } from '../distilling/run.ts';
import { remember } from '../numerics/remember.ts';
import type { Plant } from '../plant/plant.ts';
import { litres20, strength } from '../quantity.ts';
import type { QuotableName } from './quoted.ts';
import {
  alcoholInCharge,
  heldBetween,
  relations,
  usualFigures,
  WASH_REFLUX,
  type Relation,
  type UsualFigures,
  type Values,
} from './relations.ts';
import { isRefusal } from '../refusal.ts';

/** How the house distils whose figures are quoted, with what its plant says of that. */
export type Distilled =
  | { readonly scheme: 'twice' }
  | ({ readonly scheme: 'thrice' } & Pick<Plant, 'strongFeintsEnd'>)
  | ({ readonly scheme: 'part-thrice' } & Pick<Plant, 'runAgain'>);

/**
 * How a plant distils, as far as quoted figures hang on it.
 * @example distilledIn({ scheme: 'part-thrice', runAgain: 40, strongFeintsEnd: 20 }) // { scheme: 'part-thrice', runAgain: 40 } (what such a house is judged by)
 */
export function distilledIn({ scheme, strongFeintsEnd, runAgain }: Plant): Distilled {
  if (scheme === 'thrice') return { scheme, strongFeintsEnd };
  return scheme === 'part-thrice' ? { scheme, runAgain } : { scheme };
}

/** The relations that hold in a house, what its figures usually are, and where a search for them begins. */
export interface Rules {
  readonly scheme: Distilled['scheme'];
  readonly relations: Readonly<Partial<Record<RelationName, Relation>>>;
  readonly usual: UsualFigures;
  readonly typical: Readonly<Partial<Record<QuotableName, number>>>;
}

/** What low wines give when they are run once more down to a strength at the safe: its strength, and litres to one of them. */
const runOnce = remember(([charged, until]: readonly [number, number]) => {
  const run = runStill({
    charge: { volume: litres20(100), strength: strength(heldBetween(2, charged, 60)) },
    reflux: WASH_REFLUX,
    until: strength(until),
  });
  if (isRefusal(run)) return { strength: until, volume: 0 }; // low wines so weak that none of it is strong
  return { strength: run.distillate.strength as number, volume: run.distillate.volume / 100 };
}, 64, ([a, b], [c, d]) => a === c && b === d); // prettier-ignore

const LEES = 1; // % vol at the safe at which a run is stopped; common practice

/** Low wines of which a part is run again: litres of that and of the rest, to one litre. */
const whatComes = (v: Values, runAgain: number) =>
  v.lowWinesVolume * (1 - (runAgain / 100) * (1 - runOnce([v.lowWinesStrength, LEES]).volume));

/** The heart as a part of its charge’s alcohol. */
const ofCharge = (times: number, spread: number, why: string): Relation => ({
  figures: ['heartAlcohol', 'chargeVolume', 'chargeStrength'],
  sides: (v) => [v.heartAlcohol, alcoholInCharge(v)],
  times,
  spread,
  why,
  source: 'carey-lewis-1932',
});
/** The heart as a part of the low wines’ alcohol, of two lees. */
const ofLowWines: Relation = {
  ...relations.spiritStill,
  times: 0.991,
  spread: 0.005,
  why: 'two more stills each let a little go, and the lees of both are run away: 98 to 99.8 % of what the low wines bring is left',
};

const strongFeints = (end: number): Relation => ({
  figures: ['chargeStrength', 'lowWinesStrength'],
  sides: (v) => [v.chargeStrength, runOnce([v.lowWinesStrength, end]).strength],
  spread: 2.5,
  as: 'own',
  why: 'the charge is the strong feints of the intermediate still, with as strong ones of its own: the curve of a still with a reflux of 0.05; another reflux, cut or foreshots move it by 1 to 4 % vol',
  source: 'carey-lewis-1932',
});
const chargeHoldsWhatComes = (runAgain: number): Relation => ({
  figures: ['lowWinesVolume', 'lowWinesStrength', 'chargeVolume'],
  sides: (v) => [whatComes(v, runAgain), v.chargeVolume],
  spread: 0.02,
  only: 'ceiling',
  why: 'the spirit charge holds the low wines that are not run again, what comes of the others, and foreshots and feints besides',
  source: 'derived',
});

const {
  charge: _,
  chargeHoldsLowWines: __,
  spiritStill: ___,
  throughBothStills: through,
  ...common
} = relations;
const thrice = { heartStrength: { value: 82, spread: 3, why: 'three distillations give 76 to 86 % vol', source: 'common-practice' } } as const; // prettier-ignore
const partly = { heartStrength: { value: 73.5, spread: 3, why: 'between what two and three distillations give', source: 'common-practice' } } as const; // prettier-ignore

/** The rules of a house of two distillations. */
export const DISTILLED_TWICE: Rules = { scheme: 'twice', relations, usual: usualFigures, typical: {} };

/**
 * The rules of a house by the way it distils.
 * @example crossCheckRules({ scheme: 'twice' }).scheme // 'twice' (as it distils)
 */
export function crossCheckRules(distilled: Distilled): Rules {
  const { scheme } = distilled;
  if (scheme === 'twice') return DISTILLED_TWICE;
  const all = { ...common, spiritStill: ofLowWines, throughBothStills: { ...through, times: 0.979 } };
  return scheme === 'thrice'
    ? {
        scheme,
        relations: {
          ...all,
          strongFeints: strongFeints(distilled.strongFeintsEnd),
          chargeOfThree: ofCharge(0.85, 0.08, 'the charge is strong, and 70 to 92 % of its alcohol is heart; the rest is foreshots and feints, which come back'), // prettier-ignore
        },
        usual: { ...usualFigures, ...thrice },
        typical: {
          heartStrength: 82,
          heartBegins: 85,
          heartEnds: 71,
          chargeStrength: 60,
          chargeVolume: 6000,
        },
      }
    : {
        scheme,
        relations: {
          ...all,
          chargeHoldsWhatComes: chargeHoldsWhatComes(distilled.runAgain),
          chargeOfPart: ofCharge(0.66, 0.16, 'the heart is 50 to 80 % of the charge’s alcohol where a part of the low wines is run again; the rest is foreshots and feints, which come back'), // prettier-ignore
        },
        usual: { ...usualFigures, ...partly },
        typical: {
          heartStrength: 73.5,
          heartBegins: 79,
          heartEnds: 64,
          chargeStrength: 32,
          chargeVolume: 15_000,
        },
      };
}

type OwnName = 'strongFeints' | 'chargeOfThree' | 'chargeHoldsWhatComes' | 'chargeOfPart';
export type RelationName = keyof typeof relations | OwnName;
