// The families of mistakes, each with a name for a trainer's table.

export const families = {
  percent: 'A percentage not divided by 100, or divided twice',
  thousand: 'A thousand, a hundred or a ten lost between units',
  contraction: 'Volumes added: what vanishes in mixing forgotten',
  averaged: 'Averaged without weighing by amount',
  wetForDry: 'Wet and dry basis mixed up',
  points: 'Percentage points taken as parts of the amount',
  temperature: 'Temperature, its base or its scale overlooked',
  otherCountry: 'Gallon, proof or rule of another country',
  apparent: 'Apparent and real attenuation mixed up',
  upsideDown: 'Divided where one multiplies, or upside down',
  sign: 'Added where one subtracts, or the wrong way round',
  forgotten: 'A part of the sum left out',
  wrongWhole: 'A share of the wrong whole',
  massForVolume: 'Mass and volume mixed up',
  bulkForAlcohol: 'Bulk litres and pure alcohol mixed up',
  compound: 'Simple for compound, or a straight line for a curve',
  wrongConstant: 'A constant that belongs to another case',
  roundedWrongWay: 'Whole things rounded the wrong way',
  otherFigure: 'The right sum for another figure',
  order: 'Steps in another order',
  choice: 'Another choice',
} as const;
export type Family = keyof typeof families;
export const familyNames = Object.keys(families) as Family[];
