// Air through the kiln while the malt dries freely: what it carries off, and what warming it costs.
import { quantity, type Quantity } from '../quantity.ts';
import { isRefusal, refuse, type Refusal } from '../refusal.ts';
import { airAt, enthalpyOf, moistened, volumeOf, warmed, wetBulbOf, type Air } from '../vapour/humid-air.ts';

export interface KilnAir {
  /** Outside air: temperature, °C, and relative humidity, %. */
  readonly outside: Quantity<'temperature'>;
  readonly humidity: Quantity<'percent'>;
  readonly pressure: Quantity<'pressure'>;
  /** Air that meets the malt, °C. */
  readonly airOn: Quantity<'temperature'>;
  /** Relative humidity of the air that leaves the malt, %. */
  readonly airOff: Quantity<'percent'>;
}
/** What one kilogram of dry air does. */
export interface AirPass {
  readonly outside: Air;
  readonly on: Air;
  readonly off: Air;
  /** Water carried off, kg. */
  readonly water: Quantity<'ratio'>;
  /** Heat that warms it, MJ. */
  readonly heat: Quantity<'heat'>;
  /** Outside air, m³. */
  readonly volume: Quantity<'airVolume'>;
  /** Where wet grain in the air-on settles. */
  readonly grain: Quantity<'temperature'>;
}

/**
 * Heat, MJ to a kilogram of dry air, that takes outside air to a temperature.
 * @example heatToWarmAir(airAt(celsius(10), percent(0), kilopascals(101.325)), celsius(60)) // 0.0503 (dry air, 50 K × 1.006 kJ)
 */
export function heatToWarmAir(outside: Air, to: Quantity<'temperature'>): Quantity<'heat'> {
  return quantity('heat', enthalpyOf(warmed(outside, to)) - enthalpyOf(outside));
}

/**
 * Outside air warmed, then led through wet malt, which cools and moistens it at constant enthalpy: the malt
 * neither stores heat nor makes any. Refuses air that is not warmed, or that is too damp to take up water.
 * @example passAir({ outside: celsius(10), humidity: percent(80), pressure: kilopascals(101.325), airOn: celsius(10), airOff: percent(95) }) // refuses: a kiln warms it (it did not)
 */
export function passAir({ outside, humidity, pressure, airOn, airOff }: KilnAir): AirPass | Refusal {
  if (airOn <= outside) {
    return refuse(
      `The air meets the malt at ${airOn.toFixed(0)} °C and is ${outside.toFixed(0)} °C outside; a kiln warms it.`,
    );
  }
  const fresh = airAt(outside, humidity, pressure);
  const on = warmed(fresh, airOn);
  const off = moistened(on, airOff);
  if (isRefusal(off)) return off;
  return {
    outside: fresh,
    on,
    off,
    water: quantity('ratio', off.ratio - on.ratio),
    heat: heatToWarmAir(fresh, airOn),
    volume: volumeOf(fresh),
    grain: wetBulbOf(on),
  };
}
