// Moist air: what water it holds, what it weighs and what warming it costs.
import { bracketedRoot } from '../numerics/root.ts';
import { celsius, percent, quantity, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { refuse, type Refusal } from '../refusal.ts';
import { moistAir } from './moist-air.ts';

const PASCALS = 1000; // in a kilopascal
const JOULES = 1e6; // in a megajoule
const COLDEST_WET_BULB = -30; // °C; below that of any air this file takes

/** Air of one state. `ratio` is kilograms of water vapour to a kilogram of dry air. */
export interface Air {
  /** −20…120 °C. */
  readonly temperature: Quantity<'temperature'>;
  readonly ratio: Quantity<'ratio'>;
  /** 60–110 kPa. */
  readonly pressure: Quantity<'pressure'>;
}

const saturation = (temperature: number) => moistAir().GetSatVapPres(temperature) / PASCALS;

/**
 * Air at a temperature, −20…120 °C, a relative humidity, 0–100 %, and a pressure, 60–110 kPa.
 * Throws where the vapour would press harder than the air as a whole. Source: ASHRAE 2017, chapter 1, ideal mixture.
 * @example airAt(celsius(20), percent(50), kilopascals(101.325)).ratio // 0.0073 (any psychrometric chart, 7.3 g/kg)
 */
export function airAt(
  temperature: Quantity<'temperature'>,
  humidity: Quantity<'percent'>,
  pressure: Quantity<'pressure'>,
): Air {
  within('The temperature of the air, °C,', temperature, -20, 120);
  within('The humidity of the air, %,', humidity, 0, 100);
  within('The pressure of the air, kPa,', pressure, 60, 110);
  const vapour = (saturation(temperature) * humidity) / 100;
  within('The pressure of the vapour, kPa,', vapour, 0, 0.9 * pressure);
  const ratio = moistAir().GetHumRatioFromVapPres(vapour * PASCALS, pressure * PASCALS);
  return { temperature, ratio: quantity('ratio', ratio), pressure };
}

/**
 * The same air, warmed or cooled to −20…120 °C without gaining or losing water.
 * @example warmed(airAt(celsius(20), percent(50), kilopascals(101.325)), celsius(60)).temperature // 60 (as told)
 */
export function warmed(air: Air, to: Quantity<'temperature'>): Air {
  return { ...air, temperature: within('The temperature of the air, °C,', to, -20, 120) };
}

/**
 * Relative humidity, %. Above 100 where air was cooled past its dew point. Source: ASHRAE 2017.
 * @example humidityOf(airAt(celsius(20), percent(50), kilopascals(101.325))) // 50.00 (as it was given)
 */
export function humidityOf({ temperature, ratio, pressure }: Air): Quantity<'percent'> {
  const vapour = moistAir().GetVapPresFromHumRatio(ratio, pressure * PASCALS) / PASCALS;
  return percent((100 * vapour) / saturation(temperature));
}

/**
 * Enthalpy, MJ to a kilogram of dry air, from dry air and liquid water at 0 °C. Source: ASHRAE 2017.
 * @example enthalpyOf(airAt(celsius(25), percent(50), kilopascals(101.325))) // 0.050 (by hand, 1.006 × 25 + 0.0099 × 2547 kJ)
 */
export function enthalpyOf({ temperature, ratio }: Air): Quantity<'heat'> {
  return quantity('heat', moistAir().GetMoistAirEnthalpy(temperature, ratio) / JOULES);
}

/**
 * Volume, m³ to a kilogram of dry air. Source: ASHRAE 2017.
 * @example volumeOf(airAt(celsius(20), percent(50), kilopascals(101.325))) // 0.840 (by hand, 0.287042 × 293.15 × 1.0117 ÷ 101.325)
 */
export function volumeOf({ temperature, ratio, pressure }: Air): Quantity<'airVolume'> {
  return quantity('airVolume', moistAir().GetMoistAirVolume(temperature, ratio, pressure * PASCALS));
}

/**
 * What a wet surface in this air settles at, °C. Source: ASHRAE 2017, thermodynamic wet bulb.
 * @example wetBulbOf(airAt(celsius(20), percent(100), kilopascals(101.325))) // 20.0 (full air takes up nothing)
 */
export function wetBulbOf({ temperature, ratio, pressure }: Air): Quantity<'temperature'> {
  const excess = (wet: number) =>
    moistAir().GetHumRatioFromTWetBulb(temperature, wet, pressure * PASCALS) - ratio;
  const nearlyBoiling = bracketedRoot((t) => saturation(t) - 0.9 * pressure, 0, 120, 1e-6);
  const hottest = Math.min(temperature, nearlyBoiling);
  return excess(hottest) <= 0
    ? celsius(hottest)
    : celsius(bracketedRoot(excess, COLDEST_WET_BULB, hottest, 1e-9));
}

/**
 * The air after it has taken up water to a relative humidity, 0–100 %, with no heat from outside: it cools
 * at constant enthalpy. Refuses air that is as damp already.
 * @example moistened(airAt(celsius(20), percent(100), kilopascals(101.325)), percent(90)) // refuses: as damp already (it is full)
 */
export function moistened(air: Air, humidity: Quantity<'percent'>): Air | Refusal {
  within('The humidity of the air, %,', humidity, 0, 100);
  const before = humidityOf(air);
  if (before >= humidity) {
    return refuse(
      `Air at ${air.temperature.toFixed(0)} °C with ${before.toFixed(0)} % humidity cannot leave at ${humidity.toFixed(0)} %: it is as damp already.`,
    );
  }
  const enthalpy = enthalpyOf(air) * JOULES;
  const ratioAt = (temperature: number) =>
    moistAir().GetHumRatioFromEnthalpyAndTDryBulb(enthalpy, temperature);
  const excess = (temperature: number) =>
    (saturation(temperature) * humidity) / 100 -
    moistAir().GetVapPresFromHumRatio(ratioAt(temperature), air.pressure * PASCALS) / PASCALS;
  const temperature = bracketedRoot(excess, COLDEST_WET_BULB, air.temperature, 1e-10);
  return { ...air, temperature: celsius(temperature), ratio: quantity('ratio', ratioAt(temperature)) };
}
