// The whole house as one pure function: barley in, bottles out, every figure between.
import { formatNumber } from '../format.ts';
import { barleyForMalt } from '../malting/malt-balance.ts';
import { predictedSpiritYield } from '../malting/spirit-yield.ts';
import { millingTime, splitGrist, type Grist } from '../milling/grist.ts';
import { strikeTemperature } from '../mashing/strike.ts';
import { draffMass, mashEfficiency, waterKept, wortExtract, wortMass } from '../mashing/wort.ts';
import { fermentWort, type Fermentation } from '../fermenting/wash.ts';
import { roundPlan } from '../distilling/plan.ts';
import { settleRound, type Round } from '../distilling/round.ts';
import type { VapourModel } from '../vapour/equilibrium.ts';
import type { CaskYear } from '../maturing/cask.ts';
import { bottlesFrom, meanCask } from '../maturing/filling.ts';
import { afterFiltering, throughWood } from '../maturing/to-bottle.ts';
import {
  count,
  kilograms,
  litres20,
  litresOfAlcohol,
  quantity,
  strength,
  type Portion,
  type Quantity,
} from '../quantity.ts';
import { isRefusal, refuse, type Refusal } from '../refusal.ts';
import { amountsOf } from '../spirit/amounts.ts';
import { reduce } from '../spirit/mixing.ts';
import { heatToBoilOff } from '../vapour/latent-heat.ts';
import { fermentabilityFromGravities } from '../wort/attenuation.ts';
import { platoFromGravity } from '../wort/extract.ts';
import type { House } from './house.ts';

/** Every figure of a house, for one mash unless its name says otherwise. */
export interface Line {
  readonly house: House;
  /** The mean mash of a year of several malts, where a house has such; its amounts count. All else is of the house’s own mash. */
  readonly ofYear?: Line;
  readonly pace: {
    readonly mashesPerYear: Quantity<'count'>;
    readonly maltPerWeek: Quantity<'mass'>;
    readonly maltPerYear: Quantity<'mass'>;
    readonly tonnesPerMash: number;
  };
  readonly barley: {
    readonly mass: Quantity<'mass'>;
    readonly perYear: Quantity<'mass'>;
    /** Barley behind one bottle. */
    readonly perBottle: Quantity<'mass'>;
  };
  readonly malt: {
    readonly mass: Quantity<'mass'>;
    readonly extract: Quantity<'mass'>;
    readonly spiritYield: Quantity<'yield'>;
    readonly alcohol: Quantity<'alcohol'>;
  };
  readonly grist: Grist & { readonly time: Quantity<'hours'>; readonly gritsPercent: Quantity<'percent'> };
  readonly mash: {
    readonly firstWater: Quantity<'volume'>;
    readonly strike: Quantity<'temperature'>;
    readonly efficiency: Quantity<'percent'>;
    readonly draff: Quantity<'mass'>;
    /** Water that the drained grains keep, kg for each kg of grist. */
    readonly kept: Quantity<'liquorRatio'>;
  };
  readonly wort: {
    readonly volume: Quantity<'volume20'>;
    readonly mass: Quantity<'mass'>;
    readonly plato: Quantity<'plato'>;
    readonly extract: Quantity<'mass'>;
  };
  /** The wash, and how far the yeast got by the rule of the gravities. */
  readonly wash: Fermentation & { readonly fermented: Quantity<'percent'> };
  /** Hours in the washback over a weekend, where the house says that those are more. */
  readonly weekendHours?: Quantity<'hours'>;
  readonly round: Round;
  readonly lowWines: Portion;
  readonly potAle: Portion;
  readonly charge: Portion;
  /** With the strength at the safe at which each begins, % vol. */
  readonly foreshots: Portion & { readonly begins: Quantity<'strength'> };
  readonly heart: Portion & { readonly begins: Quantity<'strength'> };
  readonly feints: Portion;
  readonly spentLees: Portion;
  readonly stills: {
    /** Latent heat of all that comes over in all runs. */
    readonly boilOff: Quantity<'energy'>;
  };
  readonly filling: Portion & { readonly water: Quantity<'volume20'> };
  readonly casks: {
    readonly meanSize: Quantity<'volume'>;
    readonly perMash: Quantity<'count'>;
    readonly perWeek: Quantity<'count'>;
    readonly perYear: Quantity<'count'>;
    readonly inStore: Quantity<'count'>;
    /** The mean cask, year by year, from after the wood's first drink. */
    readonly record: readonly CaskYear[];
  };
  /** What comes out of the casks; and the alcohol that the wood drank, the air took and the emptied casks keep. */
  readonly matured: Portion & {
    readonly toWood: Quantity<'alcohol'>;
    readonly alcoholLost: Quantity<'alcohol'>;
    readonly inCasks: Quantity<'alcohol'>;
  };
  /** What is in the bottles; and the alcohol that filters and pipes took. */
  readonly bottling: Portion & {
    readonly water: Quantity<'volume20'>;
    readonly inFilters: Quantity<'alcohol'>;
    /** True where not all bottles are of one kind; strength is then that of all together. */
    readonly isMixed?: boolean;
    readonly bottles: Quantity<'count'>;
    readonly bottlesPerCask: Quantity<'count'>;
    readonly bottlesPerYear: Quantity<'count'>;
  };
}

/**
 * Spirit brought down to a strength; spirit already weaker stays as it is, for water cannot strengthen it.
 * @example letDown({ volume: 100, strength: 40, alcohol: 40 }, strength(60)) // { strength: 40, water: 0.00, volume: 100.00 } (water strengthens nothing)
 */
export function letDown(
  spirit: Portion,
  wanted: Quantity<'strength'>,
): Portion & { water: Quantity<'volume20'> } {
  const to = strength(Math.min(wanted, spirit.strength));
  const { waterVolume, volume } = reduce(spirit, to);
  return { volume, strength: to, alcohol: spirit.alcohol, water: waterVolume };
}

/** The wash and spirit runs of a house in balance, one spirit charge for each wash charge and mash. */
const distil = (house: House, wash: Fermentation, model?: VapourModel): Round | Refusal =>
  settleRound(roundPlan(house, wash, model));

/**
 * The wort of a house fermented, and its round in balance by a model of vapour: the part of the line that a stillman can check.
 * @example roundOf({ ...house, finalGravity: house.originalGravity }) // refuses: no alcohol worth distilling (nothing fermented)
 */
export function roundOf(house: House, model?: VapourModel): Round | Refusal {
  return distil(
    house,
    fermentWort({ volume: house.wortVolume, gravity: house.originalGravity }, house.finalGravity),
    model,
  );
}

/** Heat, MJ, that turns into vapour all that comes over in the two runs of a round. */
function boilOffOf({ washRun, spiritRun }: Round): Quantity<'energy'> {
  const [wash, spirit] = [washRun, spiritRun].map((run) => heatToBoilOff(amountsOf(run.distillate)));
  return quantity('energy', wash! + spirit!);
}

/** Casks filled from one mash, and the mean cask followed until it is emptied. */
function mature(house: House, filling: Portion, size: Quantity<'volume'>, mashesPerYear: number) {
  const { toWood, record, toAir, inCask, emptied } = throughWood({
    volume: litres20(size),
    strength: filling.strength,
    cask: { size },
    store: { ...house, humidity: house.storeHumidity },
    years: house.yearsInWood,
    indrink: house.indrink,
    caskResidue: house.caskResidue,
  });
  if (!(emptied.volume > 0)) {
    return refuse(
      `After ${house.yearsInWood} years a cask holds ${formatNumber(inCask.volume, 1)} L, and ${formatNumber(house.caskResidue, 1)} L stay in it when it is emptied; nothing comes out to be bottled.`,
    );
  }
  const perMash = filling.volume / size;
  const ofAll = (alcohol: number) => litresOfAlcohol(alcohol * perMash);
  return {
    casks: {
      meanSize: size,
      perMash: count(perMash),
      perWeek: count(perMash * house.mashesPerWeek),
      perYear: count(perMash * mashesPerYear),
      inStore: count(perMash * mashesPerYear * house.yearsInWood),
      record,
    },
    matured: {
      volume: litres20(emptied.volume * perMash),
      strength: emptied.strength,
      alcohol: ofAll(emptied.alcohol),
      toWood: ofAll(toWood.alcohol),
      alcoholLost: ofAll(toAir),
      inCasks: ofAll(inCask.alcohol),
    },
  };
}

/**
 * Every figure of the house, from barley to bottle, in litres at 20 °C, kilograms and litres of pure alcohol.
 * Each figure alone must be in the range of src/house/figures.ts; figures that contradict each other are
 * refused with one sentence.
 * @example line({ ...house, finalGravity: house.originalGravity }) // refuses: wort that ferments grows lighter (it did not)
 */
export function line(house: House): Line | Refusal {
  return lineWith(house, (wash) => distil(house, wash));
}

/**
 * The line of a house whose wash is distilled in a way of its own; all else as in `line`.
 * @example lineWith({ ...house, finalGravity: house.originalGravity }, () => refuse('')) // refuses: wort that ferments grows lighter (it did not)
 */
export function lineWith(house: House, distilled: (wash: Fermentation) => Round | Refusal): Line | Refusal {
  if (house.finalGravity >= house.originalGravity) {
    return refuse(
      `The final gravity ${house.finalGravity} is not below the original gravity ${house.originalGravity}; wort that ferments grows lighter.`,
    );
  }
  const grist = splitGrist(house.maltPerMash, house);
  if (isRefusal(grist)) return grist;
  const size = meanCask(house);
  if (typeof size !== 'number') return size;

  const mashesPerYear = house.mashesPerWeek * house.weeksPerYear;
  const tonnesPerMash = house.maltPerMash / 1000;
  const spiritYield = predictedSpiritYield({
    extract: house.solubleExtract,
    fermentability: house.fermentability,
  });
  const barley = barleyForMalt(house.maltPerMash, { ...house, dryLoss: house.maltingLoss });
  const wort = { volume: house.wortVolume, gravity: house.originalGravity };
  const extract = wortExtract(wort);
  const mashed = { mass: house.maltPerMash, moisture: house.maltMoisture, extract: house.solubleExtract };
  const wash = fermentWort(wort, house.finalGravity);
  const round = distilled(wash);
  if (isRefusal(round)) return round;
  const filling = letDown(round.heart, house.fillingStrength);
  const aged = mature(house, filling, size, mashesPerYear);
  if (isRefusal(aged)) return aged;
  const { casks, matured } = aged;
  const bottled = afterFiltering(letDown(matured, house.bottlingStrength), house.filterLoss);
  const bottles = bottlesFrom(bottled.volume, house.bottleSize);

  return {
    house,
    pace: {
      mashesPerYear: count(mashesPerYear),
      maltPerWeek: kilograms(house.maltPerMash * house.mashesPerWeek),
      maltPerYear: kilograms(house.maltPerMash * mashesPerYear),
      tonnesPerMash,
    },
    barley: {
      mass: barley,
      perYear: kilograms(barley * mashesPerYear),
      perBottle: kilograms(barley / bottles),
    },
    malt: {
      mass: house.maltPerMash,
      extract: kilograms((house.maltPerMash * house.solubleExtract) / 100),
      spiritYield,
      alcohol: litresOfAlcohol(spiritYield * tonnesPerMash),
    },
    grist: {
      ...grist,
      time: millingTime(house.maltPerMash, house.millRate),
      gritsPercent: quantity('percent', 100 - house.husk - house.flour),
    },
    mash: {
      firstWater: quantity('volume', house.maltPerMash * house.liquorRatio),
      strike: strikeTemperature(house.mashTemperature, { ...house, ratio: house.liquorRatio }),
      efficiency: mashEfficiency(wort, { mass: house.maltPerMash, extract: house.solubleExtract }),
      draff: draffMass(mashed, extract, house.draffMoisture),
      kept: waterKept(mashed, extract, house.draffMoisture),
    },
    wort: {
      volume: house.wortVolume,
      mass: wortMass(wort),
      plato: platoFromGravity(house.originalGravity),
      extract,
    },
    wash: {
      ...wash,
      fermented: fermentabilityFromGravities({ original: wort.gravity, final: house.finalGravity }),
    },
    round,
    lowWines: round.lowWines,
    potAle: round.potAle,
    charge: round.charge,
    foreshots: { ...round.foreshots, begins: round.begins.run },
    heart: { ...round.heart, begins: round.begins.heart },
    feints: round.feints,
    spentLees: round.residue,
    stills: { boilOff: boilOffOf(round) },
    filling,
    casks,
    matured,
    bottling: {
      ...bottled,
      bottles,
      bottlesPerCask: count(bottles / casks.perMash),
      bottlesPerYear: count(bottles * mashesPerYear),
    },
  };
}
