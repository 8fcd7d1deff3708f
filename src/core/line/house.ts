// The figures a house gives: what `line` is computed from. Their meaning and range are in src/house/figures.ts.
import type { Quantity } from '../quantity.ts';

export interface House {
  readonly barleyMoisture: Quantity<'percent'>;
  readonly maltMoisture: Quantity<'percent'>;
  readonly maltingLoss: Quantity<'percent'>;
  readonly solubleExtract: Quantity<'percent'>;
  readonly fermentability: Quantity<'percent'>;

  readonly maltPerMash: Quantity<'mass'>;
  readonly husk: Quantity<'percent'>;
  readonly flour: Quantity<'percent'>;
  readonly millRate: Quantity<'milling'>;

  readonly mashesPerWeek: Quantity<'count'>;
  readonly weeksPerYear: Quantity<'count'>;
  readonly liquorRatio: Quantity<'liquorRatio'>;
  readonly mashTemperature: Quantity<'temperature'>;
  readonly gristTemperature: Quantity<'temperature'>;
  readonly secondWater: Quantity<'temperature'>;
  readonly lastWater: Quantity<'temperature'>;
  readonly wortVolume: Quantity<'volume20'>;
  readonly originalGravity: Quantity<'gravity'>;
  readonly draffMoisture: Quantity<'percent'>;

  readonly setTemperature: Quantity<'temperature'>;
  readonly yeast: Quantity<'mass'>;
  readonly fermentationHours: Quantity<'hours'>;
  readonly finalGravity: Quantity<'gravity'>;

  readonly airPressure: Quantity<'pressure'>;
  readonly washReflux: Quantity<'share'>;
  readonly washEnd: Quantity<'strength'>;
  readonly spiritReflux: Quantity<'share'>;
  readonly foreshotsBy: 'share' | 'volume' | 'minutes' | 'strength';
  readonly foreshotsShare: Quantity<'percent'>;
  readonly foreshotsVolume: Quantity<'volume20'>;
  readonly foreshotsMinutes: Quantity<'minutes'>;
  readonly foreshotsFlow: Quantity<'volumeFlow'>;
  readonly foreshotsStrength: Quantity<'strength'>;
  readonly heartEnd: Quantity<'strength'>;
  readonly feintsEnd: Quantity<'strength'>;
  readonly dilution: 'when-needed' | 'never';
  readonly chargeLimit: Quantity<'strength'>;

  readonly fillingStrength: Quantity<'strength'>;
  readonly barrels: Quantity<'percent'>;
  readonly hogsheads: Quantity<'percent'>;
  readonly alcoholLoss: Quantity<'percent'>;
  readonly storeHumidity: Quantity<'percent'>;
  readonly steadyHumidity: Quantity<'percent'>;
  readonly yearsInWood: Quantity<'years'>;
  readonly bottlingStrength: Quantity<'strength'>;
  readonly bottleSize: Quantity<'bottle'>;
}
