// The store of the house as inputs, shared by every calculator that follows a cask.
import type { Store } from '../../core/maturing/cask.ts';
import type { Quantity } from '../../core/quantity.ts';

/** What the dry wood drinks: a figure of the house, for every sum that follows a cask from its filling. */
export const indrinkInput = { label: 'Indrink, in the first days', house: 'indrink' } as const;

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
