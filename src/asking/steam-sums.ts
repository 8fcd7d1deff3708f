// Heat by steam and by time: how hot steam is at a pressure, at what pressure it is so hot, and how long a charge takes to warm.
import { format, formatNumber } from '../core/format.ts';
import { celsius, kilopascals } from '../core/quantity.ts';
import { STEAM_HEAT } from '../core/distilling/run-heat.ts';
import { steamPressure, steamTemperature } from '../core/vapour/saturated-steam.ts';
import { inCore, type Numbered, type Reckoner } from './reckoned.ts';
import { isWithinRange, numberText, temperaturesIn } from './sum-kit.ts';

const WATER_HEAT = 4.18; // kJ/(kg K), of water from 20 to 90 °C; IAPWS, from memory; of wash a few per cent less
const AIR = 101.3; // kPa, to which a gauge adds
const PRESSURES = [10, 1500] as const; // kPa absolute
const HEATS = [46, 198] as const; // °C
const POWER = /(\d[\d,]*(?:\.\d+)?)\s*(kw|kilowatts?|mw|megawatts?)(?!h)\b/i;
const STEAM_FLOW =
  /(\d[\d,]*(?:\.\d+)?)\s*(?:kg|kilos?|kilograms?)\s*(?:of steam\s*)?(?:per|an?|\/)\s*h(?:our|r)?\b/i;
const CARE =
  ' Steam burns and does it unseen: pressures and valves are as the site’s procedures and the plate on the vessel say.';
const place = { at: 'heat-and-water/#where-the-heat-goes', place: 'Heat and water: Where the heat goes' };

const pressureIn = ({ quantities }: Numbered) => quantities.find(({ dimension }) => dimension === 'pressure');

/** “Steam at 2 bar on the gauge, how hot is that?”, and the other way. */
export const steamAt: Reckoner = (asked) => {
  const { text, quantities } = asked;
  if (!/\bsteam\b|saturated|\bbar[ag]?\b|\bcoil\b|jacket/i.test(text) || /\bair\b|altitude|vacuum|spirit|alcohol|ethanol/i.test(text)) return undefined;
  const given = pressureIn(asked);
  if (given && quantities.length === 1 && /how hot|temperature|\btemp\b|degrees|celsius|fahrenheit/i.test(text)) {
    const told = inCore(given, 'pressure')!;
    const isAbsolute = /\babs(?:olute)?\b|\bbara\b/i.test(text);
    const [gauge, absolute] = [told + AIR, told];
    const pressure = isAbsolute ? absolute : gauge;
    if (!isWithinRange(PRESSURES, pressure)) return undefined;
    const other = isAbsolute || !isWithinRange(PRESSURES, absolute) || /gauge|\bbarg\b/i.test(text) ? '' : `; were it absolute, ${format(steamTemperature(kilopascals(absolute)), 'temperature', 0)}`;
    return {
      says: `Saturated steam is at about ${format(steamTemperature(kilopascals(pressure)), 'temperature', 1)} there${isAbsolute ? '' : ', by the gauge'}${other}.${CARE}`,
      sum: isAbsolute ? `${formatNumber(pressure / 100, 2)} bar absolute, by the steam tables` : `${formatNumber(told / 100, 2)} + 1.01 = ${formatNumber(pressure / 100, 2)} bar absolute, by the steam tables`,
      ...place,
      rests: 'memory',
      paths: [],
    };
  }
  const [hot, more] = temperaturesIn(asked).length > 0 ? temperaturesIn(asked) : quantities.filter(({ dimension }) => dimension === 'temperature').map((each) => inCore(each, 'temperature')!);
  if (hot === undefined || more !== undefined || quantities.length !== 1 || !isWithinRange(HEATS, hot) || !/pressure|\bbar\b|\bpsi\b|\bgauge\b/i.test(text)) return undefined;
  const pressure = steamPressure(celsius(hot));
  return {
    says: `Steam at ${format(hot, 'temperature', 0)} is at about ${formatNumber(pressure / 100, 2)} bar absolute, ${formatNumber((pressure - AIR) / 100, 2)} on the gauge.${CARE}`,
    sum: 'Saturated steam, by the steam tables',
    ...place,
    rests: 'memory',
    paths: [],
  };
}; // prettier-ignore

const toNumber = (text: string) => Number(text.replaceAll(',', ''));

/** “How long to bring 5,000 litres from 20 to 92 °C with 300 kW?” */
export const hoursToHeat: Reckoner = (asked) => {
  const { text, quantities } = asked;
  if (!/how long|how many (?:hours|minutes)|what time|when will/i.test(text)) return undefined;
  const [power, steam] = [POWER.exec(text), STEAM_FLOW.exec(text)];
  const kilowatts = power ? toNumber(power[1]!) * (/^m/i.test(power[2]!) ? 1000 : 1) : steam ? (toNumber(steam[1]!) * STEAM_HEAT * 1000) / 3600 : undefined;
  const volumes = quantities.filter(({ dimension }) => dimension === 'volume');
  const rate = power ?? steam;
  const isOfRate = (start: number) => rate !== null && start >= rate.index && start < rate.index + rate[0].length;
  const degrees = temperaturesIn({ ...asked, quantities: quantities.filter(({ start }) => !isOfRate(start)) });
  const [from, to] = degrees.length === 1 && /boil/i.test(text) ? [degrees[0]!, 100] : degrees;
  if (!kilowatts || !(kilowatts > 0) || volumes.length !== 1 || from === undefined || to === undefined || to <= from) return undefined;
  const litres = inCore(volumes[0]!, 'volume20')!;
  const hours = (litres * WATER_HEAT * (to - from)) / kilowatts / 3600;
  return {
    says: `About ${format(hours, 'hours', 1)}, or ${formatNumber(hours * 60, 0)} minutes, if all of it reaches the liquid; at 90 % of it, ${formatNumber((hours * 60) / 0.9, 0)} minutes. The last degrees go gently: wash froths as it comes to the boil.`,
    sum: `${numberText(litres)} kg × ${WATER_HEAT} kJ × (${numberText(to)} − ${numberText(from)}) °C ÷ ${formatNumber(kilowatts, 0)} kW${steam && !power ? `, which is ${steam[1]} kg of steam an hour × ${STEAM_HEAT} MJ` : ''}; wash takes a little less than water`,
    ...place,
    rests: 'memory',
    paths: [],
  };
}; // prettier-ignore
