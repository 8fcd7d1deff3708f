// Sensible houses drawn from a seed, the true figures that a guide there could quote, and one figure moved.
import { stillCurve } from '../../src/core/distilling/still.ts';
import type { House } from '../../src/core/line/house.ts';
import { line, type Line } from '../../src/core/line/line.ts';
import {
  quotableFigures,
  quotableNames,
  type Quoted,
  type QuotableName,
  type SaidValue,
} from '../../src/core/cross-check/quoted.ts';
import { normalRandom, uniformRandom } from '../../src/core/numerics/random.ts';
import { bracketedRoot } from '../../src/core/numerics/root.ts';
import { amountsOf, minus } from '../../src/core/spirit/amounts.ts';
import { attenuate } from '../../src/core/wort/attenuation.ts';
import { wortExtract } from '../../src/core/mashing/wort.ts';
import { builtInHouse } from '../../src/house/figures.ts';

export type Truth = Readonly<Record<QuotableName, number>>;

/** Chance, from one seed: uniform between two ends, normal, and a choice. */
export function chanceFrom(seed: number) {
  const [uniform, normal] = [uniformRandom(seed), normalRandom(seed + 1)];
  const between = (low: number, high: number) => low + (high - low) * uniform();
  const pick = <T>(list: readonly T[]) => list[Math.floor(uniform() * list.length)]!;
  const some = <T>(list: readonly T[], count: number) =>
    list.map((each) => [uniform(), each] as const).sort((a, b) => a[0] - b[0]).slice(0, count).map(([, each]) => each); // prettier-ignore
  return { between, normal, pick, some };
}
export type Chance = ReturnType<typeof chanceFrom>;

/** A house whose malt, wort and wash agree to the spread that is known of each; undefined when its round has no answer. */
export function drawHouse({ between, pick }: Chance): Line | undefined {
  const maltPerMash = Math.exp(between(Math.log(400), Math.log(20_000)));
  const [solubleExtract, fermentability] = [between(75, 79.5), between(85.5, 88.5)];
  const original = between(1.05, 1.07);
  const extract = (maltPerMash * solubleExtract * between(95.5, 99)) / 1e4;
  const wortVolume = (1000 * extract) / wortExtract({ volume: 1000, gravity: original } as never);
  const used = (fermentability * 6.06 * between(0.99, 1.01)) / 6.131; // 6.06 of use against Balling's 6.13
  const final = bracketedRoot(
    (fg) => attenuate({ original, final: fg } as never).extractUsed - used,
    0.985,
    1.02,
  );
  const house = {
    ...builtInHouse,
    maltPerMash,
    solubleExtract,
    fermentability,
    originalGravity: original,
    wortVolume,
    finalGravity: final,
    mashesPerWeek: Math.round(between(3, 25)),
    weeksPerYear: Math.round(between(38, 50)),
    washEnd: between(0.5, 2),
    spiritReflux: between(0, 0.15),
    foreshotsShare: between(1, 4),
    heartEnd: between(58, 65),
    feintsEnd: between(0.5, 2),
    chargeLimit: between(24, 30),
    barrels: between(40, 80),
    hogsheads: between(5, 20),
    alcoholLoss: between(1.5, 2.5),
    storeHumidity: between(65, 85),
    yearsInWood: Math.round(between(4, 18)),
    bottlingStrength: pick([40, 43, 46]),
    bottleSize: pick([70, 75]),
  } as unknown as House;
  const found = line(house);
  return 'refused' in found ? undefined : found;
}

/** Houses from one seed on, as many as asked. */
export function houses(seed: number, count: number): readonly Line[] {
  const found: Line[] = [];
  for (let i = 0; found.length < count; i++) {
    const house = drawHouse(chanceFrom(seed + 7919 * i));
    if (house) found.push(house);
  }
  return found;
}

/** Strength at the safe where the heart of a line begins. */
function heartBegins({ round, house }: Line): number {
  const after = minus(amountsOf(round.charge), amountsOf(round.foreshots));
  const setting = { reflux: house.spiritReflux, pressure: house.airPressure };
  return stillCurve(setting).strengthOver(after.ethanol / (after.ethanol + after.water));
}

/** Every figure that can be quoted, as the line has it. */
export function truthOf(found: Line): Truth {
  const { house, pace, wort, wash, lowWines, charge, heart, casks, bottling } = found;
  return {
    maltPerMash: house.maltPerMash,
    maltPerWeek: pace.maltPerWeek,
    maltPerYear: pace.maltPerYear,
    mashesPerWeek: house.mashesPerWeek,
    weeksPerYear: house.weeksPerYear,
    solubleExtract: house.solubleExtract,
    fermentability: house.fermentability,
    spiritYield: heart.alcohol / pace.tonnesPerMash,
    wortVolume: wort.volume,
    originalGravity: house.originalGravity,
    finalGravity: house.finalGravity,
    washVolume: wash.volume,
    washStrength: wash.strength,
    lowWinesVolume: lowWines.volume,
    lowWinesStrength: lowWines.strength,
    chargeVolume: charge.volume,
    chargeStrength: charge.strength,
    heartBegins: heartBegins(found),
    heartEnds: house.heartEnd,
    heartVolume: heart.volume,
    heartStrength: heart.strength,
    heartAlcohol: heart.alcohol,
    alcoholPerWeek: heart.alcohol * house.mashesPerWeek,
    alcoholPerYear: heart.alcohol * pace.mashesPerYear,
    fillingStrength: found.filling.strength,
    caskSize: casks.meanSize,
    casksPerWeek: casks.perWeek,
    casksPerYear: casks.perYear,
    yearsInWood: house.yearsInWood,
    casksInStore: casks.inStore,
    alcoholLoss: house.alcoholLoss,
    bottlingStrength: bottling.strength,
    bottleSize: house.bottleSize,
    bottlesPerCask: bottling.bottlesPerCask,
    bottlesPerYear: bottling.bottlesPerYear,
  };
}

/** A figure said with its own ordinary error. */
export function say(
  figure: QuotableName,
  true_: number,
  as: 'about' | 'exact',
  { normal }: Chance,
): SaidValue {
  const { spread } = quotableFigures[figure];
  const error = spread[as] * normal();
  return { as, value: spread.as === 'part' ? true_ * Math.exp(error) : true_ + error };
}

/** A figure moved by a part of itself; a gravity by that part of its degrees. */
export function moved(figure: QuotableName, value: number, by: number): number {
  return figure === 'originalGravity' ? 1 + (value - 1) * (1 + by) : value * (1 + by);
}
/** Figures that a part of themselves says nothing about. */
const unmoved: readonly QuotableName[] = ['finalGravity', 'alcoholLoss'];

export interface Planted {
  readonly quoted: Quoted;
  /** The figure that was moved, or nothing. */
  readonly wrong: QuotableName | undefined;
}

/** Twelve figures of a house as quoted, one of them moved by `by`, up or down; by 0 none is. */
export function plant(truth: Truth, by: number, as: 'about' | 'exact', chance: Chance, count = 12): Planted {
  const names = chance.some(quotableNames, count);
  const wrong = by === 0 ? undefined : chance.pick(names.filter((name) => !unmoved.includes(name)));
  const sign = chance.pick([1, -1]);
  const quoted: Record<string, SaidValue> = {};
  for (const name of names) {
    const said = say(name, truth[name], as, chance) as { as: 'about' | 'exact'; value: number };
    const value = name === wrong ? moved(name, said.value, sign * by) : said.value;
    const [low, high] = quotableFigures[name].range;
    quoted[name] = { as, value: Math.min(high, Math.max(low, value)) };
  }
  return { quoted: quoted as Quoted, wrong };
}
