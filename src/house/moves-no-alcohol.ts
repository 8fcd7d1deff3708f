// Figures of the house that may move no litre of alcohol, and what each then moves instead.
import type { FigureName } from './figures.ts';

export const movesNoAlcohol: Readonly<Partial<Record<FigureName, string>>> = {
  barleyMoisture: 'it moves the barley that has to be bought',
  maltingLoss: 'it moves the barley that has to be bought',
  husk: 'it moves the grist, and with it how the bed drains',
  flour: 'it moves the grist, and with it how the bed drains',
  millRate: 'it moves the hours of milling',
  liquorRatio: 'it moves the first water and how hot it has to be',
  mashTemperature: 'it moves how hot the first water has to be',
  gristTemperature: 'it moves how hot the first water has to be',
  secondWater: 'it moves the heat of the mash',
  lastWater: 'it moves the heat of the mash',
  draffMoisture: 'it moves the weight of the draff',
  setTemperature: 'it moves the heat and the pace of the fermentation',
  yeast: 'it moves the pace of the fermentation',
  fermentationHours: 'it moves how many washbacks are needed',
  foreshotsStrength: 'it counts only while the foreshots end at a strength',
  foreshotsShare: 'it counts only while the foreshots end after a share of the alcohol',
  chargeLimit: 'it counts only for a charge that would be stronger',
  barrels: 'it moves the number and the size of the casks',
  hogsheads: 'it moves the number and the size of the casks',
};
