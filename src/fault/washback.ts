// The bench of a washback: by its gravities the wash has less alcohol than it should by this hour.
import { washbackBench, type WashbackCause, type WashbackReading } from '../core/fault/washback.ts';
import { houseOfWashback, setupOfWashback } from '../shift/washback/shift.ts';
import { drawnBetween, type Bench } from './bench.ts';

export const washback: Bench<WashbackCause, WashbackReading> = {
  id: 'washback',
  title: 'A washback',
  caution: 'carbon-dioxide',
  complaint: (shown, usual) =>
    `By its gravities the wash has come to ${shown('alcohol')} on its second day; the house’s own to ${usual('alcohol')} by this hour. Is anything wrong?`,
  readings: [
    { id: 'alcohol', asks: 'Strength by the gravities', minutes: 0, error: 0.45, unit: ' % vol', digits: 1, finds: (it) => `By its gravities the wash has come to ${it}.` },
    { id: 'glass', asks: 'Look up the last reading of the glass', minutes: 1, error: 0.0018, unit: '', digits: 4, finds: (it) => `The glass last read a gravity of ${it}.` },
    { id: 'original', asks: 'Look up the gravity it was filled with', minutes: 1, error: 0.001, unit: '', digits: 4, finds: (it) => `The wort was filled at a gravity of ${it}.` },
    { id: 'start', asks: 'Look up the temperature at which it was set', minutes: 1, error: 1, unit: ' °C', digits: 1, finds: (it) => `The wort was set at ${it}.` },
    { id: 'warmest', asks: 'Look up the warmest so far', minutes: 2, error: 1.2, unit: ' °C', digits: 1, finds: (it) => `The warmest so far was ${it}.` },
    { id: 'pitched', asks: 'Weigh the empty yeast bags against the slip', minutes: 5, error: 6, unit: ' %', digits: 0, finds: (it) => `Bags and slip say that ${it} of the usual yeast was pitched.` },
    { id: 'acid', asks: 'Take the pH of a drawn sample', minutes: 5, error: 0.15, unit: '', digits: 2, finds: (it) => `The drawn sample has a pH of ${it}.` },
    { id: 'redip', asks: 'Read the level from outside', minutes: 6, error: { part: 0.02 }, unit: ' L', digits: 0, finds: (it) => `By its level the washback holds ${it}.` },
    { id: 'degassed', asks: 'Shake the gas out of a drawn sample and read it again', minutes: 10, error: 0.0018, unit: '', digits: 4, finds: (it) => `With the gas shaken out, the sample has a gravity of ${it}.` },
    { id: 'stained', asks: 'Stain the yeast kept from pitching and count dead cells', minutes: 15, error: 8, unit: ' %', digits: 0, from: 0, finds: (it) => `Under the dye, ${it} of the cells are dead.` },
    { id: 'rods', asks: 'Look for bacteria under the microscope', minutes: 20, error: 4, unit: ' in a field', digits: 0, from: 0, finds: (it) => `Of rods the microscope shows ${it}.` },
    { id: 'forced', asks: 'Read the forced test, the last gravity this wort can reach', minutes: 30, error: 0.0013, unit: '', digits: 4, finds: (it) => `The forced test ended at a gravity of ${it}.` },
  ],
  causes: [
    { id: 'little', title: 'Too little yeast was pitched', group: 'Yeast and setting', confirms: ['pitched'], first: 'pitch', why: 'Each doubling that is missing takes some hours. The cells are alive and the wort is well: it starts late.', rests: 'common-practice' },
    { id: 'dead', title: 'The yeast was mostly dead', group: 'Yeast and setting', confirms: ['stained'], first: 'pitch-lot', why: 'The weight was right and the dye says the rest: it works like too little yeast.', rests: 'common-practice' },
    { id: 'cold', title: 'The wort was set too cold', group: 'Yeast and setting', confirms: ['start'], first: 'warm', why: 'Ten degrees colder works at half the pace. The record of setting tells it.', rests: 'memory' },
    { id: 'hot', title: 'The wort was set too hot, and the yeast died of it', group: 'Yeast and setting', confirms: ['start', 'warmest'], first: 'cool', why: 'Above 35 °C yeast suffers. It starts fast and then stands, warm and sweet.', rests: 'common-practice' },
    { id: 'dextrin', title: 'The mash was too hot: sugars that yeast cannot use', group: 'The wort', confirms: ['forced'], first: 'mash', why: 'Yeast, warmth and pH are well. The forced test ends high as well, so no yeast will bring it down.', rests: 'common-practice' },
    { id: 'infected', title: 'Bacteria were first: an infection', group: 'The wort', confirms: ['acid', 'rods'], first: 'clean', why: 'Sugar goes to acid, which weighs nearly as much: the gravity stands high and the pH is low too soon. The forced test ends high too, for the sugar is gone.', rests: 'common-practice' },
    { id: 'lifted', title: 'Hydrometer lifted by gas', group: 'A wrong reading', confirms: ['degassed'], first: 'read-again', why: 'Bubbles on the glass carry it. A shaken sample reads as usual, and the wash is well.', rests: 'common-practice' },
    { id: 'water', title: 'The wort cooler leaks water into the wort', group: 'The wort', confirms: ['original', 'redip'], first: 'cooler', why: 'The gravity at filling is low and the level high by the same part. The yeast does all it can.', rests: 'derived' },
    { id: 'nothing', title: 'Nothing is wrong with the washback', group: 'None of these', confirms: [], first: 'carry-on', why: 'Rooms and batches differ by so much.', rests: 'common-practice' },
  ],
  firsts: [
    { id: 'pitch', says: 'Ask the brewer for a second pitch of sound yeast, put in from outside with the meter reading well' },
    { id: 'pitch-lot', says: 'Set the yeast lot apart, check the next one under the dye, and ask for a second pitch from it' },
    { id: 'warm', says: 'Stop what cools it, let it warm by itself, and plan for more hours' },
    { id: 'cool', says: 'Cool it by the coil or jacket, check the yeast’s life, and only then ask for a new pitch' },
    { id: 'mash', says: 'Let it end as it will, and look at the temperatures of its mash' },
    { id: 'clean', says: 'Tell the brewer, keep its hoses and samples from the others, and distil or clean by the site’s procedure' },
    { id: 'read-again', says: 'Correct the log from the shaken sample; do nothing to the washback' },
    { id: 'cooler', says: 'Take the cooler out of use, and hold this wash out of the books until it is gauged' },
    { id: 'carry-on', says: 'Write down what was checked, and carry on' },
    { id: 'lean-in', says: 'Open the hatch and lean in to smell it', harms: 'The gas over a wash knocks people out within a few breaths. Draw a sample from the cock.' },
    { id: 'stir', says: 'Stir the standing wash hard to wake it', harms: 'The gas comes out all at once, with the froth, and fills the room.' },
  ],
  of: (line, chance) =>
    washbackBench(setupOfWashback({ house: houseOfWashback('', line) } as Parameters<typeof setupOfWashback>[0]), {
      air: drawnBetween(15, [13.5, 16.5], chance),
      late: drawnBetween(12, [10.8, 12.5], chance),
      stained: drawnBetween(0.05, [0.03, 0.08], chance),
      acid: drawnBetween(4.3, [4.2, 4.4], chance),
    }),
}; // prettier-ignore
