// The bench of a mash: the log has less extract than the house gets, and nobody knows why.
import { mashBench, type MashCause, type MashBenchReading } from '../core/fault/mash.ts';
import { houseOfTun, setupOfTun } from '../shift/tun/shift.ts';
import { drawnBetween, type Bench } from './bench.ts';

export const mash: Bench<MashCause, MashBenchReading> = {
  id: 'mash',
  title: 'A mash',
  caution: 'hot-liquor',
  complaint: (shown, usual) =>
    `By the log this mash gave ${shown('extract')} of the extract that the house reckons with; it is usually ${usual('extract')}. Is anything wrong?`,
  readings: [
    { id: 'extract', asks: 'The log’s extract', minutes: 0, error: 4, unit: ' %', digits: 1, finds: (it) => `By the log the mash gave ${it} of the extract that the house reckons with.` },
    { id: 'volume', asks: 'Look up the volume in the log', minutes: 1, error: { part: 0.015 }, unit: ' L', digits: 0, finds: (it) => `The log says ${it} of wort.` },
    { id: 'glass', asks: 'Look up the gravity in the log', minutes: 1, error: 0.0012, unit: '', digits: 4, finds: (it) => `The log says a gravity of ${it}.` },
    { id: 'panel', asks: 'Look up what the tun’s own thermometer showed', minutes: 1, error: 0.5, unit: ' °C', digits: 1, finds: (it) => `The tun’s own thermometer showed ${it}.` },
    { id: 'mark', asks: 'Look up how far the run-off was opened at most', minutes: 1, error: 0.4, unit: ' of ten', digits: 1, finds: (it) => `The run-off was opened to mark ${it} at most.` },
    { id: 'runs', asks: 'Look up how long the wort ran', minutes: 2, error: 12, unit: ' min', digits: 0, finds: (it) => `The wort ran for ${it}.` },
    { id: 'jar', asks: 'Ask how warm the sample was when it was read', minutes: 2, error: 2.5, unit: ' °C', digits: 0, finds: (it) => `The sample was at ${it} when it was read.` },
    { id: 'iodine', asks: 'Ask for the iodine test at the end of the stand', minutes: 4, error: 0.2, unit: '', digits: 0, signs: ['kept its own colour', 'turned blue-black'], finds: (it) => `At the end of the stand the iodine ${it}.` },
    { id: 'hand', asks: 'Get the mash’s temperature from a second thermometer', minutes: 6, error: 0.5, unit: ' °C', digits: 1, finds: (it) => `By a second thermometer the mash stood at ${it}.` },
    { id: 'redip', asks: 'Have the washback dipped again', minutes: 8, error: { part: 0.015 }, unit: ' L', digits: 0, finds: (it) => `Dipped again, the washback holds ${it}.` },
    { id: 'cooled', asks: 'Cool a sample to 20 °C and read it', minutes: 12, error: 0.0012, unit: '', digits: 4, finds: (it) => `Cooled to 20 °C, the sample has a gravity of ${it}.` },
    { id: 'flour', asks: 'Sieve the grist for its flour', minutes: 20, error: 1.5, unit: ' %', digits: 1, finds: (it) => `Of the grist, ${it} is flour.` },
  ],
  causes: [
    { id: 'hard', title: 'Set bed: the run-off was opened too far', group: 'Bed and grist', confirms: ['mark', 'runs'], first: 'underlet', why: 'Drawn faster than it stands, the bed pulls tight and lets nothing through. What ran is strong first wort, and too little of it.', rests: 'common-practice' },
    { id: 'fine', title: 'Set bed: the grist was ground too fine', group: 'Bed and grist', confirms: ['flour', 'runs'], first: 'underlet-sieve', why: 'Flour fills the bed, and it sets at the usual opening. The sieve tells it from a hard draw.', rests: 'common-practice' },
    { id: 'coarse', title: 'Grist ground too coarse', group: 'Bed and grist', confirms: ['flour'], first: 'mill', why: 'Extract stays in the grits. Volume, temperature and iodine are well; the gravity is low and the sieve finds little flour.', rests: 'common-practice' },
    { id: 'hot', title: 'Mash struck too hot', group: 'Warmth of the mash', confirms: ['panel', 'hand', 'iodine'], first: 'tell-hot', why: 'Enzymes die before the starch is gone, and dead enzymes do not come back. The iodine stays blue, and both thermometers say why.', rests: 'brandam-2003' },
    { id: 'cold', title: 'Mash struck too cold', group: 'Warmth of the mash', confirms: ['panel', 'hand', 'iodine'], first: 'warm', why: 'Starch that has not swollen converts slowly. The enzymes are alive, so it can still be warmed.', rests: 'patindol-2012' },
    { id: 'thermometer', title: 'The tun’s thermometer reads too low', group: 'A wrong reading', confirms: ['hand', 'iodine'], first: 'second', why: 'The mash stood too hot while the panel showed the usual figure. Only a second thermometer tells.', rests: 'common-practice' },
    { id: 'warm-glass', title: 'Hydrometer read in warm wort', group: 'A wrong reading', confirms: ['jar', 'cooled'], first: 'read-again', why: 'A glass for 20 °C sinks deeper in warm wort and shows too little. The wort itself is well.', rests: 'oiml-r22' },
    { id: 'dip', title: 'The dip was misread', group: 'A wrong reading', confirms: ['redip'], first: 'dip-again', why: 'The wort is all there. Gravity, running time and a second dip are as usual.', rests: 'common-practice' },
    { id: 'nothing', title: 'Nothing is wrong with the mash', group: 'None of these', confirms: [], first: 'carry-on', why: 'All lies within what differs from mash to mash.', rests: 'common-practice' },
  ],
  firsts: [
    { id: 'underlet', says: 'Shut the run-off, wait, underlet gently, and begin again slowly' },
    { id: 'underlet-sieve', says: 'Shut the run-off and underlet; stop the mill and sieve before the next mash' },
    { id: 'mill', says: 'Let this wort go on; have the mill isolated by its procedure and the rollers set before the next mash' },
    { id: 'tell-hot', says: 'Set this wort apart in the log, tell the brewer, and mend the striking temperature: the starch left is lost' },
    { id: 'warm', says: 'Warm the next mash, and ask whether this one can be warmed from below and stand longer' },
    { id: 'second', says: 'Take the thermometer out of use, mash by a checked one, and mark the logs since its last check' },
    { id: 'read-again', says: 'Correct the gravity in the log from a cooled sample; change nothing in the mash' },
    { id: 'dip-again', says: 'Correct the volume in the log from a second dip, taken by another; change nothing in the mash' },
    { id: 'carry-on', says: 'Write down what was checked, and carry on' },
    { id: 'reach-in', says: 'Lean in and loosen the bed with a rod', harms: 'The mash scalds and the rakes can turn: nobody reaches into a tun.' },
    { id: 'force', says: 'Open the run-off fully and put the pump on it', harms: 'A set bed only draws tighter, and hot wort is under pressure.' },
  ],
  of: (line, chance) =>
    mashBench(setupOfTun({ house: houseOfTun('', line), done: [] }), {
      grist: line.house.gristTemperature + drawnBetween(0, [-2, 2], chance),
      converts: drawnBetween(35, [30, 38], chance),
      jar: drawnBetween(20, [19, 21.5], chance),
      malt: drawnBetween(0, [-2.5, 0.5], chance),
      flour: line.house.flour + drawnBetween(0, [-0.6, 0.6], chance),
    }),
}; // prettier-ignore
