// The figures of a short link, each at its place and with the value that a link leaves out. Links that were sent rely on it:
// add at the end, never move, rename or change a row.

export const shortList: readonly (readonly [figure: string, value: number | string])[] = [
  ['holds', 'efficiency'],
  ['barleyMoisture', 12],
  ['maltMoisture', 4.5],
  ['maltingLoss', 10],
  ['solubleExtract', 77.5],
  ['fermentability', 87],
  ['maltPerMash', 1500],
  ['husk', 20],
  ['flour', 10],
  ['millRate', 1.5],
  ['mashesPerWeek', 6],
  ['weeksPerYear', 46],
  ['liquorRatio', 4],
  ['mashTemperature', 64.5],
  ['gristTemperature', 15],
  ['secondWater', 75],
  ['lastWater', 85],
  ['wortVolume', 7500],
  ['originalGravity', 1.058],
  ['draffMoisture', 78],
  ['setTemperature', 19],
  ['yeast', 30],
  ['fermentationHours', 72],
  ['finalGravity', 0.998],
  ['airPressure', 101.3],
  ['washReflux', 0.05],
  ['washEnd', 1],
  ['spiritReflux', 0.1],
  ['foreshotsBy', 'share'],
  ['foreshotsShare', 3],
  ['foreshotsVolume', 40],
  ['foreshotsMinutes', 15],
  ['foreshotsFlow', 160],
  ['foreshotsStrength', 73],
  ['heartEnd', 62],
  ['feintsEnd', 1],
  ['dilution', 'when-needed'],
  ['chargeLimit', 30],
  ['fillingStrength', 63.5],
  ['barrels', 75],
  ['hogsheads', 20],
  ['indrink', 2],
  ['alcoholLoss', 2],
  ['storeHumidity', 80],
  ['steadyHumidity', 65],
  ['yearsInWood', 10],
  ['caskResidue', 1],
  ['filterLoss', 0.5],
  ['bottlingStrength', 46],
  ['bottleSize', 70],
];

const FIRST_ROWS = 50; // in the dictionary, whatever rows are added later
/** What both ends of a short link know beforehand: how the standing of figures is written. Never to be changed either. */
export const dictionary = new TextEncoder().encode(
  `{"known":{"given":{},"counted":{}}}${shortList
    .slice(0, FIRST_ROWS)
    .map(([figure]) => `"${figure}":"set","${figure}":"measured",`)
    .join('')}`,
);
