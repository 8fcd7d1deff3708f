// Plants that tests begin with.
import type { Plant, Stills } from '../../src/core/plant/plant.ts';

export const stills = (number: number, charge: number, reflux: number, hours = 7): Stills => ({
  number,
  charge,
  hours,
  reflux,
  condenser: 'shell-and-tube',
  heating: 'steam',
});

/** One of each vessel, none too small for a mash of 7,500 L; reflux as the built-in house has it. */
export const plainPlant: Plant = {
  mashTuns: [{ number: 1, hours: 8 }],
  washbacks: [{ number: 4, full: 9500, working: 8000, material: 'wood' }],
  shortFermentation: 72,
  weekendFermentation: 110,
  washCharger: { holds: 8500 },
  lowWinesReceiver: { holds: 8000 },
  spiritReceiver: { holds: 3000 },
  washStills: [stills(1, 8000, 0.05)],
  intermediateStills: [stills(1, 4000, 0.08)],
  spiritStills: [stills(1, 5000, 0.1)],
  scheme: 'twice',
  strongFeintsEnd: 40,
  runAgain: 50,
};
