// Heat and cooling water of a week's mashes and still runs, hour by hour.
import type { Run } from '../distilling/run.ts';
import { coolingWater, heatOfRun, heatSupplied, heatToCondense, steamFor } from '../distilling/run-heat.ts';
import { HYDROLYSIS_WATER } from '../mashing/wort.ts';
import { massOfWater } from '../mashing/hot-water.ts';
import type { Line } from '../line/line.ts';
import type { Plant } from '../plant/plant.ts';
import { celsius, kelvins, quantity, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { isRefusal, refuse, type Refusal } from '../refusal.ts';
import { amountsOf, minus, portionOf } from '../spirit/amounts.ts';
import { HEAT_CAPACITY } from '../vapour/latent-heat.ts';
import { HOURS_IN_WEEK } from './calendar.ts';
import type { StillStage } from './run-weeks.ts';
import type { Timetable } from './timetable.ts';

/** Temperatures, °C, and the part of the heat that reaches the liquid, %. */
export interface Warmth {
  /** Water as it comes, for mashing and for the condensers; and as it leaves a condenser. */
  readonly water: Quantity<'temperature'>;
  readonly waterLeaves: Quantity<'temperature'>;
  readonly wash: Quantity<'temperature'>;
  readonly lowWines: Quantity<'temperature'>;
  readonly distillate: Quantity<'temperature'>;
  readonly efficiency: Quantity<'percent'>;
}

/** For one mash: heat put to its water and to each kind of still, MJ, and cooling water of each kind, L. */
export interface HeatOfMash {
  readonly liquor: Quantity<'energy'>;
  readonly stills: Readonly<Partial<Record<StillStage['id'], StillHeat>>>;
}
export interface StillHeat {
  readonly heat: Quantity<'energy'>;
  readonly water: Quantity<'volume'>;
}

/**
 * Heat that the water of a mash takes up, MJ: the first water to its own temperature, and what more wort and draff hold to the
 * second water's. The heat of a last water is that of the first water which it becomes. Nothing is lost on the way.
 * @example heatOfLiquor({ house: { draffMoisture: 0, maltPerMash: 0, solubleExtract: 0, maltMoisture: 0, secondWater: 80 }, wort: { mass: 0, extract: 0 }, mash: { firstWater: 1000, strike: 20, draff: 0 } }, celsius(20)) // 0 (water as warm as it is wanted)
 */
export function heatOfLiquor(
  { house, wort, mash }: Line,
  water: Quantity<'temperature'>,
): Quantity<'energy'> {
  const first = massOfWater(mash.firstWater, mash.strike);
  const kept = wort.mass - wort.extract + (mash.draff * house.draffMoisture) / 100;
  const takenUp = (HYDROLYSIS_WATER * house.maltPerMash * house.solubleExtract) / 100;
  const all = kept + takenUp - (house.maltPerMash * house.maltMoisture) / 100;
  const more = Math.max(0, all - first);
  return quantity(
    'energy',
    (HEAT_CAPACITY.water * (first * (mash.strike - water) + more * (house.secondWater - water))) / 1000,
  );
}

/** The runs of a line, one for a mash: the middle one, where there is one, from what goes in and what is left. */
function runsOf({ round }: Line): readonly (readonly [StillStage['id'], Omit<Run, 'curve'>])[] {
  const { between } = round;
  const middle = between && {
    ...round.spiritRun,
    charge: between.charge,
    residue: between.lees,
    distillate: portionOf(minus(amountsOf(between.charge), amountsOf(between.lees))),
  };
  return [
    ['wash', round.washRun],
    ...(middle ? [['intermediate', middle] as const] : []),
    ['spirit', round.spiritRun],
  ];
}

/**
 * Heat and cooling water of one mash and all that is distilled of it. Refuses a charge above its boiling point, and water that leaves no warmer than it comes.
 * @example heatOfMash(line, { ...warmthOf(usualWeek), waterLeaves: warmthOf(usualWeek).water }) // refuses: let it leave warmer (it takes up nothing)
 */
export function heatOfMash(line: Line, warmth: Warmth): HeatOfMash | Refusal {
  within('The water, °C,', warmth.water, 0, 60);
  const rise = warmth.waterLeaves - warmth.water;
  if (!(rise >= 1))
    return refuse(
      `Cooling water that comes at ${warmth.water} °C and leaves at ${warmth.waterLeaves} °C takes up next to nothing; let it leave warmer.`,
    );
  const stills: Partial<Record<StillStage['id'], StillHeat>> = {};
  for (const [id, run] of runsOf(line)) {
    const heat = heatOfRun(run, id === 'wash' ? warmth.wash : warmth.lowWines);
    if (isRefusal(heat)) return heat;
    const { pressure } = run.setting;
    stills[id] = {
      heat: heatSupplied(heat, warmth.efficiency),
      water: coolingWater(
        heatToCondense(run.distillate, {
          pressure,
          leavesAt: celsius(Math.max(warmth.distillate, warmth.water)),
        }),
        kelvins(rise),
      ),
    };
  }
  const liquor = heatOfLiquor(line, warmth.water);
  return { liquor: quantity('energy', (liquor * 100) / warmth.efficiency), stills };
}

/** Each hour of the week, from Monday's midnight: heat by steam and by flame, MJ in it, and cooling water, L. */
export interface HeatOfWeek {
  readonly steam: readonly number[];
  readonly flame: readonly number[];
  readonly water: readonly number[];
}

/** Spreads an amount evenly over the hours from `start` to `end`, round the week. */
function put(into: number[], amount: number, start: number, end: number): void {
  for (let hour = Math.floor(start); hour < end; hour++) {
    const part = Math.min(hour + 1, end) - Math.max(hour, start);
    into[hour % HOURS_IN_WEEK]! += (amount * part) / (end - start);
  }
}

/**
 * The heat and cooling water of a timetable: evenly over the hours of each mash and run, charging and emptying with them.
 * @example heatOfWeek({ mashes: [{ start: 0, end: 2 }], runs: [], needs: { stages: [] }, step: 1, number: 1 }, { liquor: 100, stills: {} }, {}).steam.slice(0, 3) // [50, 50, 0] (100 MJ in two hours)
 */
export function heatOfWeek(week: Timetable, of: HeatOfMash, plant: Plant): HeatOfWeek {
  const [steam, flame, water] = [0, 0, 0].map(() => new Array<number>(HOURS_IN_WEEK).fill(0)) as [number[], number[], number[]]; // prettier-ignore
  const { step, number } = week;
  for (const { start, end } of week.mashes) put(steam, of.liquor, start * step, end * step);
  const groups = {
    wash: plant.washStills,
    intermediate: plant.intermediateStills,
    spirit: plant.spiritStills,
  };
  for (const [i, { id }] of week.needs.stages.entries()) {
    for (const { start, end, charge } of week.runs[i]!) {
      const heating = groups[id][charge.group]!.heating === 'flame' ? flame : steam;
      put(heating, of.stills[id]!.heat * charge.part * number, start * step, end * step);
      put(water, of.stills[id]!.water * charge.part * number, start * step, end * step);
    }
  }
  return { steam, flame, water };
}

/**
 * The steam of 5 bar that carries so much heat, kg.
 * @example asSteam(210.8) // 100.0 (2.108 MJ to the kilogram)
 */
export const asSteam = (heat: number): number => steamFor(quantity('energy', heat));
