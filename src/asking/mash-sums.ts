// Sums of mash and wort with the asker’s own numbers: where a mash stands, theirs beside ours, litre-degrees, heat.
import { format, formatNumber } from '../core/format.ts';
import { mashTemperature, strikeTemperature } from '../core/mashing/strike.ts';
import { celsius, quantity } from '../core/quantity.ts';
import { inCore, told, type Reckoner, unitNamed } from './reckoned.ts';
import { behind, figures, temperaturesIn, within } from './said.ts';

const WATER_HEAT = 4.18; // kJ/(kg K), of water from 20 to 90 °C; IAPWS, from memory; of wash a few per cent less
const GRAVITIES = [1.001, 1.15] as const;

const WANTS_WATER =
  /strike|how hot (?:must|should|does|do|has).{0,16}(?:water|liquor)|water (?:temperature|need|must|should)|to (?:get|reach|hit|have|stand|land|end up)|\bwant|\bfor a mash/i;

/** Where a mash stands, from malt and first water: the strike sum turned round. */
export const mashStands: Reckoner = (asked) => {
  const { text, quantities, house } = asked;
  const malt = quantities.filter(({ dimension }) => dimension === 'mass');
  const water = quantities.filter(({ dimension }) => dimension === 'volume');
  const temperatures = temperaturesIn(asked);
  if (!/mash|stand|temperature|how hot/i.test(text) || malt.length !== 1 || water.length !== 1 || temperatures.length === 0 || temperatures.length > 2) return undefined;
  const [kilos, litres] = [inCore(malt[0]!, 'mass')!, inCore(water[0]!, 'volume20')!];
  const ratio = litres / kilos;
  const hot = Math.max(...temperatures);
  const grist = temperatures.length === 2 ? Math.min(...temperatures) : house.gristTemperature;
  if (!within([1, 10], ratio) || hot < 40) return undefined;
  const mash = { ratio: quantity('liquorRatio', ratio), gristTemperature: celsius(grist), maltMoisture: house.maltMoisture };
  if (WANTS_WATER.test(text)) {
    const water = strikeTemperature(celsius(hot), mash);
    return {
      says: `The water must be at about ${format(water, 'temperature')} for a mash at ${format(celsius(hot), 'temperature')}, and a little hotter for what the vessel takes; it scalds, so by the site’s procedure.`,
      sum: `${figures(litres)} L on ${figures(kilos)} kg of malt at ${figures(grist)} °C`,
      at: 'sums/strike-water/',
      place: 'The first water',
      rests: 'memory',
      paths: [],
    };
  }
  const stands = mashTemperature(celsius(hot), mash);
  return {
    says: `The mash stands at about ${format(stands, 'temperature')}, before the vessel takes its share; ours stands at ${format(house.mashTemperature, 'temperature')}.`,
    sum: `(${figures(litres)} × ${figures(hot)} + 0.4 × ${figures(kilos)} × ${figures(grist)}) ÷ (${figures(litres)} + 0.4 × ${figures(kilos)}), and a degree or so as the malt is wetted`,
    at: 'sums/strike-water/',
    place: 'The first water',
    rests: 'memory',
    paths: ['house.mashTemperature'],
  };
}; // prettier-ignore

/** A temperature of theirs beside ours: of the mash, or of the wort as yeast goes in. */
export const theirTemperature: Reckoner = (asked) => {
  const { text, quantities, house } = asked;
  const [theirs] = temperaturesIn(asked);
  if (!/hotter|cooler|warmer|colder|compared?|than (?:you|ours)|same as you/i.test(text) || theirs === undefined || quantities.length !== 1) return undefined;
  const isMash = /mash/i.test(text);
  if (!isMash && !/pitch|yeast goes in|set the (?:wash|wort)/i.test(text)) return undefined;
  const ours = isMash ? house.mashTemperature : house.setTemperature;
  const off = theirs - ours;
  const tells = !isMash || Math.abs(off) <= 0.5 ? '' : off > 0 ? ': the enzymes die sooner, and more of the sugar is of a kind that yeast leaves' : ': less of the starch bursts, but the enzymes last longer';
  const beside = Math.abs(off) < 0.05 ? 'just where ours stands' : `${formatNumber(Math.abs(off), 1)} °C ${off > 0 ? 'hotter' : 'cooler'} than our ${format(ours, 'temperature')}`;
  return {
    says: `${format(celsius(theirs), 'temperature')} is ${beside}${tells}.`,
    ...(quantities[0]!.unit === '°F' && { sum: `(${figures(quantities[0]!.number)} − 32) ÷ 1.8` }),
    ...(isMash
      ? { at: 'mashing/#why-the-temperature-is-a-compromise', place: 'Why the temperature is a compromise' }
      : { at: 'fermenting/check/#figures-to-know', place: 'Fermenting: figures to know' }),
    paths: [isMash ? 'house.mashTemperature' : 'house.setTemperature'],
  };
}; // prettier-ignore

/** The gravity to which so many litre-degrees come in so many litres. */
export const litreDegrees: Reckoner = ({ text, quantities }) => {
  const said = quantities.find((each) => /^[\s-]*degrees?/i.test(behind(text, each)) && each.unit === 'L') ?? quantities.find((each) => each.unit === undefined && /^\s*(?:litre|liter|l)[\s-]*(?:degrees?|°)/i.test(behind(text, each)));
  const volume = quantities.find((each) => each !== said && each.dimension === 'volume');
  if (!said || !volume) return undefined;
  const masses = quantities.filter(({ dimension }) => dimension === 'mass').map((each) => inCore(each, 'mass')!);
  const isEach = /degrees?\s*(?:a|per|\/|each|to the)\s*(?:kg|kilo)/i.test(text);
  const kilos = isEach ? Math.max(...masses.filter((mass) => mass > 1), 0) : 1;
  const litres = inCore(volume, 'volume20')!;
  const value = 1 + (said.number * kilos) / litres / 1000;
  if (!(kilos > 0) || !within(GRAVITIES, value)) return undefined;
  return {
    says: `It comes to a gravity of ${value.toFixed(3)}.`,
    sum: `${figures(said.number)}${kilos === 1 ? '' : ` × ${figures(kilos)} kg`} ÷ ${figures(litres)} L = ${formatNumber(1000 * (value - 1), 1)} points over 1000`,
    at: 'sums/extract-in-wort/',
    place: 'Extract in the wort',
    paths: [],
  };
}; // prettier-ignore

/** Heat that warms so many litres from one temperature to another. */
export const heatToWarm: Reckoner = (asked) => {
  const { text, quantities } = asked;
  const given = quantities.filter(({ dimension }) => dimension === 'volume');
  const [from, to] = temperaturesIn(asked);
  if (!/\bheat\b|energy|kwh|\bmj\b|warm|fuel|power/i.test(text) || given.length !== 1 || from === undefined || to === undefined || from === to) return undefined;
  const litres = inCore(given[0]!, 'volume20')!;
  const energy = (litres * WATER_HEAT * Math.abs(to - from)) / 1000;
  return {
    says: `About ${told(energy, 'energy')}, which is ${told(energy, 'energy', unitNamed('energy', 'kWh'))}, before any is boiled off or lost.`,
    sum: `${figures(litres)} kg × ${WATER_HEAT} kJ × ${figures(Math.abs(to - from))} °C, as for water; wash takes a little less`,
    at: 'sums/heating/',
    place: 'Heating',
    rests: 'memory',
    paths: [],
  };
}; // prettier-ignore
