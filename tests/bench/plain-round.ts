// The same round by the plain road: fixed Runge–Kutta steps through every run, feints put back until nothing changes.
import { distillateOver, type StillSetting } from '../../src/core/distilling/still.ts';
import { moleFraction, type Quantity, type Spirit } from '../../src/core/quantity.ts';
import { amountsOf, moleFractionFromMassPercent, type Amounts } from '../../src/core/spirit/amounts.ts';
import { massPercentFromStrength } from '../../src/core/spirit/strength.ts';

export interface PlainPlan {
  readonly wash: Spirit;
  readonly washEnd: Quantity<'strength'>;
  readonly foreshots: Quantity<'strength'>;
  readonly heart: Quantity<'strength'>;
  readonly feints: Quantity<'strength'>;
  readonly washStill: StillSetting;
  readonly spiritStill: StillSetting;
}

const vapourOf = (x: number, setting: StillSetting) => distillateOver(moleFraction(x), setting).vapour;
const fractionOf = ({ ethanol, water }: Amounts) => ethanol / (ethanol + water);

/** Mole fraction in the pot when the distillate is down to a strength, by halving. */
function potWhen(strength: Quantity<'strength'>, setting: StillSetting): number {
  const y = moleFractionFromMassPercent(massPercentFromStrength(strength));
  let [low, high] = [1e-7, 0.75];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (vapourOf(middle, setting) < y) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** One Runge–Kutta step of `h` kilomoles over: the ethanol falls by the vapour's share of each. */
function step({ ethanol, water }: Amounts, setting: StillSetting, h: number): Amounts {
  const all = ethanol + water;
  const share = (e: number, gone: number) => vapourOf(e / (all - gone), setting);
  const a = share(ethanol, 0);
  const b = share(ethanol - (h / 2) * a, h / 2);
  const c = share(ethanol - (h / 2) * b, h / 2);
  const d = share(ethanol - h * c, h);
  const over = (h / 6) * (a + 2 * b + 2 * c + d);
  return { ethanol: ethanol - over, water: water - h + over };
}

/** What is left when the pot has come down to mole fraction `to`, in even steps; the last is cut short by halving. */
function boilDown(pot: Amounts, setting: StillSetting, to: number, steps: number): Amounts {
  const h = (pot.ethanol + pot.water) / steps;
  let left = pot;
  for (let next = step(left, setting, h); fractionOf(next) > to; next = step(left, setting, h)) left = next;
  let [short, long] = [0, h];
  for (let i = 0; i < 50; i++) {
    const middle = (short + long) / 2;
    if (fractionOf(step(left, setting, middle)) > to) short = middle;
    else long = middle;
  }
  return step(left, setting, long);
}

/** Ethanol in the heart, kmol, once the round repeats itself, and the rounds that took. */
export function plainRound(plan: PlainPlan, steps: number): { heart: number; rounds: number } {
  const wash = amountsOf(plan.wash);
  const ale = boilDown(wash, plan.washStill, potWhen(plan.washEnd, plan.washStill), steps);
  const lowWines = { ethanol: wash.ethanol - ale.ethanol, water: wash.water - ale.water };
  const [first, second, third] = [plan.foreshots, plan.heart, plan.feints].map((s) =>
    potWhen(s, plan.spiritStill),
  );

  let back: Amounts = { ethanol: 0, water: 0 };
  let heart = 0;
  for (let rounds = 1; rounds <= 2000; rounds++) {
    const charge = { ethanol: lowWines.ethanol + back.ethanol, water: lowWines.water + back.water };
    const begun = first! < fractionOf(charge) ? boilDown(charge, plan.spiritStill, first!, steps) : charge;
    const ended = boilDown(begun, plan.spiritStill, second!, steps);
    const left = boilDown(ended, plan.spiritStill, third!, steps);
    const before = heart;
    heart = begun.ethanol - ended.ethanol;
    back = {
      ethanol: charge.ethanol - heart - left.ethanol,
      water: charge.water - (begun.water - ended.water) - left.water,
    };
    if (Math.abs(heart - before) < 1e-12 * heart) return { heart, rounds };
  }
  throw new RangeError('The plain round does not settle in 2,000 rounds.');
}
