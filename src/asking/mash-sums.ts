// Sums of mash and wort with the asker’s own numbers: where a mash stands, theirs beside ours, litre-degrees, heat.
import { format, formatNumber } from '../core/format.ts';
import { mashTemperature, strikeTemperature } from '../core/mashing/strike.ts';
import { celsius, quantity } from '../core/quantity.ts';
import { inCore, resultInWords, type Numbered, type Reckoner, unitOfName } from './reckoned.ts';
import { textBehind, numberText, temperaturesIn, isWithinRange } from './sum-kit.ts';

const WATER_HEAT = 4.18; // kJ/(kg K), of water from 20 to 90 °C; IAPWS, from memory; of wash a few per cent less
const GRAVITIES = [1.001, 1.15] as const;

const SPEAKS_OF_MASH = /mash|\btun\b|strike|liquor|stand|how hot|temp/i;
const AT_WATER = /(?:water|liquor)[^.?!,;]{0,16}\b(?:at|of|is|was|with)\s+(?:about\s+)?$/i; // before a temperature that is the water’s
const OF_WATER = /^\s*(?:water|liquor)/i; // behind one
const WANTS_MASH =
  /(?:temperature|temp|hot|warm|what|where)\b.{0,24}\b(?:has|have|is|will|does|would|do)\b.{0,14}\bmash\b|mash (?:stand|settle|come|end|be)|where (?:do|does|will)/i;
const RATIO = /(\d+(?:\.\d+)?)\s*(?::|to)\s*(?:1|one)\b|\bratio\s+(?:of\s+)?(\d+(?:\.\d+)?)/i;
const RATIOS = [1, 10] as const; // L/kg
const WARMEST_GRIST = 35; // °C

/** Litres of water to a kilogram of malt: by their amounts, as a ratio, or as the house has it. */
function ratioIn({
  text,
  quantities,
  house,
}: Numbered): { readonly ratio: number; readonly amounts?: readonly [number, number] } | undefined {
  const isWater = (each: Numbered['quantities'][number]) =>
    each.dimension === 'volume' ||
    (each.dimension === 'mass' && /^\s*(?:of\s+)?(?:hot\s+)?(?:water|liquor)/i.test(textBehind(text, each)));
  const water = quantities.find(isWater);
  const malt = quantities.find((each) => each.dimension === 'mass' && !isWater(each));
  if (water && malt) {
    const [litres, kilos] = [
      water.dimension === 'volume' ? inCore(water, 'volume20')! : inCore(water, 'mass')!,
      inCore(malt, 'mass')!,
    ];
    return { ratio: litres / kilos, amounts: [litres, kilos] };
  }
  const said = RATIO.exec(text);
  if (said) return { ratio: Number(said[1] ?? said[2]) };
  return water || malt || !/strike|\btun\b/i.test(text) ? undefined : { ratio: house.liquorRatio };
}

/** Where a mash stands by its first water, or how hot that water must be: the strike sum either way. */
export const mashStands: Reckoner = (asked) => {
  const { text, quantities, house } = asked;
  const of = ratioIn(asked);
  if (!SPEAKS_OF_MASH.test(text) || !of || !isWithinRange(RATIOS, of.ratio)) return undefined;
  const degrees = quantities.filter((each) => each.dimension === 'temperature' || (each.unit === undefined && isWithinRange([5, 95], each.number) && !/^\s*(?::|to\s+(?:1|one)\b)/i.test(textBehind(text, each)) && !/(?::|\bto)\s*$/i.test(text.slice(0, each.start))));
  const values = degrees.map((each) => (each.unit === undefined || each.unit === '°' ? each.number : inCore(each, 'temperature')!));
  const hot = Math.max(...values);
  if (values.length === 0 || values.length > 2 || hot < 40 || hot > 100) return undefined;
  const hottest = degrees[values.indexOf(hot)]!;
  const grist = values.find((each) => each <= WARMEST_GRIST) ?? house.gristTemperature;
  const mash = { ratio: quantity('liquorRatio', of.ratio), gristTemperature: celsius(grist), maltMoisture: house.maltMoisture };
  const place = { at: 'sums/strike-water/', place: 'The first water', rests: 'memory' as const };
  const [litres, kilos] = of.amounts ?? [of.ratio, 1];
  const isOfWater = AT_WATER.test(text.slice(0, hottest.start)) || OF_WATER.test(textBehind(text, hottest)) || WANTS_MASH.test(text);
  if (!isOfWater) {
    const water = strikeTemperature(celsius(hot), mash);
    return {
      says: `The water must be at about ${format(water, 'temperature')} for a mash at ${format(celsius(hot), 'temperature')}, and a little hotter for what the vessel takes; it scalds, so by the site’s procedure.`,
      sum: `${numberText(litres)} L on ${numberText(kilos)} kg of malt at ${numberText(grist)} °C: (${numberText(hot)} × ${numberText(litres + 0.4 * kilos)} − 0.4 × ${numberText(kilos)} × ${numberText(grist)}) ÷ ${numberText(litres)}, less a degree or so as the malt is wetted`,
      ...place,
      paths: [],
    };
  }
  const stands = mashTemperature(celsius(hot), mash);
  return {
    says: `The mash stands at about ${format(stands, 'temperature')}, before the vessel takes its share; ours stands at ${format(house.mashTemperature, 'temperature')}.`,
    sum: `(${numberText(litres)} × ${numberText(hot)} + 0.4 × ${numberText(kilos)} × ${numberText(grist)}) ÷ (${numberText(litres)} + 0.4 × ${numberText(kilos)}), and a degree or so as the malt is wetted`,
    ...place,
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
    ...(quantities[0]!.unit === '°F' && { sum: `(${numberText(quantities[0]!.number)} − 32) ÷ 1.8` }),
    ...(isMash
      ? { at: 'mashing/#why-the-temperature-is-a-compromise', place: 'Why the temperature is a compromise' }
      : { at: 'fermenting/check/#figures-to-know', place: 'Fermenting: figures to know' }),
    paths: [isMash ? 'house.mashTemperature' : 'house.setTemperature'],
  };
}; // prettier-ignore

/** The gravity to which so many litre-degrees come in so many litres. */
export const litreDegrees: Reckoner = ({ text, quantities }) => {
  const said = quantities.find((each) => /^[\s-]*degrees?/i.test(textBehind(text, each)) && each.unit === 'L') ?? quantities.find((each) => each.unit === undefined && /^\s*(?:litre|liter|l)[\s-]*(?:degrees?|°)/i.test(textBehind(text, each)));
  const volume = quantities.find((each) => each !== said && each.dimension === 'volume');
  if (!said || !volume) return undefined;
  const masses = quantities.filter(({ dimension }) => dimension === 'mass').map((each) => inCore(each, 'mass')!);
  const isEach = /degrees?\s*(?:a|per|\/|each|to the)\s*(?:kg|kilo)/i.test(text);
  const kilos = isEach ? Math.max(...masses.filter((mass) => mass > 1), 0) : 1;
  const litres = inCore(volume, 'volume20')!;
  const value = 1 + (said.number * kilos) / litres / 1000;
  if (!(kilos > 0) || !isWithinRange(GRAVITIES, value)) return undefined;
  return {
    says: `It comes to a gravity of ${value.toFixed(3)}.`,
    sum: `${numberText(said.number)}${kilos === 1 ? '' : ` × ${numberText(kilos)} kg`} ÷ ${numberText(litres)} L = ${formatNumber(1000 * (value - 1), 1)} points over 1000`,
    at: 'sums/extract-in-wort/',
    place: 'Extract in the wort',
    paths: [],
  };
}; // prettier-ignore

/** Heat that warms so many litres from one temperature to another. */
export const heatOfWarming: Reckoner = (asked) => {
  const { text, quantities } = asked;
  const given = quantities.filter(({ dimension }) => dimension === 'volume');
  const rise = quantities.filter((each) => /^\s*(?:degrees?\s*|deg\s*|c\s*)?(?:of\s+)?(?:rise|warming)\b/i.test(textBehind(text, each))).at(-1)?.number;
  const temperatures = temperaturesIn(asked);
  const [from, to] = rise === undefined ? temperatures : [0, rise];
  if (!/\bheat\b|energy|kwh|\bmj\b|warm|fuel|power/i.test(text) || given.length !== 1 || from === undefined || to === undefined || from === to) return undefined;
  const litres = inCore(given[0]!, 'volume20')!;
  const energy = (litres * WATER_HEAT * Math.abs(to - from)) / 1000;
  return {
    says: `About ${resultInWords(energy, 'energy')}, which is ${resultInWords(energy, 'energy', unitOfName('energy', 'kWh'))}, before any is boiled off or lost.`,
    sum: `${numberText(litres)} kg × ${WATER_HEAT} kJ × ${rise === undefined ? `(${numberText(Math.max(from, to))} − ${numberText(Math.min(from, to))})` : numberText(rise)} °C, as for water; wash takes a little less`,
    at: 'sums/wash-run/',
    place: 'One run of the wash still',
    rests: 'memory',
    paths: [],
  };
}; // prettier-ignore
