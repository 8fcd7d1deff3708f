// A closed still that cools.
import { judged } from '../../judged.ts';
import before from './before/closed-while-it-cools.ts';

export default judged({
  id: 'closed-while-it-cools',
  title: 'A still that cools',
  topic: 'safety',
  level: 2,
  sources: ['common-practice'],
  scene: (chance) => {
    const still = chance.pick(['the wash still', 'the spirit still', 'the low wines still']);
    const sign = chance.pick([
      'the vacuum valve has stuck',
      'the air valve was forgotten',
      'the man-door was shut too early',
      'nobody opened the vent',
    ]);
    const since = chance.pick([5, 10, 15, 20]);
    const extra = chance.pick([
      'Its side has begun to creak.',
      'The pressure gauge has gone below nothing.',
      'Cold water is about to be let in.',
      'A colleague wants to rinse it with cold water.',
    ]);
    return `The run is over and the heat has been off for ${since} minutes. You see that ${sign}, so that ${still} is closed while it cools. ${extra} What do you do?`;
  },
  would: [
    [
      'Hold everyone back, so that no one is beside it if it folds.',
      'Steam that turns to water leaves a vacuum, and the still may fold in without warning.',
    ],
    [
      'Stop any cold water to it, even if it was ordered.',
      'Cooling turns still more steam to water and deepens the vacuum.',
    ],
    [
      'Let nobody open anything until it can be done as the procedure says.',
      'How air is let in without harm is laid down for this still, and by nobody’s guess.',
    ],
    [
      'Report it from well away, so that those who are trained can decide.',
      'Whoever climbs to the valve stands on a still that may fold in at that moment.',
    ],
    [
      'Have a fitter look for dents, once it is safe, before any heat is on.',
      'What has been under vacuum may have lost its shape, and a valve that stuck once sticks again.',
    ],
  ],
  wouldNot: [
    [
      'Keep everyone well back, and free the valve yourself with a light tap.',
      'You would stand on or beside a still that may fold in at that moment.',
    ],
    [
      'Stop the strain by cooling it slowly, with a gentle spray.',
      'Cooling deepens the vacuum, however evenly it is done.',
    ],
    [
      'Call those in charge, and let it empty by the discharge until they are there.',
      'A closed still that empties draws a deeper vacuum and folds up.',
    ],
    [
      'Let air in by the man-door, even if it is only a little at a time.',
      'Air would rush in with great force at a hot opening, and nobody can hold that door.',
    ],
    [
      'Leave it shut, even if it creaks, and stay beside it until all is cold.',
      'Each degree deepens the vacuum, and the copper folds when it can hold no more.',
    ],
  ],
  before,
});
