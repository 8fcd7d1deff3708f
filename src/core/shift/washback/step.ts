// One step of a washback's clock, five minutes: wort in, yeast at work, heat, froth, and the gas in the room.
import { attenuate, type Attenuation } from '../../wort/attenuation.ts';
import { gravityFromPlato, platoFromGravity } from '../../wort/extract.ts';
import { FRESH_AIR, gasVolume } from '../../fermenting/gas.ts';
import { celsius, gravity, plato } from '../../quantity.ts';
import { hasHappened, lastHappened, type AtStep } from '../course.ts';
import { chargerFree, FILLING_HOURS, houseAt, GAS_LIMIT, WASHBACK_STEP, type Rig } from './rig.ts';
import type { Happening, WashbackState, Wrong } from './state.ts';

export const FASTER_BY_TEN_DEGREES = 2; // times as quick for ten degrees warmer; memory
export const DIES_ABOVE = 35; // °C above which yeast suffers; common practice, as in the calculator of a washback's heat
export const DEATH_RATE = 0.15; // 1/(h K), how fast above that; no source
const FROTH_FOLLOWS = 1 / 3; // h in which the froth follows the gas; no source
const SWITCHED = 0.55; // of its height that a running switcher leaves of the froth; no source
const SOAPED = 0.4; // of its height that a dose of antifoam leaves; no source
const SOAP_LASTS = 6; // h; no source
const GOES_OVER = 0.001; // of the wash in a step while it stands at the rim; no source
const FROTH_SIGN = 0.75; // of the way to the rim, at which it is told; no source
const HOT = 34; // °C, as high as a peak should come; common practice
const COUNTS_AGAIN = 6 / WASHBACK_STEP; // steps after which the same fault counts anew; no source
const UNPITCHED = 5; // h that wort may stand without yeast; no source

/**
 * Hours since the first wort.
 * @example hourSinceFirstWort({ step: 0 }) // 0 (the first wort)
 */
export const hourSinceFirstWort = ({ step }: { readonly step: number }): number => step * WASHBACK_STEP;

/**
 * The gravity of the wash at 20 °C when so much of the fall is done.
 * @example gravityAt({ setup: { wort: { gravity: gravity(1.05) }, final: gravity(1) } }, 1) // 1.0000 (all of the fall)
 */
export function gravityAt({ setup }: Rig, part: number) {
  const [first, last] = [platoFromGravity(setup.wort.gravity), platoFromGravity(setup.final)];
  return part <= 0 ? setup.wort.gravity : gravity(gravityFromPlato(plato(first + (last - first) * part)));
}
/** What a kilogram of wort has become by then. */
const becomeAt = (rig: Rig, part: number): Attenuation =>
  attenuate({ original: rig.setup.wort.gravity, final: gravityAt(rig, part) });

/**
 * Goes on by one step. A shift that is done stays as it is.
 * @example stepWashback({}, { isDone: true, step: 7 }).step // 7 (a shift that is done stays)
 */
export function stepWashback(rig: Rig, state: WashbackState): WashbackState {
  if (state.isDone) return state;
  const { events, mass, capacity } = rig;
  const now = state.step + 1;
  const hour = now * WASHBACK_STEP;
  const happened: AtStep<Happening>[] = [];
  const wrong: AtStep<Wrong>[] = [];
  const happens = (id: Happening) => happened.push({ step: now, id });
  const once = (is: boolean, id: Happening) => is && !hasHappened(state.happened, id) && happens(id);
  const goesWrong = (id: Wrong) => {
    const last = lastHappened(state.wrong, id);
    if (last < 0 || now - last > COUNTS_AGAIN) wrong.push({ step: now, id });
  };

  // Wort runs in at the cooler's temperature and mixes.
  const filled = Math.min(mass, (mass * hour) / FILLING_HOURS);
  const came = filled - state.filled;
  let temperature = filled > 0 ? (state.filled * state.temperature + came * state.set) / filled : state.set;

  // The yeast: its odds rise at the house's pace, quicker where it is warmer than the house's own washback was then.
  const isPitched = state.pitched >= 0;
  const quicker = FASTER_BY_TEN_DEGREES ** ((temperature - houseAt(rig, state.part)) / 10);
  const alive = isPitched
    ? state.alive * Math.exp(-DEATH_RATE * Math.max(0, temperature - DIES_ABOVE) * WASHBACK_STEP)
    : 1;
  const odds = isPitched ? state.odds + rig.pace.steepness * quicker * alive * WASHBACK_STEP : 0;
  const fallen = (z: number) => 1 / (1 + Math.exp(-z));
  const then = fallen(state.oddsThen);
  const part = isPitched ? Math.max(state.part, (fallen(odds) - then) / (1 - then)) : 0;
  const fell = part - state.part;

  // Heat: what the fall gives, less what the room and the cooling take; solved exactly for a steady release.
  const { kept } = state;
  const held = (capacity * filled * kept) / mass; // MJ/K of what is in the washback
  const gave = rig.heat * fell * kept;
  let [lost, cooled] = [state.lost, state.cooled];
  if (held > 0) {
    const fade = rig.loss / held;
    const felt = -Math.expm1(-fade * WASHBACK_STEP) / fade;
    const before = temperature;
    temperature += (gave / WASHBACK_STEP / held - fade * (before - events.air)) * felt;
    const toRoom = gave - held * (temperature - before);
    lost += toRoom;
    const taken = Math.min(
      state.cooling * rig.coolingMark * WASHBACK_STEP,
      held * Math.max(0, temperature - 10),
    );
    temperature -= taken / held;
    cooled += taken;
  }

  // Mass: gas and yeast leave the liquid as the extract falls.
  const [was, is] = [becomeAt(rig, state.part), becomeAt(rig, part)];
  const inWash = mass * kept;
  const gas = inWash * (is.carbonDioxide - was.carbonDioxide);
  const grown = inWash * (is.yeast - was.yeast);

  // Froth follows the gas.
  const antifoam = state.antifoam * Math.exp(-WASHBACK_STEP / SOAP_LASTS);
  const rises =
    ((events.lively * fell) / WASHBACK_STEP / rig.peakRate) *
    (state.isSwitching ? SWITCHED : 1) *
    (1 - (1 - SOAPED) * antifoam);
  const froth = Math.min(1, rises + (state.froth - rises) * Math.exp(-WASHBACK_STEP / FROTH_FOLLOWS));
  const goesOver = froth >= 1 ? GOES_OVER : 0;
  if (goesOver > 0) goesWrong('frothed-over');

  // Gas in the room, as if mixed.
  const isFanOff = state.isFanOff && !(state.reportedAt >= 0 && hour >= state.reportedAt + (events.fan?.mended ?? 0)); // prettier-ignore
  const stops = events.fan !== undefined && hour >= events.fan.at && !state.isFanOff && state.reportedAt < 0;
  const air = isFanOff || stops ? rig.room.still : rig.room.fresh;
  const flow = gasVolume(gas, celsius(temperature)) / WASHBACK_STEP;
  const steady = (1e6 * flow + FRESH_AIR * air) / (flow + air);
  const ppm = steady + (state.ppm - steady) * Math.exp((-(flow + air) / rig.room.volume) * WASHBACK_STEP);

  // What is told.
  once(filled >= mass / 3, 'third');
  once(filled >= mass, 'full');
  const isFrothing = lastHappened(state.happened, 'froth') > lastHappened(state.happened, 'froth-down');
  if (froth >= FROTH_SIGN && !isFrothing) happens('froth');
  if (froth < FROTH_SIGN / 2 && isFrothing) happens('froth-down');
  const trips = events.trips !== undefined && state.isSwitching && hour >= events.trips.at && !hasHappened(state.happened, 'trips'); // prettier-ignore
  if (trips) happens('trips');
  once(ppm >= GAS_LIMIT, 'alarm');
  once(state.isFanOff && !isFanOff, 'fan-mended');
  const asks = events.asks !== undefined && hour >= events.asks.at && !hasHappened(state.happened, 'asks');
  if (asks) happens('asks');
  once(isPitched && temperature >= HOT, 'hot');
  once(hour >= chargerFree(rig), 'charger');
  if (now % (24 / WASHBACK_STEP) === 0) happens('day');
  if (isPitched && temperature > DIES_ABOVE) goesWrong('too-hot');
  if (!isPitched && hour >= UNPITCHED && !hasHappened(state.wrong, 'unpitched')) goesWrong('unpitched');

  return {
    ...state,
    step: now,
    filled,
    temperature,
    alive,
    odds,
    part,
    kept: kept * (1 - goesOver),
    gas: state.gas + gas,
    grown: state.grown + grown,
    over: state.over + inWash * goesOver * is.wash,
    released: state.released + gave,
    lost,
    cooled,
    froth,
    antifoam,
    isSwitching: state.isSwitching && !trips,
    ppm,
    isFanOff: isFanOff || stops,
    isAsked: state.isAsked || asks,
    warmest: isPitched ? Math.max(state.warmest, temperature) : state.warmest,
    happened: happened.length > 0 ? [...state.happened, ...happened] : state.happened,
    wrong: wrong.length > 0 ? [...state.wrong, ...wrong] : state.wrong,
  };
}

/**
 * Wash in the washback, kg, and the alcohol in it, L, with its strength and gravity.
 * @example washOf({ setup: { wort: { gravity: gravity(1.05) }, final: gravity(1) }, mass: 1000, goal: { alcohol: 60, attenuation: { ethanol: 0.05 } } }, { part: 0, kept: 1 }) // { mass: 1000, alcohol: 0, strength: 0 } (nothing fell)
 */
export function washOf(rig: Rig, { part, kept }: WashbackState) {
  const become = becomeAt(rig, part);
  const of = rig.mass * kept;
  return {
    mass: of * become.wash,
    alcohol: (rig.goal.alcohol / rig.goal.attenuation.ethanol) * become.ethanol * kept,
    strength: become.strength,
    gravity: gravityAt(rig, part),
  };
}
