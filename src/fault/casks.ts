// The bench of a cask: light at its regauge.
import { caskBench, type CaskCause, type CaskReading } from '../core/fault/casks.ts';
import { litres20 } from '../core/quantity.ts';
import { drawnBetween, moreOrLess, type Bench } from './bench.ts';

const CASK = 200; // L of the cask; a barrel
const FOUND_AT = 10; // °C of the store in which the house's loss was found; memory
const YEARS = 6; // years from filling to regauge

export const casks: Bench<CaskCause, CaskReading> = {
  id: 'casks',
  title: 'A cask',
  caution: 'ethanol-vapour',
  complaint: (shown) =>
    `A barrel is regauged after ${YEARS} years, and found to hold ${moreOrLess(shown('light'), 'less', 'more')} alcohol than the house expects. Is anything wrong?`,
  readings: [
    { id: 'light', asks: 'Alcohol at the regauge', minutes: 0, error: 2.5, unit: ' %', digits: 1, finds: (it) => `The cask holds ${moreOrLess(it, 'less', 'more')} alcohol than the house expects.` },
    { id: 'volume', asks: 'Look up the volume as it was dipped', minutes: 1, error: 2, unit: ' L', digits: 1, finds: (it) => `The dip was written down as ${it}.` },
    { id: 'strength', asks: 'Look up the strength as it was written', minutes: 1, error: 0.4, unit: ' % vol', digits: 1, finds: (it) => `The strength was written down as ${it}.` },
    { id: 'sample', asks: 'Ask how warm the sample was when it was read', minutes: 1, error: 2.5, unit: ' °C', digits: 0, finds: (it) => `The sample was at ${it} when it was read.` },
    { id: 'seal', asks: 'Look at the seal of the bung', minutes: 2, error: 0.2, unit: '', digits: 0, signs: ['whole', 'broken, and nothing in the book'], finds: (it) => `The seal of the bung is ${it}.` },
    { id: 'ticket', asks: 'Look up the filling by weight', minutes: 4, error: 1.5, unit: ' L', digits: 1, finds: (it) => `By its weight it was filled with ${it}.` },
    { id: 'first', asks: 'Look up its gauge after the first year', minutes: 4, error: 0.9, unit: ' %', digits: 1, finds: (it) => `After its first year it held ${moreOrLess(it, 'less', 'more')} alcohol than the house expects.` },
    { id: 'damp', asks: 'Look the cask over with a lamp made for the zone', minutes: 5, error: 0.2, unit: '', digits: 0, signs: ['dry, tight hoops', 'a damp stave and a dark floor'], finds: (it) => `The lamp shows ${it}.`, isDanger: true },
    { id: 'redip', asks: 'Have it gauged again, by another and with another rod', minutes: 8, error: 2, unit: ' L', digits: 1, finds: (it) => `The second gauge finds ${it}.` },
    { id: 'store', asks: 'Read the store’s record of temperature', minutes: 10, error: 1.5, unit: ' °C', digits: 1, finds: (it) => `The store’s mean temperature was ${it}.` },
    { id: 'humid', asks: 'Read the store’s record of humidity', minutes: 10, error: 5, unit: ' %', digits: 0, finds: (it) => `The store’s mean humidity was ${it}.` },
    { id: 'bench', asks: 'Have a sample measured at 20 °C', minutes: 20, error: 0.4, unit: ' % vol', digits: 1, finds: (it) => `Measured at 20 °C, the sample has ${it}.` },
    { id: 'neighbours', asks: 'Regauge six of its neighbours', minutes: 60, error: 1, unit: ' %', digits: 1, finds: (it) => `On average, six neighbours hold ${moreOrLess(it, 'less', 'more')} alcohol than the house expects.` },
  ],
  causes: [
    { id: 'leak', title: 'The cask leaks', group: 'Cask and store', confirms: ['damp'], first: 'cooper', why: 'Volume goes and strength stays. The stave is damp, and the floor under it dark.', rests: 'common-practice' },
    { id: 'hot', title: 'It lies warm and dry, high under the roof', group: 'Cask and store', confirms: ['store', 'humid', 'neighbours'], first: 'move', why: 'Warmth drives out both, dry air takes more water: less volume, and more strength. Its neighbours are light too.', rests: 'conner-2003' },
    { id: 'drawn', title: 'Spirit was drawn and not written down', group: 'Filling and drawing', confirms: ['seal'], first: 'report', why: 'Volume is gone with no sign on the cask, after a first year that was well. The seal tells.', rests: 'common-practice' },
    { id: 'thirsty', title: 'A dry cask drank more than usual', group: 'Cask and store', confirms: ['first'], first: 'wood', why: 'It was filled to the full, and was light already after a year.', rests: 'common-practice' },
    { id: 'short', title: 'It was never filled to the full', group: 'Filling and drawing', confirms: ['ticket'], first: 'book', why: 'The weight at filling says so; since then it has lost what casks lose.', rests: 'derived' },
    { id: 'dip', title: 'The rod was misread', group: 'A wrong reading', confirms: ['redip'], first: 'gauge', why: 'A second gauge finds the spirit where it always was.', rests: 'common-practice' },
    { id: 'cold-glass', title: 'Hydrometer read in a cold sample', group: 'A wrong reading', confirms: ['sample', 'bench'], first: 'read-again', why: 'Cold spirit is denser, so a glass for 20 °C shows too little strength. The volume is as usual.', rests: 'oiml-r22' },
    { id: 'nothing', title: 'Nothing is wrong with the cask', group: 'None of these', confirms: [], first: 'carry-on', why: 'Places and woods differ by so much.', rests: 'common-practice' },
  ],
  firsts: [
    { id: 'cooper', says: 'Catch what drips, no flame or switch near it; call the cooper, or pump it over to a sound cask' },
    { id: 'move', says: 'Regauge the row, and decide with the store whether it moves down or is bottled sooner' },
    { id: 'report', says: 'Tell the one who answers for the duty, seal the cask, and touch nothing more' },
    { id: 'wood', says: 'Mark the wood’s lot, and gauge its other casks at a year' },
    { id: 'book', says: 'Correct the book with the one who answers for the duty, and check that day’s other fillings' },
    { id: 'gauge', says: 'Correct the volume from the second gauge, signed by both' },
    { id: 'read-again', says: 'Correct the strength from a sample at 20 °C' },
    { id: 'carry-on', says: 'Write down what was checked, and carry on' },
    { id: 'flame', says: 'Look through the bung hole with a flame or a plain lamp', harms: 'The vapour at the bung burns.' },
    { id: 'top-up', says: 'Fill it up from the next cask so that it comes right', harms: 'Spirit moved without a record is an offence nearly everywhere, and hides the cause.' },
  ],
  of: ({ house, filling }, chance) =>
    caskBench({ filling: { volume: litres20(CASK), strength: filling.strength }, indrink: house.indrink, alcoholLoss: house.alcoholLoss, steadyHumidity: house.steadyHumidity, humidity: house.storeHumidity, foundAt: FOUND_AT }, {
      years: YEARS,
      warmer: drawnBetween(0, [-0.6, 0.6], chance),
      damper: drawnBetween(0, [-2, 2], chance),
      drinks: drawnBetween(0, [-0.2, 0.7], chance),
      sample: drawnBetween(19.5, [18.5, 20.5], chance),
    }),
}; // prettier-ignore
