// The library psychrolib in SI units: °C, Pa, J/kg, kg/kg. It keeps its unit system in a variable of its own, so it is set at each use.
import psychrolib from 'psychrolib';

/** The library, in SI: setting that once more changes nothing. */
export function moistAir(): typeof psychrolib {
  psychrolib.SetUnitSystem(psychrolib.SI);
  return psychrolib;
}
