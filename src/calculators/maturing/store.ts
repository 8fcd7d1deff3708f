// The store of the house as inputs, shared by every calculator that follows a cask.
import type { Store } from '../../core/maturing/cask.ts';
import type { Quantity } from '../../core/quantity.ts';

export const storeInputs = {
  loss: { house: 'alcoholLoss' },
  humidity: { house: 'storeHumidity' },
  steady: { house: 'steadyHumidity' },
} as const;

type Percent = Quantity<'percent'>;

export const storeOf = (given: {
  readonly loss: Percent;
  readonly humidity: Percent;
  readonly steady: Percent;
}): Store => ({ alcoholLoss: given.loss, humidity: given.humidity, steadyHumidity: given.steady });
