// The bench of a cask: light at its regauge.
import { caskBench, type CaskCause, type CaskReading } from '../core/fault/casks.ts';
import { litres20 } from '../core/quantity.ts';
import { drawn, type Bench } from './bench.ts';

const CASK = 200; // L of the cask; a barrel
const FOUND_AT = 10; // °C of the store in which the house's loss was found; memory
const YEARS = 6; // years from filling to regauge

export const casks: Bench<CaskCause, CaskReading> = {
  id: 'casks',
  title: 'A cask',
  caution: 'ethanol-vapour',
  complaint: (shown) =>
    `A barrel is regauged after ${YEARS} years, and found light by ${shown('light')} of the alcohol that the house expects. Is anything wrong?`,
  readings: [
    { id: 'light', asks: 'Light by', minutes: 0, error: 2.5, unit: ' %', digits: 1 },
    { id: 'volume', asks: 'Look up the volume as it was dipped', minutes: 1, error: 2, unit: ' L', digits: 1 },
    { id: 'strength', asks: 'Look up the strength as it was written', minutes: 1, error: 0.4, unit: ' % vol', digits: 1 },
    { id: 'sample', asks: 'Ask how warm the sample was when it was read', minutes: 1, error: 2.5, unit: ' °C', digits: 0 },
    { id: 'seal', asks: 'Look at the seal of the bung', minutes: 2, error: 0.2, unit: '', digits: 0, signs: ['whole', 'broken, and nothing in the book'] },
    { id: 'ticket', asks: 'Look up the filling by weight: volume', minutes: 4, error: 1.5, unit: ' L', digits: 1 },
    { id: 'first', asks: 'Look up its gauge after the first year: light by', minutes: 4, error: 0.9, unit: ' %', digits: 1 },
    { id: 'damp', asks: 'Look the cask over with a lamp made for the zone', minutes: 5, error: 0.2, unit: '', digits: 0, signs: ['dry, tight hoops', 'a damp stave and a dark floor'] },
    { id: 'redip', asks: 'Have it gauged again, by another and with another rod', minutes: 8, error: 2, unit: ' L', digits: 1 },
    { id: 'store', asks: 'Read the store’s record: mean temperature', minutes: 10, error: 1.5, unit: ' °C', digits: 1 },
    { id: 'humid', asks: 'Read the store’s record: mean humidity', minutes: 10, error: 5, unit: ' %', digits: 0 },
    { id: 'bench', asks: 'Have a sample measured at 20 °C', minutes: 20, error: 0.4, unit: ' % vol', digits: 1 },
    { id: 'neighbours', asks: 'Regauge six neighbours: light by, on average', minutes: 60, error: 1, unit: ' %', digits: 1 },
  ],
  causes: [
    { id: 'leak', title: 'The cask leaks', first: 'cooper', why: 'Volume goes and strength stays. The stave is damp, and the floor under it dark.', rests: 'common-practice' },
    { id: 'hot', title: 'It lies warm and dry, high under the roof', first: 'move', why: 'Warmth drives out both, dry air takes more water: less volume, and more strength. Its neighbours are light too.', rests: 'conner-2003' },
    { id: 'drawn', title: 'Spirit was drawn and not written down', first: 'report', why: 'Volume is gone with no sign on the cask, after a first year that was well. The seal tells.', rests: 'common-practice' },
    { id: 'thirsty', title: 'A dry cask drank more than usual', first: 'wood', why: 'It was filled to the full, and was light already after a year.', rests: 'common-practice' },
    { id: 'short', title: 'It was never filled to the full', first: 'book', why: 'The weight at filling says so; since then it has lost what casks lose.', rests: 'derived' },
    { id: 'dip', title: 'The rod was misread', first: 'gauge', why: 'A second gauge finds the spirit where it always was.', rests: 'common-practice' },
    { id: 'cold-glass', title: 'Hydrometer read in a cold sample', first: 'read-again', why: 'Cold spirit is denser, so a glass for 20 °C shows too little strength. The volume is as usual.', rests: 'oiml-r22' },
    { id: 'nothing', title: 'Nothing is wrong with the cask', first: 'carry-on', why: 'Places and woods differ by so much.', rests: 'common-practice' },
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
      warmer: drawn(0, [-0.6, 0.6], chance),
      damper: drawn(0, [-2, 2], chance),
      drinks: drawn(0, [-0.2, 0.7], chance),
      sample: drawn(19.5, [18.5, 20.5], chance),
    }),
}; // prettier-ignore
