// One step of a shift's clock: five seconds of the run.
import { POT_RANGE } from '../../distilling/still.ts';
import { minus, plus, portionOf, type Amounts } from '../../spirit/amounts.ts';
import { condense, waterComes } from './condenser.ts';
import { latentHeat, warmth } from './heat.ts';
import { atSafe, STILL_HOUSE_TEMPERATURE, STILL_STEP, type Rig } from './rig.ts';
import { hasHappened, lastHappened, type AtStep } from '../course.ts';
import type { Happening, ShiftState, Wrong } from './state.ts';

const RELIEF = 15; // kPa over the air's at which the relief valve lifts; from memory
export const BLOCKED_AT = 3; // kPa over the air's that no open line shows; from memory
const FROTH_RISES = 180; // s in which froth rises to the neck at twice what the charge stands; no source
const SETTLED_STANDS = 1.6; // times the usual boiling that a charge stands once it has settled; no source
const CARRIED = 0.05; // of the vapour's moles, liquid that comes over with it when it froths over; no source
const WARM = { sign: 28, cool: 25, left: 30, danger: 45 } as const; // °C at the safe; common practice, no source
const MINUTE = 60 / STILL_STEP; // steps
const COUNTS_AGAIN = 30 * MINUTE; // after which the same fault counts anew; no source
const LINE_CLEARED = 10 * MINUTE; // with the steam off, until those whose work it is have cleared the line; no source
const BARE = 0.2; // of the charge's moles: less than this no longer covers the coil; from memory

/**
 * Mole fraction of ethanol in the pot.
 * @example potFraction({ pot: { ethanol: 1, water: 9 } }) // 0.1 (one of ten)
 */
export const potFraction = ({ pot }: Pick<ShiftState, 'pot'>): number => pot.ethanol / (pot.ethanol + pot.water); // prettier-ignore

/** Mole fraction of what comes over a pot; below what the curve follows it falls with the pot's. */
function vapourAt({ curve }: Rig, x: number): number {
  const weakest = POT_RANGE.weakest * 1.001;
  return x > weakest ? curve.over(x).vapour : (curve.over(weakest).vapour * Math.max(0, x)) / weakest;
}
/**
 * Boiling point of what is in the pot, at the air's pressure, °C.
 * @example boilingPointInPot({ curve: stillCurve({ reflux: share(0), pressure: kilopascals(101.325) }) }, 0) // 100.0 (water)
 */
export const boilingPointInPot = ({ curve }: Rig, x: number): number =>
  curve.over(Math.max(x, POT_RANGE.weakest * 1.001)).temperature;

/** All that has come over, in kilomoles, whichever receiver took it. */
const comeOver = ({ foreshots, heart, feints, lost }: ShiftState): Amounts => plus(plus(foreshots, heart), plus(feints, lost)); // prettier-ignore

/** Vapour, kmol, and what is left of it when `moles` leave a pot: the composition is that of the middle of the step. */
function boiledOff(rig: Rig, pot: Amounts, moles: number): Amounts {
  const half = vapourAt(rig, potFraction({ pot })) * (moles / 2);
  const y = vapourAt(rig, potFraction({ pot: minus(pot, { ethanol: half, water: moles / 2 - half }) }));
  return { ethanol: moles * y, water: moles * (1 - y) };
}

const scaled = ({ ethanol, water }: Amounts, by: number): Amounts => ({ ethanol: ethanol * by, water: water * by }); // prettier-ignore

/**
 * Temperature of the pot and vapour made, kmol/s, after a step: heat that does not warm makes vapour, and as much of it leaves as its
 * pressure drives through the line. The pressure is that of the step's end, so that any heat is borne.
 */
function warmed(rig: Rig, state: ShiftState, boils: number, latent: number) {
  const capacity = warmth(state.pot) + rig.copper.pot;
  const heat = state.steam * rig.heatOfMark - rig.losses.pot * (state.temperature - STILL_HOUSE_TEMPERATURE);
  const over = state.temperature - boils + (STILL_STEP / capacity) * heat;
  if (over <= 0) return { temperature: boils + over, made: 0, pressure: 0, capacity };
  const drives = rig.throughLine * state.line;
  const b = (STILL_STEP / capacity) * latent * drives;
  const root = (Math.sqrt(b * b + 4 * rig.boilsHigher * over) - b) / (2 * rig.boilsHigher);
  return {
    temperature: boils + rig.boilsHigher * root ** 2,
    made: drives * root,
    pressure: root ** 2,
    capacity,
  };
}

/**
 * Goes on by one step. A shift that is done stays as it is.
 * @example stepStill({}, { isDone: true, step: 7 }).step // 7 (a shift that is done stays)
 */
export function stepStill(rig: Rig, state: ShiftState): ShiftState {
  if (state.isDone) return state;
  const { events } = rig;
  const step = state.step + 1;
  const happened: AtStep<Happening>[] = [];
  const wrong: AtStep<Wrong>[] = [];
  const happens = (id: Happening) => happened.push({ step, id });
  const goesWrong = (id: Wrong) => {
    const last = lastHappened(state.wrong, id);
    if (last < 0 || step - last > COUNTS_AGAIN) wrong.push({ step, id });
  };

  const x = potFraction(state);
  const boils = boilingPointInPot(rig, x);
  const latent = latentHeat(vapourAt(rig, x));
  let { temperature, made, pressure, capacity } = warmed(rig, state, boils, latent);
  let { pot, lost, froth } = state;

  // What the relief valve lets go brings the pot back to the boiling point of its pressure.
  if (pressure > RELIEF) {
    const away = boiledOff(rig, pot, (capacity * rig.boilsHigher * (pressure - RELIEF)) / latent);
    [pot, lost] = [minus(pot, away), plus(lost, away)];
    temperature = boils + rig.boilsHigher * RELIEF;
    pressure = RELIEF;
    goesWrong('relief');
  }

  // The head takes heat from the vapour until it is as warm, and then what it loses to the room.
  const toRoom = rig.losses.head * (state.head - STILL_HOUSE_TEMPERATURE) * STILL_STEP;
  const [brought, wanted] = [
    made * latent * STILL_STEP,
    rig.copper.head * Math.max(0, boils - state.head) + toRoom,
  ];
  const head = state.head + (Math.min(brought, wanted) - toRoom) / rig.copper.head;
  const over = Math.max(0, brought - wanted) / latent;
  const flow = over / STILL_STEP;

  const away = boiledOff(rig, pot, over);
  pot = minus(pot, away);
  const vapour = over > 0 ? away.ethanol / over : state.vapour;

  const before = portionOf(comeOver(state)).volume / rig.comesOver;
  const isWarmWater = events.warm !== undefined && before >= events.warm.at;
  const comes = waterComes(isWarmWater ? events.warm!.rise : 0);
  const cooled =
    over > 0
      ? condense(rig.condenser, flow, vapour, boils, comes, state.water)
      : { safe: state.safe, leaves: comes, goesBy: 0 };
  let caught = scaled(away, 1 - cooled.goesBy);
  lost = plus(lost, scaled(away, cooled.goesBy));

  // Froth: a fresh boil stands less than one that has settled.
  const boiled = state.boiled + (made > 0 ? 1 : 0);
  const isFresh = boiled < events.lively.minutes * MINUTE;
  const stands = isFresh ? events.lively.stands : SETTLED_STANDS;
  froth = Math.max(0, froth + ((made / rig.usualVapour - stands) * STILL_STEP) / (FROTH_RISES * stands));
  if (froth >= 1) {
    froth = 1;
    const carried = scaled(pot, (CARRIED * over) / (pot.ethanol + pot.water));
    [pot, caught] = [minus(pot, carried), plus(caught, carried)];
    goesWrong('carried-over');
  }

  const isSpirit = state.spout === 'spirit';
  const isFirst = !isSpirit && !state.turns.some(({ to }) => to === 'spirit');
  const into = (is: boolean, amounts: Amounts) => (is && over > 0 ? plus(amounts, caught) : amounts);

  // What is told.
  if (made > 0 && state.boiled === 0) happens('boils');
  if (head > boils - 5 && !hasHappened(state.happened, 'head-warm')) happens('head-warm');
  if (over > 0 && !hasHappened(state.happened, 'first-drops')) happens('first-drops');
  const isFrothing = lastHappened(state.happened, 'froth') > lastHappened(state.happened, 'froth-down');
  if (froth >= 0.5 && !isFrothing) happens('froth');
  if (froth < 0.25 && isFrothing) happens('froth-down');
  const isWarm = lastHappened(state.happened, 'warm') > lastHappened(state.happened, 'cool');
  if (over > 0 && cooled.safe >= WARM.sign && !isWarm) happens('warm');
  if (isWarm && (over <= 0 || cooled.safe < WARM.cool)) happens('cool');
  // One warm condenser counts once, however long it is left so.
  const warmSince = Math.max(lastHappened(state.happened, 'warm'), lastHappened(happened, 'warm'));
  const isCounted = warmSince >= 0 && lastHappened(state.wrong, 'vapour') >= warmSince;
  if (!isCounted && (cooled.goesBy > 0 || (over > 0 && cooled.safe >= WARM.danger))) goesWrong('vapour');
  const warmFor = over > 0 && cooled.safe >= WARM.left ? state.warmFor + 1 : 0;
  if (warmFor === 10 * MINUTE) goesWrong('left-warm');

  const off = state.steam === 0 ? state.off + 1 : 0;
  const isCleared = hasHappened(state.happened, 'cleared');
  const isBlocked = events.block !== undefined && before >= events.block.at && !isCleared;
  const clears = isBlocked && off >= LINE_CLEARED && pressure < 0.2 && hasHappened(state.happened, 'blocked');
  if (clears) happens('cleared');
  if (isBlocked && pressure >= BLOCKED_AT && !hasHappened(state.happened, 'blocked')) happens('blocked');
  const asks = events.asks !== undefined && before >= events.asks.at && !hasHappened(state.happened, 'asks');
  if (asks) happens('asks');
  const { heart, feints } = rig.setup.cuts;
  const isUnturned = isFirst && over > 0 && atSafe(vapour) <= heart;
  if (isUnturned && !hasHappened(state.happened, 'unturned')) happens('unturned');
  if (over > 0 && !hasHappened(state.happened, 'weak') && atSafe(vapour) <= feints) happens('weak');
  if (
    state.boiled > 0 &&
    !state.isAirOpen &&
    temperature < boils - 3 &&
    !hasHappened(state.happened, 'cooling')
  )
    happens('cooling');

  const isBare = pot.ethanol + pot.water < BARE * (rig.charge.ethanol + rig.charge.water);
  if (isBare && state.steam > 0) goesWrong('bare');

  return {
    ...state,
    step,
    pot,
    lost,
    foreshots: into(isFirst, state.foreshots),
    heart: into(isSpirit, state.heart),
    feints: into(!isSpirit && !isFirst, state.feints),
    temperature,
    head,
    froth,
    boiled,
    steam: isBare ? 0 : state.steam,
    flow,
    vapour,
    pressure,
    safe: cooled.safe,
    leaves: cooled.leaves,
    line: isBlocked && !clears ? events.block!.open : 1,
    isAsked: state.isAsked || asks,
    off,
    warmFor,
    happened: happened.length > 0 ? [...state.happened, ...happened] : state.happened,
    wrong: wrong.length > 0 ? [...state.wrong, ...wrong] : state.wrong,
  };
}

/**
 * Litres that come over in an hour as it runs now, at 20 °C.
 * @example flowOf({ flow: 1 / 3600, vapour: 0 }) // 18.05 (a kilomole of water in an hour)
 */
export function flowOf({ flow, vapour }: ShiftState): number {
  return portionOf({ ethanol: 3600 * flow * vapour, water: 3600 * flow * (1 - vapour) }).volume;
}

/**
 * Litres come over so far, and their part of the house's own run.
 * @example litresOver({ foreshots: { ethanol: 0, water: 1 }, heart: { ethanol: 0, water: 0 }, feints: { ethanol: 0, water: 0 }, lost: { ethanol: 0, water: 0 } }) // 18.05 (18.015 kg of water)
 */
export const litresOver = (state: ShiftState): number => portionOf(comeOver(state)).volume;

/**
 * How strongly it boils, in usual boilings.
 * @example boilingVigour({ usualVapour: 2 }, { flow: 1 }) // 0.5 (half of the usual)
 */
export const boilingVigour = ({ usualVapour }: Rig, { flow }: ShiftState): number => flow / usualVapour;

/**
 * Kilomoles that do not add up: the charge less all that became of it.
 * @example unaccountedInStill({ charge: { ethanol: 1, water: 9 } }, { pot: { ethanol: 1, water: 9 }, lees: { ethanol: 0, water: 0 }, foreshots: { ethanol: 0, water: 0 }, heart: { ethanol: 0, water: 0 }, feints: { ethanol: 0, water: 0 }, lost: { ethanol: 0, water: 0 } }) // { ethanol: 0, water: 0 } (all is in the pot)
 */
export function unaccountedInStill({ charge }: Rig, state: ShiftState): Amounts {
  return minus(charge, plus(plus(state.pot, state.lees), comeOver(state)));
}
