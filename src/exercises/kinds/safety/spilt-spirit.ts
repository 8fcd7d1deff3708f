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
      'Let it run until it can be shut off without a step into it.',
      'Less spirit makes less vapour; nobody walks into it for that.',
    ],
    [
      'Hold back lamps, phones and motors, so that nothing can spark beside it.',
      'Where vapour is, one spark is enough.',
    ],
    [
      'Block the drain with what lies ready for it, and wait outside.',
      'Vapour and spirit travel along a drain, and the river is at its end.',
    ],
    [
      'Wait until those who are trained have cleared it, even if it is a small one.',
      'Who clears it, how, and where it goes, is laid down by the site.',
    ],
  ],
  wouldNot: [
    [
      'Switch the lights off first, and then get everybody out.',
      'A switch may make the spark just then. Nothing electrical is switched in the cloud.',
    ],
    [
      'Rinse it down the drain with much water, and report it.',
      'Never into an open drain: vapour and spirit travel along it, and the river is at its end.',
    ],
    [
      'Have a trained colleague take it up with the floor machine.',
      'Its motor may make the spark, whoever drives it.',
    ],
    [
      'Report it by phone from beside it, so that you can hold the others back.',
      'You would stand in the vapour, and a phone may make the spark. Leave first, and call from outside.',
    ],
    [
      'Cover it with sawdust, and keep that in a closed bin.',
      'Sawdust soaked with spirit burns well, and you stand in the vapour to sweep it.',
    ],
    [
      'Work on with the doors open for an hour, so that it can dry.',
      'While it dries it fills the room with vapour, and nobody has been warned.',
    ],
  ],
  before,
});
