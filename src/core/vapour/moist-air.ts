// The library psychrolib in SI units: °C, Pa, J/kg, kg/kg. It keeps its unit system in a variable of its own, so it is set at each use.
import psychrolib from 'psychrolib';

/**
 * The library, in SI: setting that once more changes nothing.
 * @example moistAir().GetTRankineFromTFahrenheit(0) // 459.67 (absolute zero is −459.67 °F)
 */
export function moistAir(): typeof psychrolib {
  psychrolib.SetUnitSystem(psychrolib.SI);
  return psychrolib;
}
