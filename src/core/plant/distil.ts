// The wash of a mash through the stills of a plant, twice, thrice or part-thrice, in a round that comes back unchanged.
import { quantity, share, type Portion, type Quantity, type Spirit } from '../quantity.ts';
import { isRefusal, refuse, type Refusal } from '../refusal.ts';
import { amountsOf, minus, plus, portionOf, type Amounts } from '../spirit/amounts.ts';
import type { ForeshotsEnd } from '../distilling/cuts.ts';
import { ofRuns } from '../distilling/foreshots.ts';
import { limitOfCharge, roundPlan, spiritCuts } from '../distilling/plan.ts';
import {
  LARGEST_CHARGE,
  moleFractionOf,
  settleRound,
  tooLarge,
  type Between,
  type Round,
} from '../distilling/round.ts';
import { runStill, SummedRun, type Run } from '../distilling/run.ts';
import { stillCurve, strengthOfVapour, type StillSetting } from '../distilling/still.ts';
import type { VapourModel } from '../vapour/equilibrium.ts';
import type { House } from '../line/house.ts';
import { settleThrice, settleTogether, type SettledCharge } from './balance.ts';
import type { Plant, Stills } from './plant.ts';
import { foreshotsByRun, runsOfMash } from './runs-of-mash.ts';
import {
  NO_AMOUNTS,
  runSides,
  sidesOf,
  scaledAmounts,
  type RunEnds,
  type StillSide,
} from './side-by-side.ts';

interface Found {
  readonly spirit: SettledCharge;
  readonly between?: Readonly<Record<keyof Between, Amounts>>;
}
/** How the spirit stills, and those before them, are balanced with foreshots that end so. */
type Balance = (foreshots: RunEnds['foreshots']) => Found | Refusal;

const MOST_FORESHOTS = 0.4; // of the charge's alcohol; the most that the table of figures takes
const FIRST_SHARE = 0.02; // of it, with which the search begins
const CLOSE = 1e-10; // of the litres wanted
const STEPS = 20; // of the search; four are usual

/** A balance whose foreshots end so; litres are of all that a mash gives, and become the share at which they are so many. */
function withForeshots(balance: Balance, end: ForeshotsEnd): ReturnType<Balance> {
  if (typeof end === 'number') return balance({ strength: end });
  if (!('volume' in end)) return balance(end);
  if (end.volume === 0) return balance({ share: 0 });
  // Litres are very nearly in proportion to the share: a few steps of the secant.
  let before = { part: 0, litres: 0 };
  let part = FIRST_SHARE;
  for (let step = 0; step < STEPS; step++) {
    const found = balance({ share: part });
    if (isRefusal(found)) return found;
    const { volume: litres } = portionOf(found.spirit.foreshots);
    if (Math.abs(litres - end.volume) < CLOSE * end.volume) return found;
    const next = part + ((end.volume - litres) * (part - before.part)) / (litres - before.litres);
    [before, part] = [{ part, litres }, next];
    if (!(part <= MOST_FORESHOTS)) break;
  }
  return refuse(
    `Foreshots of ${end.volume} L would take more than ${100 * MOST_FORESHOTS} % of the alcohol of the spirit charge.`,
  );
}

/** How the spirit stills are balanced in each scheme. */
function balanceOf(house: House, plant: Plant, lowWines: Amounts, model?: VapourModel): Balance | Refusal {
  const spirit = sidesOf(plant.spiritStills, house.airPressure, model);
  const cuts = spiritCuts(house);
  const letDownTo = limitOfCharge(house);
  const limit = letDownTo === undefined ? Infinity : moleFractionOf(letDownTo);
  const ends = (foreshots: RunEnds['foreshots'], strong = cuts.feints): RunEnds => ({
    foreshots,
    heart: cuts.heart,
    strong,
    weak: cuts.feints,
  });
  const near = {};
  if (plant.scheme === 'twice')
    return (foreshots) => alone(settleTogether(lowWines, spirit, ends(foreshots), limit, near));

  const between = sidesOf(plant.intermediateStills, house.airPressure, model);
  if (plant.scheme === 'thrice') {
    const strong = quantity('strength', plant.strongFeintsEnd);
    return (foreshots) => {
      const found = settleThrice(lowWines, between, spirit, ends(foreshots, strong), near);
      if (isRefusal(found)) return found;
      const { intermediate } = found;
      return {
        spirit: found.spirit,
        between: {
          charge: intermediate.charge,
          onward: intermediate.strong,
          lees: intermediate.residue,
          weak: intermediate.weak,
          fromSpirit: found.spirit.weak,
          strong: found.spirit.strong,
        },
      };
    };
  }
  const again = scaledAmounts(plant.runAgain / 100, lowWines);
  const run = runSides(again, between, cuts.feints);
  if (isRefusal(run)) return run;
  const comes = plus(minus(lowWines, again), run.distillate);
  return (foreshots) => {
    const found = settleTogether(comes, spirit, ends(foreshots), limit, near);
    if (isRefusal(found)) return found;
    return {
      spirit: found,
      between: {
        charge: again,
        onward: run.distillate,
        lees: run.residue,
        weak: NO_AMOUNTS,
        fromSpirit: NO_AMOUNTS,
        strong: plus(found.strong, found.weak),
      },
    };
  };
}

const alone = (spirit: SettledCharge | Refusal) => (isRefusal(spirit) ? spirit : { spirit });

/** What is missing for a scheme, or nothing. */
function missing({ washStills, intermediateStills, spiritStills, scheme }: Plant): string | undefined {
  if (washStills.length === 0) return 'No wash still is named, so no wash is distilled.';
  if (spiritStills.length === 0) return 'No spirit still is named, so no spirit is made.';
  if (scheme !== 'twice' && intermediateStills.length === 0)
    return 'No intermediate still is named, and a third distillation needs one.';
  return undefined;
}

/** A run of several stills as one: drawn as in those that hold most, and summed over all. */
function asOneRun(
  charge: Portion,
  sides: readonly StillSide[],
  until: Quantity<'strength'>,
  distillate: Amounts,
  residue: Amounts,
): Run | Refusal {
  const main = sides.toSorted((a, b) => b.part - a.part)[0]!;
  const run = runStill({ ...main.setting, charge, until });
  if (isRefusal(run)) return run;
  const sums = {
    setting: main.setting,
    charge,
    distillate: portionOf(distillate),
    residue: portionOf(residue),
  };
  return new SummedRun(sums, () => run.curve);
}

const onlyReflux = (stills: readonly Stills[]) =>
  stills.every(({ reflux }) => reflux === stills[0]!.reflux) ? share(stills[0]!.reflux) : undefined;

/** The wash of one mash through a plant, with foreshots that end so; litres are of all the runs of a mash. */
function distilUntil(
  foreshots: ForeshotsEnd,
  plant: Plant,
  house: House,
  wash: Spirit,
  model?: VapourModel,
): Round | Refusal {
  const [washReflux, spiritReflux] = [plant.washStills, plant.spiritStills].map(onlyReflux);
  if (plant.scheme === 'twice' && washReflux !== undefined && spiritReflux !== undefined) {
    const plan = roundPlan({ ...house, washReflux, spiritReflux }, wash, model);
    return settleRound({ ...plan, spiritStill: { ...plan.spiritStill, foreshots } });
  }

  const washSides = sidesOf(plant.washStills, house.airPressure, model);
  const washed = amountsOf(wash);
  const first = runSides(washed, washSides, house.washEnd);
  if (isRefusal(first)) return first;
  const balance = balanceOf(house, plant, first.distillate, model);
  if (isRefusal(balance)) return balance;
  const found = withForeshots(balance, foreshots);
  if (isRefusal(found)) return found;
  const sides = sidesOf(plant.spiritStills, house.airPressure, model);
  return assemble(house, portionOf(washed), washSides, sides, first, found);
}

/**
 * The wash of one mash through a plant, in litres at 20 °C, with the house’s cuts and each still’s own reflux.
 * Twice, with stills that are alike, is the round of `settleRound`. Thrice: see `settleThrice`. Part-thrice: a part of the low
 * wines is run once more in the intermediate stills, all of it, and joins the rest on the way to the spirit stills; that is
 * one of several ways in use, told by trade writers for several houses (common practice). The limit of the spirit charge’s
 * strength holds for twice and part-thrice; a third distillation of all of it has a strong charge by intent.
 * Foreshots by litres or minutes are of one run: a mash that comes to 2.4 charges gives 2.4 times as many.
 * By a model of vapour, van Laar’s if none is named. Refuses a plant without the stills of its scheme, and a round that finds no
 * balance.
 * @example distilIn({ scheme: 'twice', washStills: [] }, house, line.wash) // refuses: No wash still is named (so nothing is distilled)
 */
export function distilIn(plant: Plant, house: House, wash: Spirit, model?: VapourModel): Round | Refusal {
  const lacks = missing(plant);
  if (lacks) return refuse(lacks);
  const { foreshots } = spiritCuts(house);
  const until = (end: ForeshotsEnd) => distilUntil(end, plant, house, wash, model);
  if (typeof foreshots === 'number' || !('volume' in foreshots) || !foreshotsByRun(plant, house))
    return until(foreshots);
  // The charge holds the foreshots that come back, so how many runs there are hangs a little on them: more make more. The fewest that hold.
  let found = until({ share: share(0) });
  let runs = quantity('ratio', 0);
  for (let step = 0; step < STEPS; step++) {
    if (isRefusal(found)) return found;
    const now: Quantity<'ratio'> = runsOfMash(plant, found.charge.volume, house);
    if (now === runs) break;
    runs = now;
    found = until(ofRuns(foreshots, runs));
  }
  return isRefusal(found) ? found : { ...found, runs };
}

function assemble(
  house: House,
  wash: Portion,
  washSides: readonly StillSide[],
  sides: readonly StillSide[],
  first: { readonly distillate: Amounts; readonly residue: Amounts },
  { spirit, between }: Found,
): Round | Refusal {
  const lowWines = portionOf(first.distillate);
  const charge = portionOf(spirit.charge);
  const size = charge.volume / lowWines.volume;
  if (size > LARGEST_CHARGE) return refuse(tooLarge(size, charge.volume));
  const washRun = asOneRun(wash, washSides, house.washEnd, first.distillate, first.residue);
  if (isRefusal(washRun)) return washRun;
  const over = minus(spirit.charge, spirit.residue);
  const spiritRun = asOneRun(charge, sides, house.feintsEnd, over, spirit.residue);
  if (isRefusal(spiritRun)) return spiritRun;

  const feints = plus(spirit.strong, spirit.weak);
  const lees = between ? plus(spirit.residue, between.lees) : spirit.residue;
  return {
    washRun,
    lowWines,
    potAle: portionOf(first.residue),
    charge,
    dilution: portionOf({ ethanol: 0, water: spirit.added }).volume,
    begins: {
      run: firstOver(spirit.charge, spiritRun.setting),
      heart: firstOver(minus(spirit.charge, spirit.foreshots), spiritRun.setting),
    },
    spiritRun,
    runs: quantity('ratio', 1),
    foreshots: portionOf(spirit.foreshots),
    heart: portionOf(spirit.heart),
    feints: portionOf(feints),
    residue: portionOf(lees),
    ...(between && { between: portionsOf(between) }),
  };
}

const portionsOf = ({
  charge,
  onward,
  lees,
  weak,
  fromSpirit,
  strong,
}: NonNullable<Found['between']>): Between => ({
  charge: portionOf(charge),
  onward: portionOf(onward),
  lees: portionOf(lees),
  weak: portionOf(weak),
  fromSpirit: portionOf(fromSpirit),
  strong: portionOf(strong),
});

/** Strength at the safe of what first comes over from a pot, % vol. */
function firstOver({ ethanol, water }: Amounts, setting: StillSetting): Quantity<'strength'> {
  return strengthOfVapour(stillCurve(setting).over(ethanol / (ethanol + water)).vapour);
}
