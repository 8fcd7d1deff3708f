// A condenser: vapour to liquid, liquid to nearly the water's temperature, or what goes by when there is too much of it.
import { HEAT_CAPACITY } from '../../vapour/latent-heat.ts';
import { latentHeat, warmth } from './heat.ts';

const WATER = 10; // °C of the cooling water as it comes; as the week has it; common practice
const LEAVES = 50; // °C at which it leaves in a usual run; the same
const LOOKS = 8; // until the two parts agree, to a hundredth of a degree
const COOLED = 20; // °C of the spirit at the safe in a usual run; common practice

export interface Condenser {
  /** Heat that passes for each K between the two sides, kW/K. */
  readonly passes: number;
  /** What the water of one mark takes up for each K, kW/K. */
  readonly mark: number;
}

export interface Condensed {
  /** Temperature of the spirit at the safe, and of the water that leaves, °C. */
  readonly safe: number;
  readonly leaves: number;
  /** The part of the vapour that is not condensed, 0–1. */
  readonly goesBy: number;
}

/**
 * Cools `flow` kmol/s of vapour with mole fraction `y`, at `boils` °C, with water at `comes` °C on so many marks.
 * One surface: as much of it as the condensing needs, the rest cools the liquid against the cold water.
 * Source: heat exchangers by number of transfer units, one side condensing; from memory.
 * @example condense({ passes: 3, mark: 1 }, 0, 0.5, 80, 10, 5) // { safe: 10, leaves: 10, goesBy: 0 } (nothing comes over)
 */
export function condense(
  { passes, mark }: Condenser,
  flow: number,
  y: number,
  boils: number,
  comes: number,
  marks: number,
): Condensed {
  const takes = mark * marks;
  if (flow <= 0) return { safe: comes, leaves: comes, goesBy: 0 };
  if (takes <= 0) return { safe: boils, leaves: boils, goesBy: 1 };
  const heat = flow * latentHeat(y);
  const liquid = flow * warmth({ ethanol: y, water: 1 - y });
  let [safe, goesBy] = [comes, 0];
  // The water reaches the condensing part a little warmed by the liquid, which hangs on the surface left to cool it.
  let first = comes;
  for (let look = 0; look < LOOKS; look++) {
    const most = takes * (boils - first) * (1 - Math.exp(-passes / takes));
    goesBy = Math.max(0, 1 - most / heat);
    const used = goesBy > 0 ? passes : -takes * Math.log(1 - heat / (takes * (boils - first)));
    safe = comes + (boils - comes) * Math.exp(-(passes - used) / liquid);
    first = Math.min(boils - 1, comes + (liquid * (boils - safe)) / takes);
  }
  const warmed = (heat * (1 - goesBy) + liquid * (boils - safe)) / takes;
  return { safe, leaves: Math.min(boils, comes + warmed), goesBy };
}

/**
 * A condenser whose usual run, at so many marks of water, warms the water by 40 K and gives spirit of 20 °C.
 * @example condense(condenserFor(0.01, 0.5, 80, 5), 0.01, 0.5, 80, waterComes(0), 5).safe // 20.0 (as it is made for)
 */
export function condenserFor(flow: number, y: number, boils: number, marks: number): Condenser {
  const heat = flow * latentHeat(y);
  const liquid = flow * warmth({ ethanol: y, water: 1 - y });
  const cooling = liquid * (boils - COOLED);
  const takes = (heat + cooling) / (LEAVES - WATER);
  const first = WATER + cooling / takes;
  const condensing = -takes * Math.log(1 - heat / (takes * (boils - first)));
  return { passes: condensing + liquid * Math.log((boils - WATER) / (COOLED - WATER)), mark: takes / marks };
}

/**
 * Temperature of the cooling water as it comes, °C, when it is warmer by `rise`.
 * @example waterComes(5) - waterComes(0) // 5 (warmer by as much)
 */
export const waterComes = (rise: number): number => WATER + rise;

/**
 * Cooling water on so many marks, L/h: a kilogram to the litre.
 * @example waterFlow({ mark: 4.184 }, 1) // 3600 (a kilogram a second takes up 4.184 kW for each degree)
 */
export const waterFlow = ({ mark }: Condenser, marks: number): number =>
  (3600 * mark * marks) / HEAT_CAPACITY.water;
