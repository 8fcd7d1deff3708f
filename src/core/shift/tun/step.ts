// One step of a mash tun's clock, half a minute: water in, starch into sugar, wort off, and the bed.
import { halfLife } from '../../mashing/enzymes.ts';
import { slaking } from '../../mashing/strike.ts';
import { HYDROLYSIS_WATER } from '../../mashing/wort.ts';
import { celsius } from '../../quantity.ts';
import { hasHappened, lastHappened, type AtStep } from '../course.ts';
import { MASHES_IN, mashedAt, TUN_STEP, USUAL_MARK, type Rig } from './rig.ts';
import type { Happening, Pool, TunState, Wrong } from './state.ts';

const TEN_DEGREES = 2; // times as quick for ten degrees warmer; memory
const SWELLS_FROM = 58; // °C below which starch hardly swells; patindol-2012 has the first malts near it
const UNSWOLLEN = 0.3; // of its pace below that; no source
const ENZYME_RANGE = [40, 80] as const; // °C between which the loss of alpha-amylase is known
const COOLS = 1; // K that a mash loses in an hour; memory
const TIGHTENS = 10; // min in which a pull of twice what the bed stands draws it shut; no source
const LOOSENS = 40; // min in which a bed left alone opens again; no source
const CLEARS = 0.05; // of the first run-off, until it runs clear; no source
export const CLOUDY_ABOVE = 0.25; // of its first cloud, below which the run-off counts as clear; no source
const PULLS = 0.5; // by how much the bed pulls by itself; no source
const DRAINED = 0.005; // of the first water, with less of which over the bed it is told as drained; no source
const WATER_COMES = 12; // min for each later water; no source
const COUNTS_AGAIN = 30 / TUN_STEP; // steps after which the same fault counts anew; no source

const plus = (a: Pool, b: Pool): Pool => ({ water: a.water + b.water, extract: a.extract + b.extract });
const part = ({ water, extract }: Pool, by: number): Pool => ({ water: water * by, extract: extract * by });
const minus = (a: Pool, b: Pool): Pool => plus(a, part(b, -1));

/** Minutes of the run. */
const minuteOf = ({ step }: { readonly step: number }): number => step * TUN_STEP;
/**
 * Water that can drain: what is more than the grains keep, kg.
 * @example drainable({ held: 900 }, { mobile: { water: 800 }, kept: { water: 300 } }) // 200 (1100 less 900)
 */
export const drainable = (rig: Rig, { mobile, kept }: TunState): number => Math.max(0, mobile.water + kept.water - rig.held); // prettier-ignore

/**
 * The mash warmed or cooled by water, kg at °C: a balance of heat, the malt at its part of water's.
 * @example warmedByWater({ setup: { bed: { malt: 0, moisture: 4 } } }, { mobile: { water: 500 }, kept: { water: 500 }, temperature: 60 }, 1000, 80) // 70 (half and half)
 */
export function warmedByWater(rig: Rig, state: TunState, water: number, at: number): number {
  const { malt, moisture } = rig.setup.bed;
  const asWater = state.mobile.water + state.kept.water + slaking(moisture).heat * malt;
  return (asWater * state.temperature + water * at) / (asWater + water);
}

/**
 * A later water begins: it mixes with a part of what the grains hold, and the rest stays as it is.
 * @example openToWater({ held: 100, setup: { bed: { washing: 0 } } }, { mobile: { water: 100, extract: 10 }, kept: { water: 0, extract: 0 } }).kept // { water: 100, extract: 10 } (a bed that is not washed keeps all)
 */
export function openToWater(rig: Rig, state: TunState): TunState {
  const free = drainable(rig, state);
  const { mobile, kept } = state;
  const loose = mobile.water > 0 ? Math.min(1, free / mobile.water) : 0;
  const above = part(mobile, loose);
  const held = plus(kept, minus(mobile, above));
  const washed = part(held, rig.setup.bed.washing);
  return { ...state, mobile: plus(above, washed), kept: minus(held, washed) };
}

/**
 * Goes on by one step. A shift that is done stays as it is.
 * @example stepTun({}, { isDone: true, step: 7 }).step // 7 (a shift that is done stays)
 */
export function stepTun(rig: Rig, state: TunState): TunState {
  if (state.isDone) return state;
  const { events, setup } = rig;
  const { malt, moisture } = setup.bed;
  const now = state.step + 1;
  const happened: AtStep<Happening>[] = [];
  const wrong: AtStep<Wrong>[] = [];
  const happens = (id: Happening) => happened.push({ step: now, id });
  const once = (is: boolean, id: Happening) => is && !hasHappened(state.happened, id) && happens(id);
  const goesWrong = (id: Wrong) => {
    const last = lastHappened(state.wrong, id);
    if (last < 0 || now - last > COUNTS_AGAIN) wrong.push({ step: now, id });
  };
  let { mobile, temperature, comes } = state;

  // Water comes in: the first with the grist, its moisture and the weak wort of the mash before.
  const isFirst = state.waters === 1;
  if (comes > 0) {
    const whole = rig.waters[state.waters - 1]!;
    const water = Math.min(comes, (whole * TUN_STEP) / (isFirst ? MASHES_IN : WATER_COMES));
    const share = water / whole;
    if (isFirst) {
      temperature = mashedAt(rig, state.temperatures[0]!);
      mobile = plus(mobile, { water: water + (share * malt * moisture) / 100, extract: share * setup.weak.extract }); // prettier-ignore
    } else {
      temperature = warmedByWater(rig, state, water, state.temperatures.at(-1)!);
      mobile = plus(mobile, { water, extract: 0 });
    }
    comes = comes - water < 1e-6 ? 0 : comes - water;
    if (comes === 0) happens(isFirst ? 'mashed' : 'water-in');
  } else if (state.waters > 0) temperature -= (COOLS * TUN_STEP) / 60;

  // Starch into sugar, once all the grist is in.
  const isIn = state.waters > 1 || (isFirst && comes === 0);
  let { converted, alive, stood, warmth } = state;
  if (isIn) {
    if (converted < 1) warmth += temperature * TUN_STEP;
    if (converted < 1) stood += TUN_STEP;
    alive *= 0.5 ** (TUN_STEP / halfLife('alpha', celsius(Math.min(ENZYME_RANGE[1], Math.max(ENZYME_RANGE[0], temperature))))); // prettier-ignore
    const swollen = temperature < SWELLS_FROM ? UNSWOLLEN : 1;
    const pace = (swollen * alive * TEN_DEGREES ** ((temperature - setup.mash) / 10)) / events.converts;
    const more = Math.min(1 - converted, pace * TUN_STEP);
    converted = 1 - converted - more < 1e-9 ? 1 : converted + more;
    const sugar = rig.extract * (converted - state.converted);
    mobile = plus(mobile, { water: -HYDROLYSIS_WATER * sugar, extract: sugar });
  }

  // The run-off, as fast as its valve and the bed let it.
  const open = (rig.usual * state.valve) / USUAL_MARK;
  const wanted = state.isSet ? 0 : open * (1 - state.tight ** 2) * TUN_STEP;
  const water = isIn ? drainable(rig, { ...state, mobile }) : 0;
  const strength = mobile.water > 0 ? mobile.extract / (mobile.water + mobile.extract) : 0;
  const most = water / (1 - strength);
  const runs = Math.min(wanted, most);
  const off =
    mobile.water > 0 ? part(mobile, runs / (mobile.water + mobile.extract)) : { water: 0, extract: 0 };
  const isBack = state.runsTo === 'back';
  if (!isBack) mobile = minus(mobile, off);
  const flow = runs / TUN_STEP;
  const cloud = Math.max(0, state.cloud - runs / (CLEARS * rig.firstRun));

  // The bed.
  const before = state.ran / rig.firstRun;
  const pulls =
    events.pulls !== undefined && before >= events.pulls.at && !hasHappened(state.happened, 'pulls');
  const pressed = open / rig.usual - events.stands; // by the pull asked for, not by what still runs
  let tight = state.isSet ? 1 : Math.max(0, state.tight + (pressed > 0 ? (pressed / events.stands / TIGHTENS) * TUN_STEP : -TUN_STEP / LOOSENS)); // prettier-ignore
  if (pulls) [tight] = [tight + PULLS, happens('pulls')];
  if (tight >= 1) tight = 1;
  const isSet = tight >= 1;
  if (isSet && !state.isSet) {
    happens('set');
    goesWrong('set-bed');
  }
  if (runs > 0 && state.runsTo === 'washback') {
    if (state.converted < 1) goesWrong('blue');
    if (state.cloud > CLOUDY_ABOVE) goesWrong('cloudy');
  }
  once(runs > 0 && cloud <= CLOUDY_ABOVE, 'clear-run');
  const left = water - (isBack ? 0 : off.water);
  const told = state.waters > 1 ? 'drained' : 'sunk';
  if (isIn && comes === 0 && left < DRAINED * rig.waters[0] && lastHappened(state.happened, told) <= lastHappened(state.happened, 'water-in')) happens(told); // prettier-ignore
  const asks = events.asks !== undefined && minuteOf({ step: now }) >= events.asks.at && !hasHappened(state.happened, 'asks'); // prettier-ignore
  if (asks) happens('asks');

  return {
    ...state,
    step: now,
    mobile,
    wort: state.runsTo === 'washback' ? plus(state.wort, off) : state.wort,
    weak: state.runsTo === 'weak' ? plus(state.weak, off) : state.weak,
    temperature,
    comes,
    converted,
    alive,
    stood,
    warmth,
    flow,
    ran: state.ran + (isBack ? 0 : runs),
    cloud,
    tight,
    isSet,
    isAsked: state.isAsked || asks,
    happened: happened.length > 0 ? [...state.happened, ...happened] : state.happened,
    wrong: wrong.length > 0 ? [...state.wrong, ...wrong] : state.wrong,
  };
}

/**
 * kg of extract and of water that do not add up: all that was put in less all that became of it.
 * @example unaccountedInTun({ waters: [1000, 500, 500], setup: { bed: { malt: 1000, moisture: 4 }, weak: { extract: 0 } }, extract: 760 }, { waters: 0, comes: 0, extra: 0, converted: 0, mobile: { water: 0, extract: 0 }, kept: { water: 0, extract: 0 }, wort: { water: 0, extract: 0 }, weak: { water: 0, extract: 0 } }) // { water: 0, extract: 0 } (nothing went in)
 */
export function unaccountedInTun(rig: Rig, state: TunState): Pool {
  const { malt, moisture } = rig.setup.bed;
  const given = rig.waters.slice(0, state.waters).reduce((sum, each) => sum + each, 0) - state.comes;
  const first = state.waters === 0 ? 0 : state.waters === 1 ? (rig.waters[0] - state.comes) / rig.waters[0] : 1;
  const all = [state.mobile, state.kept, state.wort, state.weak].reduce(plus);
  return {
    water: given + state.extra + (first * malt * moisture) / 100 - HYDROLYSIS_WATER * rig.extract * state.converted - all.water,
    extract: rig.extract * state.converted + first * rig.setup.weak.extract - all.extract,
  };
} // prettier-ignore
