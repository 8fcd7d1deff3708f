// The bench of a spirit run: less pure alcohol in the heart than the house makes of a charge.
import { stillBench, type StillCause, type StillReading } from '../core/fault/still.ts';
import { spiritCuts } from '../core/distilling/plan.ts';
import { drawnBetween, moreOrLess, type Bench } from './bench.ts';

const HOURS = 8; // h of a spirit still; common practice

export const still: Bench<StillCause, StillReading> = {
  id: 'still',
  title: 'A spirit run',
  caution: 'ethanol-vapour',
  complaint: (shown, usual) =>
    `The heart of this run came to ${shown('heart')} of pure alcohol; the house makes ${usual('heart')} of a charge. The next charge is waiting. Is anything wrong?`,
  readings: [
    { id: 'heart', asks: 'Alcohol in the heart', minutes: 0, error: { part: 0.02 }, unit: ' L', digits: 0, finds: (it) => `The heart came to ${it} of pure alcohol.` },
    { id: 'safe', asks: 'Look up the warmest spirit at the safe', minutes: 1, error: 4, unit: ' °C', digits: 0, finds: (it) => `The warmest spirit at the safe was at ${it}.` },
    { id: 'leaves', asks: 'Look up how warm the cooling water left', minutes: 1, error: 4, unit: ' °C', digits: 0, finds: (it) => `The cooling water left at ${it}.` },
    { id: 'foreshots', asks: 'Look up what the foreshots came to', minutes: 2, error: { part: 0.15 }, unit: ' L', digits: 1, finds: (it) => `The foreshots hold ${it} of pure alcohol.` },
    { id: 'pumped', asks: 'Look up the meter of the charging pump', minutes: 3, error: { part: 0.015 }, unit: ' L', digits: 0, finds: (it) => `The meter of the charging pump counted ${it}.` },
    { id: 'second', asks: 'Hold a checked thermometer beside that of the safe', minutes: 4, error: 0.6, unit: ' K', digits: 1, finds: (it) => `The safe’s thermometer reads ${moreOrLess(it, 'higher', 'lower')} than a checked one.` },
    { id: 'meter', asks: 'Take a vapour meter round the joints, from outside the zone inwards', minutes: 6, error: 4, unit: ' %', digits: 0, from: 0, finds: (it) => `At the joints the vapour meter shows at most ${it} of the lower explosive limit.`, isDanger: true },
    { id: 'vent', asks: 'Take the vapour meter to the safe’s vent', minutes: 6, error: 1.5, unit: ' %', digits: 0, from: 0, finds: (it) => `At the safe’s vent the vapour meter shows ${it} of the lower explosive limit.`, isDanger: true },
    { id: 'charge', asks: 'Have the kept sample of the charge measured', minutes: 12, error: 0.3, unit: ' % vol', digits: 1, finds: (it) => `The kept sample of the charge measures ${it}.` },
    { id: 'bench', asks: 'Have the kept sample of the last heart measured at the bench', minutes: 12, error: 0.5, unit: ' % vol', digits: 1, finds: (it) => `The kept sample of the last heart measures ${it}.` },
    { id: 'rounds', asks: 'Compare the feints receiver with four rounds ago', minutes: 15, error: 3, unit: ' %', digits: 0, finds: (it) => `The feints receiver holds ${moreOrLess(it)} pure alcohol than four rounds ago.` },
    { id: 'balance', asks: 'Gauge all receivers and lees, and balance the alcohol', minutes: 40, error: 0.7, unit: ' %', digits: 1, finds: (it) => `Receivers and lees together hold ${moreOrLess(it, 'less', 'more')} alcohol than the logged charge.` },
  ],
  causes: [
    { id: 'scale', title: 'Condenser fouled: vapour goes by', group: 'Condenser and still', confirms: ['safe', 'leaves', 'vent'], first: 'steam-off', why: 'Spirit comes hot, and the water leaves cooler than usual, for the heat does not reach it. What is not condensed is in the air.', rests: 'derived' },
    { id: 'thirsty', title: 'Too little cooling water: vapour goes by', group: 'Condenser and still', confirms: ['safe', 'leaves', 'vent'], first: 'steam-water', why: 'Spirit comes hot and so does the water that leaves: there is too little of it.', rests: 'derived' },
    { id: 'joint', title: 'A joint of the still leaks vapour', group: 'Condenser and still', confirms: ['meter'], first: 'steam-clear', why: 'Condenser and cuts are well, and alcohol is missing from the balance. The meter finds it where it should find nothing.', rests: 'common-practice' },
    { id: 'feints', title: 'Feints drift: runs were stopped early, round after round', group: 'Cuts and feints', confirms: ['rounds'], first: 'run-out', why: 'What is left in the lees does not come back. The receiver sinks from round to round, and each charge is smaller.', rests: 'derived' },
    { id: 'thermometer', title: 'The safe’s thermometer reads too high', group: 'A wrong reading', confirms: ['second', 'bench'], first: 'thermometer', why: 'Strengths are brought down too far, so the heart is ended while it is still strong. A kept sample tells.', rests: 'oiml-r22' },
    { id: 'foreshots', title: 'The foreshots ran too long', group: 'Cuts and feints', confirms: ['foreshots'], first: 'haze', why: 'What is missing from the heart is in the foreshots, and comes back next round.', rests: 'common-practice' },
    { id: 'dip', title: 'The charge was dipped wrong: the still was not full', group: 'A wrong reading', confirms: ['pumped'], first: 'gauge', why: 'Foreshots, heart and feints are all small by the same part. The pump’s meter knows.', rests: 'derived' },
    { id: 'nothing', title: 'Nothing is wrong with the run', group: 'None of these', confirms: [], first: 'carry-on', why: 'Charges and cuts differ by so much.', rests: 'common-practice' },
  ],
  firsts: [
    { id: 'steam-off', says: 'Steam off, nothing switched near the safe, people out of the vapour; then the condenser is opened and cleaned by its procedure' },
    { id: 'steam-water', says: 'Steam off and people out of the vapour; then find out why the water is short before any steam comes back' },
    { id: 'steam-clear', says: 'Steam off, clear the still house, raise the alarm by the site’s rule; the joint is mended cold and gas-free' },
    { id: 'run-out', says: 'Let the next feints run to the house’s end, and follow the receiver for some rounds' },
    { id: 'thermometer', says: 'Take the thermometer out of use, read by a checked one, and mark the logs since its last check' },
    { id: 'haze', says: 'Go through the haze test together, and write down when the foreshots end' },
    { id: 'gauge', says: 'Gauge the charger again and correct the log before the next charge' },
    { id: 'carry-on', says: 'Write down what was checked, and carry on' },
    { id: 'tighten', says: 'Tighten the joints under steam', harms: 'Vapour burns, scalds and catches fire. A still is worked on cold, vented and gas-free.' },
    { id: 'manhole', says: 'Open the manhole a little to look inside', harms: 'Hot vapour comes out, and air goes in: burns and fire.' },
    { id: 'more-steam', says: 'More steam, to make up for it', harms: 'More steam makes more vapour than is condensed already.' },
  ],
  of: ({ house, round }, chance) => {
    const { reflux, pressure } = round.spiritRun.setting;
    return stillBench({ charge: round.charge, reflux, pressure, cuts: spiritCuts(house), hours: HOURS }, {
      rise: drawnBetween(0, [-1, 1], chance),
      cut: drawnBetween(0, [-0.1, 0.1], chance),
      less: drawnBetween(0, [-0.2, 1], chance),
    });
  },
}; // prettier-ignore
