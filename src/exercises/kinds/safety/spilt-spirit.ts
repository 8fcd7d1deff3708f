// A spill of strong spirit.
import { judged } from '../../judged.ts';
import before from './before/spilt-spirit.ts';

export default judged({
  id: 'spilt-spirit',
  title: 'Spirit on the floor',
  topic: 'safety',
  level: 1,
  sources: ['niosh-ethanol', 'common-practice'],
  scene: (chance) => {
    const litres = chance.pick([5, 20, 40, 80, 200]);
    const strength = chance.pick([58, 63.5, 69]);
    const place = chance.pick([
      'in the filling store',
      'beside the spirit receiver',
      'in the warehouse alley',
      'on the bottling hall floor',
    ]);
    const cause = chance.pick([
      'A hose has come off',
      'A stave has broken',
      'A bung was left out',
      'A pump’s seal has gone',
    ]);
    return `${cause}, and about ${litres} L of spirit at ${strength} % vol have run out ${place}. What do you do first?`;
  },
  would: [
    [
      'Get everybody out, shut the door, and raise the alarm.',
      'At this strength it gives off vapour that can burn at room temperature. People come before litres.',
    ],
    [
      'Keep well away, and shut it off only if that can be done from there.',
      'Less spirit makes less vapour, and vapour reaches further than the wet. Nobody goes near for that.',
    ],
    [
      'Hold back lamps, phones and motors, so that nothing can spark beside it.',
      'Where vapour is, one spark is enough.',
    ],
    [
      'Have the drain shut if the procedure gives you that part and you need not go near.',
      'Vapour and spirit travel along a drain, and the river is at its end. Vapour reaches further than the wet.',
    ],
    [
      'Let those clear it whom the procedure names, with their own gear.',
      'Who clears it, how, and where it goes, is laid down by the site.',
    ],
  ],
  wouldNot: [
    [
      'Shut off lamps and motors at the switch, so that nothing can spark.',
      'A switch may make the spark just then. Nothing electrical is switched in the cloud.',
    ],
    [
      'Have it rinsed down the drain, and keep the water on until it is clear.',
      'Never into an open drain: vapour and spirit travel along it, and the river is at its end.',
    ],
    [
      'Wear gloves and goggles, and let a colleague take it up with the floor machine.',
      'Its motor may make the spark, and gloves keep no vapour away.',
    ],
    [
      'Report it by phone from beside it, so that you can hold the others back.',
      'You would stand in the vapour, and a phone may make the spark. Leave first, and call from outside.',
    ],
    [
      'Let those who have gloves soak it up with sawdust, and shut that in a bin.',
      'Sawdust soaked with spirit burns well, and they would stand in the vapour to sweep it.',
    ],
  ],
  before,
});
