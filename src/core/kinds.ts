// The one table of kinds of quantity: each has one unit, used everywhere in the core.

export const kinds = {
  strength: { unit: '% vol', digits: 1, meaning: 'alcoholic strength by volume at 20 °C' },
  massPercent: { unit: '% mass', digits: 2, meaning: 'share by mass, 0–100' },
  moleFraction: { unit: '', digits: 4, meaning: 'moles of ethanol in all moles, 0–1' },
  share: { unit: '', digits: 2, meaning: 'a part of a whole, 0–1' },
  percent: { unit: '%', digits: 1, meaning: 'a part of a whole, 0–100' },
  volume: { unit: 'L', digits: 0, meaning: 'volume as measured' },
  volume20: { unit: 'L', digits: 0, meaning: 'volume brought to 20 °C' },
  alcohol: { unit: 'L pure alcohol', digits: 1, meaning: 'litres of pure alcohol at 20 °C' },
  yield: { unit: 'L pure alcohol/t', digits: 1, meaning: 'litres of pure alcohol from a tonne of malt' },
  mass: { unit: 'kg', digits: 0, meaning: 'mass' },
  density: { unit: 'kg/m³', digits: 2, meaning: 'density in vacuo' },
  temperature: { unit: '°C', digits: 1, meaning: 'temperature' },
  temperatureDifference: { unit: 'K', digits: 1, meaning: 'difference of two temperatures' },
  pressure: { unit: 'kPa', digits: 1, meaning: 'absolute pressure' },
  energy: { unit: 'MJ', digits: 1, meaning: 'energy' },
  hours: { unit: 'h', digits: 1, meaning: 'time in hours' },
  years: { unit: 'years', digits: 0, meaning: 'time in years' },
  gravity: { unit: '', digits: 3, meaning: 'density over that of water, both at 20 °C' },
  plato: { unit: '°P', digits: 2, meaning: 'grams of extract in 100 g of liquid' },
  liquorRatio: { unit: 'L/kg', digits: 2, meaning: 'litres of water to a kilogram of grist' },
  milling: { unit: 't/h', digits: 1, meaning: 'tonnes of malt milled in an hour' },
  count: { unit: '', digits: 0, meaning: 'a number of things' },
  bottle: { unit: 'cL', digits: 0, meaning: 'size of a bottle' },
  degreesProof: { unit: '°', digits: 1, meaning: 'degrees of proof, of the country named' },
} as const satisfies Record<string, { unit: string; digits: number; meaning: string }>;

export type KindName = keyof typeof kinds;
