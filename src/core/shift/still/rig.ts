// A spirit still made ready for a shift: its charge, its heat, its condenser, and what the house would make of the charge.
import { cutAmounts, portions, type Cuts, type RunParts } from '../../distilling/cuts.ts';
import { heatOfRun } from '../../distilling/run-heat.ts';
import { runStill } from '../../distilling/run.ts';
import { stillCurve, strengthOfVapour, type StillCurve } from '../../distilling/still.ts';
import { celsius, kilopascals, moleFraction, strength, type Portion, type Quantity, type Spirit } from '../../quantity.ts'; // prettier-ignore
import { formatNumber } from '../../format.ts';
import { isRefusal, refuse, type Refusal } from '../../refusal.ts';
import { amountsOf, plus, portionOf, type Amounts } from '../../spirit/amounts.ts';
import { vapourOver } from '../../vapour/equilibrium.ts';
import { condenserFor, type Condenser } from './condenser.ts';
import { latentHeat } from './heat.ts';

export const STILL_STEP = 5; // s of the run in one step
export const USUAL_RATE = 5; // of steam and of water, on their valves from 0 to 10, at which the run takes the house's hours
const FILLED = 25; // °C of a charge as it goes in; as in the calculator of both stills; common practice
export const STILL_HOUSE_TEMPERATURE = 15; // °C of the still house; from memory
const LOST = 0.1; // of the usual heat, which the hot still gives to the room; 90 % reaches the liquid: common practice
const ENDS = 1; // h of a still's hours that are charging, emptying and getting ready; from memory
const COPPER = { pot: 0.3, head: 0.2 }; // kg to a litre of charge, of the pot and of head and neck; from memory
const COPPER_HEAT = 0.385; // kJ/(kg K), heat capacity of copper; from memory
export const RUNS_AT = 0.5; // kPa over the air's by which the usual vapour goes through an open line; from memory

/** What a shift is about: the house's still, its cuts, and the charge in it. */
export interface ShiftSetup {
  readonly charge: Spirit;
  readonly reflux: Quantity<'share'>;
  readonly pressure: Quantity<'pressure'>;
  readonly cuts: Cuts;
  /** From charging to ready for the next charge, h. */
  readonly hours: number;
}

/** What a seed draws; each but the liveliness may be missing. `at` is a part, 0–1, of all that comes over. */
export interface ShiftEvents {
  /** How much of the usual boiling the charge stands before its froth rises, and for how many minutes from the boil. */
  readonly lively: { readonly stands: number; readonly minutes: number };
  /** The cooling water comes warmer by so many K. */
  readonly warm?: { readonly at: number; readonly rise: number };
  /** The line to the safe closes to a part of itself. */
  readonly block?: { readonly at: number; readonly open: number };
  /** Somebody asks for the manhole. */
  readonly asks?: { readonly at: number };
  /** By how much the sample in the jar is warmer than the safe, K. */
  readonly jar: number;
  /** Where the haze test turns clear, as a part of the house's foreshots, and how far below the heart's end it turns hazy, % vol. */
  readonly clears: number;
  readonly hazesBelow: number;
}

/** Everything about a shift that stays as it is from the first step to the last. Heat in kJ, kW and kJ/K; amounts in kilomoles. */
export interface Rig {
  readonly setup: ShiftSetup;
  readonly events: ShiftEvents;
  readonly charge: Amounts;
  readonly curve: StillCurve;
  readonly goal: RunParts<Portion>;
  /** All that comes over in the house's own run, L. */
  readonly comesOver: number;
  /** Heat of one mark of steam, kW. */
  readonly heatOfMark: number;
  /** What the pot and the head lose to the room, kW for each K over it. */
  readonly losses: { readonly pot: number; readonly head: number };
  readonly copper: { readonly pot: number; readonly head: number };
  /** By how much the boiling point rises with the pressure, K/kPa. */
  readonly boilsHigher: number;
  /** Vapour that goes through the open line at 1 kPa, kmol/s; at another pressure as its root. */
  readonly throughLine: number;
  readonly usualVapour: number;
  readonly condenser: Condenser;
  readonly filled: number;
  /** Steps that the house's own run takes. */
  readonly usualSteps: number;
}

/**
 * Strength at the safe over a vapour.
 * @example atSafe(0.8943) // 97.2 (the azeotrope, Perry, 97.19)
 */
export const atSafe = (y: number) => strengthOfVapour(moleFraction(y));

/**
 * Makes a still ready: its steam is sized so that at half the valve the run takes the house's hours, less one for charging and emptying,
 * and its condenser so that the spirit then comes at 20 °C. Charge 20–200,000 L, hours 2–48.
 * Refuses other charges and hours, and a charge that the house's cuts do not fit.
 * @example rigOfStill({ charge: { volume: 10 } }, {}) // refuses: 20 to 200,000 L are (ten litres are too few)
 */
export function rigOfStill(setup: ShiftSetup, events: ShiftEvents): Rig | Refusal {
  const { reflux, pressure, cuts } = setup;
  const { volume } = setup.charge;
  if (!(volume >= 20 && volume <= 200_000))
    return refuse(`A charge of ${formatNumber(volume, 0)} L is none that a shift can be run with: 20 to 200,000 L are.`); // prettier-ignore
  if (!(setup.hours >= 2 && setup.hours <= 48))
    return refuse(`A still of ${formatNumber(setup.hours, 1)} h to a charge is none that a shift can be run with: 2 to 48 h are.`); // prettier-ignore
  const setting = { reflux, pressure };
  const charge = amountsOf(setup.charge);
  const parts = cutAmounts(charge, setting, cuts);
  if (isRefusal(parts)) return parts;
  const run = runStill({ charge: setup.charge, reflux, pressure, until: cuts.feints });
  if (isRefusal(run)) return run;
  const heat = heatOfRun(run, celsius(FILLED));
  if (isRefusal(heat)) return heat;

  const seconds = 3600 * (setup.hours - ENDS);
  const needed = (1000 * (heat.heatUp + heat.boilOff)) / seconds; // kW
  const supplied = needed / (1 - LOST);
  const lost = (LOST * supplied) / (heat.boilsAt - STILL_HOUSE_TEMPERATURE);
  const curve = stillCurve(setting);
  const x = charge.ethanol / (charge.ethanol + charge.water);
  const { vapour } = curve.over(x);
  const usualVapour = needed / latentHeat(vapour);
  const higher = vapourOver(moleFraction(x), kilopascals(pressure + 1)).temperature;
  const over = plus(plus(parts.foreshots, parts.heart), parts.feints);
  const copper = (share: number) => share * setup.charge.volume * COPPER_HEAT;
  return {
    setup,
    events,
    charge,
    curve,
    goal: portions(parts),
    comesOver: portionOf(over).volume,
    heatOfMark: supplied / USUAL_RATE,
    losses: { pot: 0.7 * lost, head: 0.3 * lost }, // by how much of the copper stands over the charge; from memory
    copper: { pot: copper(COPPER.pot), head: copper(COPPER.head) },
    boilsHigher: higher - vapourOver(moleFraction(x), pressure).temperature,
    throughLine: usualVapour / Math.sqrt(RUNS_AT),
    usualVapour,
    condenser: condenserFor(usualVapour, vapour, heat.boilsAt, USUAL_RATE),
    filled: FILLED,
    usualSteps: Math.round(seconds / STILL_STEP),
  };
}

/**
 * The strength, % vol, at which the house begins its heart with this charge.
 * @example houseBegins({ charge: { ethanol: 1, water: 9 }, goal: { foreshots: { volume: litres20(0), strength: strength(0) } }, curve: { strengthOver: (x) => 100 * x } }) // 10 (without foreshots the heart begins with the run)
 */
export function houseBegins({ charge, goal, curve }: Rig): Quantity<'strength'> {
  const { ethanol, water } = amountsOf(goal.foreshots);
  const left = { ethanol: charge.ethanol - ethanol, water: charge.water - water };
  return strength(curve.strengthOver(left.ethanol / (left.ethanol + left.water)));
}

/** Nothing at all, in kilomoles. */
export const EMPTY_RECEIVER: Amounts = { ethanol: 0, water: 0 };
