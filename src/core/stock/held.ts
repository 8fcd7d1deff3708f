// What one cask of a group holds on a day: by the house's store, or by its own regauge.
import { formatCount } from '../format.ts';
import type { House } from '../line/house.ts';
import { lossAYear } from '../maturing/calibrate.ts';
import { caskAfter, lossInStore, MOST_LOSS } from '../maturing/cask.ts';
import { CASK_SIZES, meanCask } from '../maturing/filling.ts';
import { afterFirstDrink } from '../maturing/to-bottle.ts';
import {
  litres,
  litres20,
  litresOfAlcohol,
  percent,
  quantity,
  strength,
  type Portion,
  type Quantity,
} from '../quantity.ts';
import { isRefusal, refuse, type Refusal } from '../refusal.ts';
import { lastDay, yearsBetween } from './days.ts';
import type { CaskGroup } from './group.ts';

const LONGEST = 80; // years that a cask is followed
const LEAST_YEARS = 1; // between filling and regauge, for a loss to be read from the two: a summer is no year

/** The figures of a house that its stores go by. */
export type StoreFigures = Pick<
  House,
  'alcoholLoss' | 'storeHumidity' | 'steadyHumidity' | 'indrink' | 'barrels' | 'hogsheads'
>;

/** One cask of a group on a day. */
export interface HeldCask extends Portion {
  /** Years since it was filled; of a year or month alone the last day counts. */
  readonly age: Quantity<'years'>;
  /** Alcohol that leaves it in a year, %. */
  readonly loss: Quantity<'percent'>;
  /** Whether its loss was read from its own regauge. */
  readonly byRegauge: boolean;
}

interface Regauge {
  readonly on: string;
  readonly volume: Quantity<'volume20'>;
  readonly strength: Quantity<'strength'>;
}

/** The regauge of a group, when it has one that was taken by this day. */
function regaugeOf(group: CaskGroup, day: string): Regauge | undefined {
  const { regauged, regaugedVolume, regaugedStrength } = group;
  if (regauged === undefined || regaugedVolume === undefined || regaugedStrength === undefined)
    return undefined;
  const on = lastDay(regauged) > day ? day : lastDay(regauged);
  if (regauged > day) return undefined;
  return { on, volume: litres20(regaugedVolume), strength: strength(regaugedStrength) };
}

/**
 * The loss of a cask that its regauge shows, % a year of what is in it; nothing where the two are too near in time, or show none.
 * @example lossByRegauge({ filled: '2016-01-01', filledVolume: 100, filledStrength: 60, regauged: '2018-01-01', regaugedVolume: 81, regaugedStrength: 60 }, percent(0), '2026-01-01') // 10.0 (0.9 × 0.9 is 0.81)
 */
export function lossByRegauge(
  group: CaskGroup,
  indrink: Quantity<'percent'>,
  day: string,
): Quantity<'percent'> | undefined {
  const found = regaugeOf(group, day);
  if (!found) return undefined;
  const between = yearsBetween(lastDay(group.filled), found.on);
  if (between < LEAST_YEARS || between > LONGEST) return undefined;
  const began = afterFirstDrink(litres20(group.filledVolume), indrink) * group.filledStrength;
  const loss = lossAYear(began, found.volume * found.strength, between);
  return loss > 0 && loss <= MOST_LOSS ? loss : undefined;
}

/** The size on which the house's loss was found: that of its mean cask; a barrel where its shares make no hundred. */
function measuredOn({ barrels, hogsheads }: StoreFigures): Quantity<'volume'> {
  const mean = meanCask({ barrels, hogsheads });
  return typeof mean === 'object' && isRefusal(mean) ? CASK_SIZES.barrel : quantity('volume', mean);
}

/**
 * One cask of a group on a day, as 2026-11-28. From its filling, less what the wood drank, it ages in the house's store,
 * a small cask faster than the mean one; from a regauge on it ages from what was found, at the loss that filling and
 * regauge show, or at the store's where they show none. Refuses a cask older than 80 years, and a loss above 30 % a year.
 * @example heldOn({ casks: 1, size: 200, filled: '1930', filledVolume: 200, filledStrength: 60 }, house, '2026-01-01') // refuses: casks are followed for 80 (it has lain 95 years)
 */
export function heldOn(group: CaskGroup, house: StoreFigures, day: string): HeldCask | Refusal {
  const age = yearsBetween(lastDay(group.filled), day);
  if (age > LONGEST)
    return refuse(`It has lain ${formatCount(Math.floor(age), 'year')}; casks are followed for ${LONGEST}.`);
  const found = regaugeOf(group, day);
  const fitted = lossByRegauge(group, house.indrink, day);
  const volume = found?.volume ?? afterFirstDrink(litres20(group.filledVolume), house.indrink);
  const began = { volume, strength: found?.strength ?? strength(group.filledStrength) };
  const size = litres(Math.max(group.size, volume));
  const cask = fitted === undefined ? { size, measuredOn: measuredOn(house) } : { size };
  const { storeHumidity: humidity, steadyHumidity, alcoholLoss } = house;
  const store = { alcoholLoss: fitted ?? alcoholLoss, humidity, steadyHumidity };
  const loss = lossInStore({ cask, store });
  if (loss > MOST_LOSS)
    return refuse(
      `A cask of ${group.size} L would lose ${loss.toFixed(0)} % of its alcohol in a year; casks are followed up to ${MOST_LOSS} %. Regauge it.`,
    );
  const told = { age, loss, byRegauge: fitted !== undefined };
  const span = found ? yearsBetween(found.on, day) : age;
  if (volume === 0 || span === 0)
    return { ...began, alcohol: litresOfAlcohol((volume * began.strength) / 100), ...told };
  return { ...caskAfter({ ...began, cask, store, years: span }), ...told };
}

/**
 * The loss that all regauges show together, % a year: the one at which all fillings would have left what was found.
 * @example lossByRegauges([], percent(2), '2026-01-01') // undefined (no cask was regauged)
 */
export function lossByRegauges(
  groups: readonly CaskGroup[],
  indrink: Quantity<'percent'>,
  day: string,
): { readonly groups: number; readonly loss: Quantity<'percent'> } | undefined {
  const fits = groups.flatMap((group) => {
    const loss = lossByRegauge(group, indrink, day);
    const weight = group.casks * group.filledVolume * group.filledStrength;
    return loss === undefined ? [] : [{ loss, weight }];
  });
  const whole = fits.reduce((sum, { weight }) => sum + weight, 0);
  if (whole === 0) return undefined;
  const mean = fits.reduce((sum, { loss, weight }) => sum + loss * weight, 0) / whole;
  return { groups: fits.length, loss: percent(mean) };
}
