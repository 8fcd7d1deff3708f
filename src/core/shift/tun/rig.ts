// A mash tun made ready for a shift: its bed, its three waters, and what the house would collect from them.
import { massOfWater } from '../../mashing/hot-water.ts';
import { mashTemperature, strikeTemperature, type MashIn } from '../../mashing/strike.ts';
import { asWort, drainWaters, runoffsTogether, type Bed, type Runoff } from '../../mashing/waters.ts';
import { bracketedRoot } from '../../numerics/root.ts';
import { celsius, kilograms, litres, litresPerKilogram, type Quantity } from '../../quantity.ts';
import { isRefusal, refuse, type Refusal } from '../../refusal.ts';

export const TUN_STEP = 0.5; // min of the run in one step
export const MASHES_IN = 15; // min for the grist and the first water; common practice, no source
export const USUAL_MARK = 5; // of ten on the run-off, at which the first water drains in its usual minutes
const DRAINS = 110; // min of the first water's run-off at that mark, so that a whole mash takes the six hours of the cycle on record; common practice, no source
const LAST_RATIO = litresPerKilogram(2); // L/kg of the last water, as in the calculator of several waters; common practice
const [LEAST, MOST] = [0.05, 8]; // L/kg between which the second water is sought

/** What a shift is about: the house's grist, its temperatures, and what it collects. */
export interface TunSetup {
  readonly bed: Bed;
  readonly ratio: Quantity<'liquorRatio'>;
  readonly mash: Quantity<'temperature'>;
  readonly second: Quantity<'temperature'>;
  readonly last: Quantity<'temperature'>;
  /** Wort that the house collects, L at 20 °C. */
  readonly collects: Quantity<'volume20'>;
  /** Weak wort of the mash before, which is part of the first water. */
  readonly weak: Runoff;
}

/** What a number draws. */
export interface TunEvents {
  /** Temperature of the grist, °C. */
  readonly grist: number;
  /** Run-off that the bed stands, in usual run-offs. */
  readonly stands: number;
  /** Minutes to convert at the house's temperature. */
  readonly converts: number;
  /** Temperature of a sample once it has cooled in its jar, °C. */
  readonly jar: number;
  /** The bed pulls down by itself, when so much of the first run-off has run. */
  readonly pulls?: { readonly at: number };
  /** Somebody asks to reach in, so many minutes from the start. */
  readonly asks?: { readonly at: number };
}

export interface Rig {
  readonly setup: TunSetup;
  readonly events: TunEvents;
  /** The three waters, kg. */
  readonly waters: readonly [number, number, number];
  /** Extract of the grist and water that the drained grains keep, kg. */
  readonly extract: number;
  readonly held: number;
  /** Mash-in as it is today. */
  readonly mashIn: MashIn;
  readonly goal: { readonly wort: Runoff; readonly weak: Runoff; readonly volume: number; readonly gravity: number; readonly strike: number }; // prettier-ignore
  /** kg of the first run-off, and kg a minute at the usual mark. */
  readonly firstRun: number;
  readonly usual: number;
}

/**
 * Makes a tun ready. Refuses a house whose waters make no such wort.
 * @example rigOfTun({ bed: { moisture: percent(4) }, ratio: litresPerKilogram(4), mash: celsius(20), weak: {} }, { grist: 20 }) // refuses: colder than 50 (a mash at 20 °C is none)
 */
export function rigOfTun(setup: TunSetup, events: TunEvents): Rig | Refusal {
  const { bed, ratio, weak } = setup;
  const mashIn: MashIn = { ratio, gristTemperature: celsius(events.grist), maltMoisture: bed.moisture };
  const strike = strikeTemperature(setup.mash, mashIn);
  if (!(strike > 50 && strike < 95)) return refuse('The first water would have to be colder than 50 or hotter than 95 °C.'); // prettier-ignore
  const drained = (second: number) =>
    drainWaters(
      bed,
      [
        { ratio, temperature: strike },
        { ratio: litresPerKilogram(second), temperature: setup.second },
        { ratio: LAST_RATIO, temperature: setup.last },
      ],
      weak.extract,
    );
  const wortOf = (second: number) => {
    const all = drained(second);
    return isRefusal(all) ? all : asWort(runoffsTogether(all.runoffs.slice(0, 2)));
  };
  const [least, most] = [wortOf(LEAST), wortOf(MOST)];
  if (isRefusal(least)) return least;
  if (isRefusal(most)) return most;
  if (!(least.volume < setup.collects && most.volume > setup.collects))
    return refuse(`With its first water the house does not come to its ${Math.round(setup.collects)} L of wort by a second water.`); // prettier-ignore
  const second = bracketedRoot((each) => {
    const wort = wortOf(each);
    return isRefusal(wort) ? -1 : wort.volume - setup.collects;
  }, LEAST, MOST); // prettier-ignore
  const all = drained(second);
  const wort = wortOf(second);
  if (isRefusal(all)) return all;
  if (isRefusal(wort)) return wort;
  const kg = (per: number, at: Quantity<'temperature'>) => massOfWater(litres(bed.malt * per), at);
  const [first] = all.runoffs;
  const firstRun = first!.water + first!.extract;
  return {
    setup,
    events,
    waters: [kg(ratio, strike), kg(second, setup.second), kg(LAST_RATIO, setup.last)],
    extract: (bed.malt * bed.extract) / 100,
    held: bed.malt * bed.held,
    mashIn,
    goal: { wort: runoffsTogether(all.runoffs.slice(0, 2)), weak: runoffsTogether(all.runoffs.slice(2)), volume: wort.volume, gravity: wort.gravity, strike }, // prettier-ignore
    firstRun,
    usual: firstRun / DRAINS,
  };
}

/**
 * Temperature of the mash when the first water is at `strike`, °C.
 * @example mashedAt({ mashIn: { ratio: litresPerKilogram(2.68), gristTemperature: celsius(27), maltMoisture: percent(2) } }, 69) // 65.96 (the pocket table’s own formula by hand)
 */
export const mashedAt = ({ mashIn }: Rig, strike: number): number => mashTemperature(celsius(strike), mashIn);
export const NO_LIQUID: Runoff = { water: kilograms(0), extract: kilograms(0) };
