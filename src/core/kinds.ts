// The one table of kinds of quantity: each has one unit, used everywhere in the core. What it means stands behind it, where no page carries it.

export const kinds = {
  strength: { unit: '% vol', digits: 1 }, // alcoholic strength by volume at 20 °C
  massPercent: { unit: '% mass', digits: 2 }, // share by mass, 0–100
  moleFraction: { unit: '', digits: 4 }, // moles of ethanol in all moles, 0–1
  share: { unit: '', digits: 2 }, // a part of a whole, 0–1
  percent: { unit: '%', digits: 1 }, // a part of a whole, 0–100
  points: { unit: 'points', digits: 1 }, // difference of two percentages
  nitrogen: { unit: '%', digits: 2 }, // nitrogen in the dry matter, 0–100
  volume: { unit: 'L', digits: 0 }, // volume as measured
  volume20: { unit: 'L', digits: 0 }, // volume brought to 20 °C
  alcohol: { unit: 'L pure alcohol', digits: 1 }, // litres of pure alcohol at 20 °C
  yield: { unit: 'L pure alcohol/t', digits: 1 }, // litres of pure alcohol from a tonne of malt
  mass: { unit: 'kg', digits: 0 }, // mass
  density: { unit: 'kg/m³', digits: 2 }, // density in vacuo
  temperature: { unit: '°C', digits: 1 }, // temperature
  temperatureDifference: { unit: 'K', digits: 1 }, // difference of two temperatures
  pressure: { unit: 'kPa', digits: 1 }, // absolute pressure
  energy: { unit: 'MJ', digits: 1 }, // energy
  hours: { unit: 'h', digits: 1 }, // time in hours
  years: { unit: 'years', digits: 0 }, // time in years
  gravity: { unit: '', digits: 3 }, // density over that of water, both at 20 °C
  plato: { unit: '°P', digits: 2 }, // grams of extract in 100 g of liquid
  liquorRatio: { unit: 'L/kg', digits: 2 }, // litres of water to a kilogram of grist
  milling: { unit: 't/h', digits: 1 }, // tonnes of malt milled in an hour
  minutes: { unit: 'min', digits: 0 }, // time in minutes
  days: { unit: 'days', digits: 1 }, // time in days
  heat: { unit: 'MJ/kg', digits: 2 }, // energy to a kilogram
  energyPerTonne: { unit: 'kWh/t', digits: 0 }, // energy to a tonne of malt
  energyPerAlcohol: { unit: 'MJ/L pure alcohol', digits: 2 }, // energy to a litre of pure alcohol
  perAlcohol: { unit: 'L/L pure alcohol', digits: 1 }, // litres to a litre of pure alcohol
  power: { unit: 'kW', digits: 0 }, // energy in a second
  area: { unit: 'm²', digits: 2 }, // area
  land: { unit: 'ha', digits: 1 }, // area of farm land
  harvest: { unit: 't/ha', digits: 1 }, // tonnes of barley from a hectare
  alcoholPerLand: { unit: 'L pure alcohol/ha', digits: 0 }, // litres of pure alcohol from a hectare
  space: { unit: 'm³', digits: 0 }, // volume of air or of a room
  flow: { unit: 'm³/h', digits: 0 }, // volume of air in an hour
  airVolume: { unit: 'm³/kg', digits: 3 }, // volume of moist air to a kilogram of dry air
  massFlow: { unit: 'kg/h', digits: 1 }, // mass in an hour
  volumeFlow: { unit: 'L/h', digits: 0 }, // volume of liquid in an hour
  length: { unit: 'mm', digits: 2 }, // length
  opening: { unit: 'mm', digits: 3 }, // opening of a sieve, or size of what just passes it
  millilitres: { unit: 'mL', digits: 1 }, // volume in a laboratory glass
  molarity: { unit: 'mol/L', digits: 2 }, // moles in a litre
  grams: { unit: 'g', digits: 1 }, // mass of a sample
  ppm: { unit: 'ppm', digits: 1 }, // parts in a million
  cells: { unit: 'million/mL', digits: 1 }, // yeast cells in a millilitre
  cellsPerGram: { unit: 'billion/g', digits: 1 }, // yeast cells in a gram of pressed yeast
  gramsPerLitre: { unit: 'g/L', digits: 2 }, // grams in a litre
  perTonne: { unit: 'kg/t', digits: 1 }, // kilograms to a tonne of malt
  perHour: { unit: '1/h', digits: 3 }, // how fast: parts in an hour
  heatOfExtract: { unit: 'kJ/kg', digits: 0 }, // heat given off by a kilogram of extract
  heatLoss: { unit: 'W/K', digits: 0 }, // heat that passes for each degree of difference
  strengthDifference: { unit: '% vol', digits: 2 }, // difference of two strengths
  ratio: { unit: '', digits: 3 }, // one amount over another of the same kind
  hoursPerPercent: { unit: 'h/%', digits: 4 }, // hours in water to a hundredth of the dry matter
  perPercent: { unit: '1/%', digits: 5 }, // one over a percentage of the dry matter
  molarEnergy: { unit: 'kJ/mol', digits: 1 }, // energy to a mole
  densityInAir: { unit: 'kg/m³', digits: 2 }, // density as weighed in air
  money: { unit: 'money', digits: 2 }, // an amount in the reader’s own currency
  woodToLitre: { unit: 'cm²/L', digits: 1 }, // inner surface of a cask to a litre in it
  count: { unit: '', digits: 0 }, // a number of things
  bulkDensity: { unit: 'kg/m³', digits: 0 }, // mass of loose grain in the space that it fills
  dustCloud: { unit: 'g/m³', digits: 0 }, // mass of dust hanging in a volume of air
  pressureRise: { unit: 'bar/s', digits: 0 }, // rise of pressure in a second
  dustViolence: { unit: 'bar m/s', digits: 0 }, // Kst, how fiercely a dust explodes
  bottle: { unit: 'cL', digits: 0 }, // size of a bottle
  degreesProof: { unit: '°', digits: 1 }, // degrees of proof, of the country named
} as const satisfies Record<string, { unit: string; digits: number }>;

export type KindName = keyof typeof kinds;
