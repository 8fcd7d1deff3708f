// One figure of a house changed, and what gives way so that the house still agrees with itself.
import { formatNumber } from '../format.ts';
import { wortExtract } from '../mashing/wort.ts';
import { bracketedRoot } from '../numerics/root.ts';
import { gravity, kilograms, litres20, percent, type Quantity } from '../quantity.ts';
import { isRefusal, refuse, type Refusal } from '../refusal.ts';
import { attenuate } from '../wort/attenuation.ts';
import type { House } from './house.ts';

/** What is read of a mash: each may give way to a change of the others. */
export const mashReadings = ['maltPerMash', 'wortVolume', 'originalGravity'] as const;
export type MashReading = (typeof mashReadings)[number];
/** What may give way to it: such a figure, or the efficiency of the mash, which follows from all three as they are read. */
export type Giving = MashReading | 'efficiency';

/** A figure that was moved so that another could change. */
export interface GaveWay {
  readonly figure: 'finalGravity' | 'solubleExtract' | 'yeast' | MashReading;
  readonly from: number;
  readonly to: number;
}

export interface ChangedHouse {
  readonly house: House;
  /** What was moved with the figure, in the order of the line; empty when nothing was. */
  readonly gave: readonly GaveWay[];
}

/** What can give way to each figure, the usual one first; a figure that is not here moves none of the others. */
const giving = {
  maltMoisture: ['wortVolume', 'originalGravity'],
  solubleExtract: ['wortVolume', 'originalGravity'],
  maltPerMash: ['wortVolume', 'originalGravity'],
  wortVolume: ['originalGravity', 'maltPerMash'],
  originalGravity: ['wortVolume', 'maltPerMash'],
} as const satisfies { readonly [N in keyof House]?: readonly MashReading[] };

/**
 * The figures that can give way to a figure, the usual one first; empty when nothing has to.
 * @example waysOf('washEnd') // [] (it is no reading of the mash)
 */
export function waysOf(figure: keyof House): readonly MashReading[] {
  return figure in giving ? giving[figure as keyof typeof giving] : [];
}

const [WEAKEST, STRONGEST] = [1.0001, 1.149]; // gravities between which the sugar table can be followed; NBS Circular C440
const LIGHTEST = 0.9801; // final gravity; the same table's lower end
const MOST = 100; // % of the malt's extract that a wort can hold
const SLACK = 1e-9; // of it, for rounding

const extractOf = ({ wortVolume, originalGravity }: House) =>
  wortExtract({ volume: wortVolume, gravity: originalGravity });
const extractInMalt = ({ maltPerMash, solubleExtract }: House) => (maltPerMash * solubleExtract) / 100;

/** Part of the malt's extract that is in the wort, %. */
const efficiencyOf = (house: House) => (100 * extractOf(house)) / extractInMalt(house);

/** Part of the wort's extract that the yeast uses, %. */
const usedBy = ({ originalGravity, finalGravity }: House) =>
  attenuate({ original: originalGravity, final: finalGravity }).extractUsed;

/** The gravity at which a volume holds an extract, or a refusal. */
function gravityFor(extract: number, volume: number): Quantity<'gravity'> | Refusal {
  const over = (sg: number) => wortExtract({ volume: litres20(volume), gravity: gravity(sg) }) - extract;
  if (over(STRONGEST) < 0)
    return refuse(
      `${formatNumber(volume, 0)} L cannot hold ${formatNumber(extract, 0)} kg of extract: its gravity would be above ${STRONGEST}.`,
    );
  return gravity(bracketedRoot(over, WEAKEST, STRONGEST));
}

/** The final gravity at which the yeast has used a part of the extract, or a refusal. */
function finalGravityFor(original: Quantity<'gravity'>, used: number): Quantity<'gravity'> | Refusal {
  const over = (sg: number) => attenuate({ original, final: gravity(sg) }).extractUsed - used;
  if (over(LIGHTEST) < 0)
    return refuse(
      `From a gravity of ${formatNumber(original, 3)} no yeast can use ${formatNumber(used, 1)} % of the extract.`,
    );
  return gravity(bracketedRoot(over, LIGHTEST, original));
}

/** The figure that gives way, moved so that the wort holds the same part of the malt's extract as before. */
function settleMash(changed: House, efficiency: number, gives: MashReading): House | Refusal {
  const wanted = (extractInMalt(changed) * efficiency) / 100;
  if (gives === 'wortVolume')
    return {
      ...changed,
      wortVolume: litres20((changed.wortVolume * wanted) / extractOf(changed)),
    };
  if (gives === 'maltPerMash')
    return {
      ...changed,
      maltPerMash: kilograms((changed.maltPerMash * extractOf(changed)) / wanted),
    };
  const originalGravity = gravityFor(wanted, changed.wortVolume);
  return typeof originalGravity === 'number' ? { ...changed, originalGravity } : originalGravity;
}

/** A house that holds its efficiency and its yeast, with one figure changed. */
function holdingEfficiency(
  house: House,
  figure: keyof House,
  value: House[keyof House],
  gives: MashReading | undefined,
): House | Refusal {
  let changed: House = { ...house, [figure]: value };
  if (figure === 'maltMoisture') {
    const drier = (100 - changed.maltMoisture) / (100 - house.maltMoisture); // the same dry malt, with more or less water
    changed = { ...changed, solubleExtract: percent(house.solubleExtract * drier) };
  }
  if (gives) {
    const settled = settleMash(changed, efficiencyOf(house), gives);
    if (isRefusal(settled)) return settled;
    changed = settled;
  }
  if (changed.originalGravity === house.originalGravity && figure !== 'fermentability') return changed;
  const used = (usedBy(house) * changed.fermentability) / house.fermentability;
  const finalGravity = finalGravityFor(changed.originalGravity, used);
  return typeof finalGravity === 'number' ? { ...changed, finalGravity } : finalGravity;
}

const followers = ['solubleExtract', 'maltPerMash', 'wortVolume', 'originalGravity', 'finalGravity'] as const;

/**
 * A house with one figure changed. A house that holds its mash efficiency and how far its yeast goes lets another
 * figure give way: `gives`, or the usual one. A house that holds its gravities and volumes as read moves that figure
 * alone, unless it is told what `gives`, and refuses one that puts more extract into the wort than the malt has; so does
 * any house whose efficiency gives way.
 * The figure itself must be in the range of the table of figures; what gives way is not held to it here.
 * @example changeHouse(house, 'washEnd', strength(2)).house.washEnd // 2 (as it was set)
 */
export function changeHouse<F extends keyof House>(
  house: House,
  figure: F,
  value: House[F],
  gives?: Giving,
): ChangedHouse | Refusal {
  const isAlone = gives === 'efficiency' || (house.holds === 'readings' && gives === undefined);
  if (isAlone || figure === 'finalGravity') {
    const changed = { ...house, [figure]: value };
    const efficiency = efficiencyOf(changed);
    return efficiency > MOST + SLACK && efficiency > efficiencyOf(house) + SLACK
      ? refuse(
          `The wort would hold ${formatNumber(efficiency, 1)} % of the extract that the malt has; it cannot hold more than all of it.`,
        )
      : { house: changed, gave: [] };
  }
  return followed(house, holdingEfficiency(house, figure, value, gives ?? waysOf(figure)[0]), figure);
}

/** A changed house with what was moved besides the figure. */
function followed(house: House, changed: House | Refusal, figure: keyof House): ChangedHouse | Refusal {
  if (isRefusal(changed)) return changed;
  const gave = followers
    .filter((other) => other !== figure && changed[other] !== house[other])
    .map((other) => ({ figure: other, from: house[other] as number, to: changed[other] as number }));
  return { house: changed, gave };
}

/**
 * A house with its malt, its wort or its gravity as read, and the malt's extract moved so that the mash goes on taking out the
 * same part of it: for a house that has never measured its extract. The extract is not held to its range here.
 * @example changeExtract(house, 'wortVolume', house.wortVolume).house.solubleExtract === house.solubleExtract // true (nothing moved)
 */
export function changeExtract<F extends MashReading>(
  house: House,
  figure: F,
  value: House[F],
): ChangedHouse | Refusal {
  const changed = { ...house, [figure]: value };
  const wanted = (house.solubleExtract * efficiencyOf(changed)) / efficiencyOf(house);
  const solubleExtract = percent(Math.round(wanted * 100) / 100); // as a laboratory would print it
  return followed(house, { ...changed, solubleExtract }, figure);
}
