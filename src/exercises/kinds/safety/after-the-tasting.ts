// Drink at work, and what follows.
import { judged } from '../../judged.ts';
import before from './before/after-the-tasting.ts';

export default judged({
  id: 'after-the-tasting',
  title: 'After the tasting',
  topic: 'safety',
  level: 1,
  sources: ['cmo-drink', 'common-practice', 'memory'],
  scene: (chance) => {
    const samples = chance.pick([4, 5, 6, 8]);
    const what = chance.pick([
      'is to drive the visitors to the station',
      'has to start the spirit still',
      'is to drive the fork truck',
      'has to move casks in the store',
    ]);
    const who = chance.pick([
      'A colleague',
      'The blender’s assistant',
      'A new guide',
      'The warehouse foreman',
    ]);
    const feels = chance.pick([
      '“I feel nothing.”',
      '“They were only small ones.”',
      '“I had a good lunch.”',
      '“I am used to it.”',
    ]);
    return `${who} has drunk ${samples} small samples of cask-strength spirit this morning and now ${what}. ${feels} What do you do?`;
  },
  would: [
    [
      'Look for a trained colleague who has drunk nothing, and let them do it.',
      'No plant is run and nothing is driven after tasting.',
    ],
    [
      'Hold them back from it, and report it to whoever is in charge.',
      'Your site’s rules and your local law set the limits, and those in charge see to it.',
    ],
    ['Let the job wait until somebody is there who has had none.', 'A late job is the smaller trouble.'],
    [
      'Have them sit down with a coffee, and give the job to someone else.',
      'That is kind, and keeps them from wheel and valve.',
    ],
    [
      'Keep them from it for today, even if they walk and talk as ever.',
      'Judgement suffers before the walk does. How one feels does not measure drink.',
    ],
  ],
  wouldNot: [
    [
      'See that someone else goes along as they do it, and tell whoever is in charge.',
      'A watcher does not take over the wheel or the valve in time.',
    ],
    [
      'Have them walk along a line first, and hold them back if they stray.',
      'Judgement suffers before the walk does, so the walk proves nothing.',
    ],
    [
      'Add up the units, and let them begin if they are under the weekly fourteen.',
      'That is a guideline for a week’s health. It says nothing of driving or of running plant.',
    ],
    [
      'Leave the choice to them, and ask them to go slowly.',
      'They choose with the head that has drunk. How one feels does not measure it.',
    ],
    [
      'Let the job wait until they have had strong coffee and much water.',
      'Neither coffee nor water takes alcohol out of the body.',
    ],
  ],
  before,
});
