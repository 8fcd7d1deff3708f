// The line of a house with what it keeps beside its figures: its own stills, the malts of its year, its bottles, and what it lays elsewhere.
import { withBottles } from '../core/line/bottles.ts';
import { changeHouse } from '../core/line/change.ts';
import type { House } from '../core/line/house.ts';
import { line } from '../core/line/line.ts';
import { withYear } from '../core/line/year.ts';
import { meanMalt } from '../core/malting/grist.ts';
import { lineWithPlant, saysMore } from '../core/plant/line.ts';
import type { Plant } from '../core/plant/plant.ts';
import { count, hours } from '../core/quantity.ts';
import { isRefusal, refuse, type Refusal } from '../core/refusal.ts';
import type { NumberName } from './figures.ts';
import type { LineWay } from './line-of.ts';
import { bottlesPart } from './parts/bottles.ts';
import { laidElsewhere } from './parts/laid-elsewhere.ts';
import { maltsPart, type Malts, type NamedCampaign } from './parts/malts.ts';
import { readPart, type HouseParts } from './parts/part.ts';
import { plantPart } from './parts/plant.ts';

/** A house in the weeks of one grist: its malt is the grist as one, and what gives way to that does. */
function houseWith(house: House, { name, malts, finalGravity }: NamedCampaign, basis: Malts['basis']): House | Refusal {
  const mean = meanMalt(malts, basis);
  if (isRefusal(mean)) return refuse(`“${name}”: ${mean.refused}`);
  const given: readonly (readonly [NumberName, number])[] = [
    ['maltPerMash', mean.mass],
    ['maltMoisture', mean.moisture],
    ['solubleExtract', mean.extract],
    ['fermentability', mean.fermentability],
  ];
  let now = house;
  for (const [figure, value] of given) {
    if (now[figure] === value) continue;
    const changed = changeHouse(now, figure, value as never);
    if (isRefusal(changed)) return refuse(`“${name}”: ${changed.refused}`);
    now = changed.house;
  }
  return finalGravity === undefined ? now : ({ ...now, finalGravity } as House);
} // prettier-ignore

/** A way with the year’s malts: weeks without a grist have the house’s own malt, and more weeks than it works are shares of those. */
function withMalts(way: LineWay, { basis, campaigns }: Malts): LineWay {
  const given = campaigns.filter(({ weeks }) => weeks > 0);
  if (given.length === 0) return way;
  const weeks = given.reduce((sum, each) => sum + each.weeks, 0);
  return (house) => {
    const own = way(house);
    if (isRefusal(own)) return own;
    const part = Math.min(1, house.weeksPerYear / weeks) * house.mashesPerWeek;
    const lines = [];
    for (const campaign of given) {
      const inWeeks = houseWith(house, campaign, basis);
      const found = isRefusal(inWeeks) ? inWeeks : way(inWeeks);
      if (isRefusal(found)) return found === inWeeks ? found : refuse(`“${campaign.name}”: ${found.refused}`);
      lines.push({ mashes: part * campaign.weeks, line: found });
    }
    const rest = Math.max(0, house.weeksPerYear - weeks) * house.mashesPerWeek;
    return withYear(own, rest > 0 ? [...lines, { mashes: rest, line: own }] : lines);
  };
}

/** A way that tells of fermentations over a weekend, where a house has given their hours and they are not those of the others. */
function withWeekends(way: LineWay, { washbacks, weekendFermentation, usual = [] }: Plant): LineWay {
  if (washbacks.length === 0 || usual.includes('weekendFermentation')) return way;
  return (house) => {
    const found = way(house);
    if (isRefusal(found) || weekendFermentation === house.fermentationHours) return found;
    return { ...found, weekendHours: hours(weekendFermentation) };
  };
}

/** A way whose casks in store are those alone that are laid in the house's own stores. */
function withElsewhere(way: LineWay, share: number): LineWay {
  if (share === 0) return way;
  return (house) => {
    const found = way(house);
    if (isRefusal(found)) return found;
    return { ...found, casks: { ...found.casks, inStore: count(found.casks.inStore * (1 - share / 100)) } };
  };
}

/** In which way the lines of a house with such parts are reckoned; by its figures alone where those say no more. */
export function wayWith(parts: Pick<HouseParts, 'plant' | 'malts' | 'bottles' | 'stock'>): LineWay {
  const plant = readPart(plantPart, parts.plant).value;
  const bottles = readPart(bottlesPart, parts.bottles).value;
  const mayDiffer = saysMore(plant, { foreshotsBy: 'volume' });
  const distilled: LineWay = mayDiffer
    ? (house) => (saysMore(plant, house) ? lineWithPlant(house, plant) : line(house))
    : line;
  const bottled: LineWay =
    bottles.length === 0
      ? distilled
      : (house) => {
          const found = distilled(house);
          return isRefusal(found) ? found : withBottles(found, bottles);
        };
  const ofYear = withMalts(withWeekends(bottled, plant), readPart(maltsPart, parts.malts).value);
  return withElsewhere(ofYear, laidElsewhere(parts.stock));
}

/** In which way the book reckons a house: with what it keeps, or by its figures alone where that makes no line. */
export function wayInBook({ house, parts }: { readonly house: House; readonly parts: HouseParts }): LineWay {
  const own = wayWith(parts);
  return isRefusal(own(house)) ? line : own;
}
