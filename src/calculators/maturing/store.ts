// The store of the house as inputs, shared by every calculator that follows a cask.
import type { Store } from '../../core/maturing/cask.ts';
import type { Quantity } from '../../core/quantity.ts';

/** What the dry wood drinks: a figure of the house, for every sum that follows a cask from its filling. */
export const indrinkInput = {
  kind: 'percent',
  label: 'Drunk by the dry wood in the first days',
  range: [0, 6],
  step: 0.1,
  house: 'indrink',
} as const;

export const storeInputs = {
  loss: {
    kind: 'percent',
    label: 'Alcohol lost in a year',
    range: [0, 15],
    step: 0.1,
    house: 'alcoholLoss',
  },
  humidity: {
    kind: 'percent',
    label: 'Humidity of the store',
    range: [20, 98],
    step: 1,
    house: 'storeHumidity',
  },
  steady: {
    kind: 'percent',
    label: 'Humidity at which strength is steady',
    range: [40, 80],
    step: 1,
    house: 'steadyHumidity',
  },
} as const;

type Percent = Quantity<'percent'>;

export const storeOf = (given: {
  readonly loss: Percent;
  readonly humidity: Percent;
  readonly steady: Percent;
}): Store => ({ alcoholLoss: given.loss, humidity: given.humidity, steadyHumidity: given.steady });
