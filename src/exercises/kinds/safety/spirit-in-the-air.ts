// The smell of spirit at a warm condenser.
import { judged } from '../../judged.ts';
import before from './before/spirit-in-the-air.ts';

export default judged({
  id: 'spirit-in-the-air',
  title: 'Spirit can be smelt',
  topic: 'safety',
  level: 1,
  sources: ['niosh-ethanol', 'common-practice'],
  scene: (chance) => {
    const place = chance.pick([
      'near the spirit safe',
      'beside the low wines receiver',
      'under the condenser of the spirit still',
      'by the feints receiver',
    ]);
    const sign = chance.pick([
      'the condenser’s outlet pipe feels warm',
      'the cooling water has dwindled to a trickle',
      'the spirit in the safe runs warm',
      'the cooling water gauge stands at nothing',
    ]);
    const when = chance.pick([
      'In the middle of the heart run',
      'Half an hour into the feints',
      'Shortly after the foreshots',
      'At the start of the night shift',
    ]);
    return `${when} you smell spirit ${place}, and ${sign}. What do you do first?`;
  },
  would: [
    [
      'Have the heat off first, even if all of the cut is spoilt.',
      'The heat makes the vapour, which burns in air from about 3.3 %. No cut is worth a fire.',
    ],
    [
      'Raise the alarm from outside, as soon as all of them have left.',
      'Where vapour is, one spark is enough, and a telephone may make it.',
    ],
    [
      'Press the emergency stop that stands clear of the smell, and lead them out.',
      'It stands outside the cloud. Vapour is escaping or soon will be, and a run can be made up.',
    ],
    [
      'Stop the still, and leave it off until those in charge have found out why.',
      'A cause that was not found comes again with the next charge.',
    ],
    [
      'Touch no switch, and look for a telephone well away from there.',
      'A switch may make the spark in the cloud. Nothing electrical is touched there.',
    ],
  ],
  wouldNot: [
    [
      'Turn the water up first, and stop the heat if that does not help.',
      'The heat goes on making vapour meanwhile. Stop the heat first.',
    ],
    [
      'Get everyone out, and then look for the leak yourself.',
      'You would stand in hot vapour that can burn you and catch fire.',
    ],
    [
      'Switch on the fan beside it, and keep the others away.',
      'Its switch may make a spark, and the cloud is just there. Nothing electrical is switched in it.',
    ],
    [
      'Read the oxygen there, and raise the alarm if it is low.',
      'Oxygen says nothing of vapour: it is hardly lower in air that burns.',
    ],
    [
      'Call those in charge from where you are, and wait for their word.',
      'The heat goes on, and the telephone may make the spark in the cloud.',
    ],
    [
      'Keep the cut going to its end, and stop the heat by the procedure then.',
      'Each minute more brings more vapour. The heat is stopped first.',
    ],
  ],
  before,
});
