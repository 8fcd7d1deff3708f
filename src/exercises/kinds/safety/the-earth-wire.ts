// Bonding a hose before spirit flows.
import { formatNumber as n } from '../../../core/format.ts';
import { judged } from '../../judged.ts';
import before from './before/the-earth-wire.ts';

export default judged({
  id: 'the-earth-wire',
  title: 'The earth wire',
  topic: 'safety',
  level: 2,
  sources: ['niosh-ethanol', 'common-practice', 'memory'],
  scene: (chance) => {
    const [what, litres] = chance.pick([
      ['a road tanker', 12_000],
      ['a road tanker', 8000],
      ['a steel tank on a pallet', 1000],
      ['a steel drum', 200],
      ['an empty vat', 5000],
      ['an empty vat', 2400],
    ] as const);
    const why = chance.pick([
      'its clamp is broken',
      'nobody finds the cable',
      'the cable is too short',
      'it lies in the other building',
    ]);
    return `You are to pump ${n(litres, 0)} L of new spirit into ${what}. The hose is ready, but the earthing cable cannot be put on: ${why}. What do you do?`;
  },
  would: [
    [
      'Have a sound cable brought and checked first, and then pump.',
      'Liquid that flows can charge a hose and a vessel, and the spark falls where the vapour is.',
    ],
    [
      'Let the order wait until hose and vessel are bonded as they should be.',
      'Earthing comes before the flow. Waiting costs an hour, and a spark in the vapour costs the house.',
    ],
    [
      'Have the valves shut, and report that it cannot be earthed.',
      'They decide what is done, by the site’s procedure. Spirit does not flow meanwhile.',
    ],
    [
      'Take the hose off again, so that nobody starts it.',
      'What stands ready is started by somebody who does not know.',
    ],
    [
      'Wait with all of it: the first litres need the bond as well.',
      'The first litres charge hose and vessel too.',
    ],
  ],
  wouldNot: [
    [
      'Look out for a crackle, and shut the pump off as soon as you hear it.',
      'The crackle is the spark, and once it is heard it has been in the vapour.',
    ],
    [
      'Wait until foam is there, and pump with a trained colleague beside you.',
      'A flash is over before anyone moves. The spark is what must not be.',
    ],
    [
      'Hold the hose against the vessel by hand, so that the two touch.',
      'A hand is no bond, and it puts you where the spark would be.',
    ],
    [
      'Shut the doors, start the pump, and let nobody in until it is off.',
      'That keeps people out of the room, and neither the charge nor the vapour.',
    ],
    [
      'Wait with the pump until the spirit is cold, even if it takes all night.',
      'Cold spirit is charged as well, and at this strength it may still give off vapour that burns.',
    ],
  ],
  before,
});
