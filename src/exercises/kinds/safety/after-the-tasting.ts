// Drink at work, and what follows.
import { choice } from '../../choice.ts';

export default choice({
  id: 'after-the-tasting',
  title: 'After the tasting',
  topic: 'safety',
  form: 'judgement',
  level: 1,
  sources: ['cmo-drink', 'common-practice'],
  ask: (chance) => {
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
    return {
      prompt: `${who} has drunk ${samples} small samples of cask-strength spirit this morning and now ${what}. ${feels} What do you do?`,
      right: {
        text: 'See to it that someone else does it, and tell whoever is in charge.',
        why: 'No plant is run and nothing is driven after tasting. How one feels does not measure it; your site’s rules and your local law set the limits.',
      },
      others: [
        {
          text: 'Let them go, after a strong coffee and some water.',
          why: 'Neither takes alcohol out of the body. Only time does.',
        },
        {
          text: 'Reckon up the units, and let them go if they are below the weekly 14.',
          why: 'That is a guideline for a week’s health, and says nothing about driving or running plant.',
        },
        {
          text: 'Let them go if they can walk a straight line.',
          why: 'Judgement suffers before the walk does. The rule is none at all before running plant.',
        },
        {
          text: 'Go along and watch that nothing happens.',
          why: 'A watcher does not take over the wheel or the valve in time.',
        },
        {
          text: 'Say nothing; it is their own affair.',
          why: 'It is everybody’s who stands near. And a worry about drink is better raised early and kindly.',
        },
      ],
      bothWays: {
        would: [
          {
            text: 'See to it that somebody else takes over that job.',
            why: 'No plant is run and nothing is driven after tasting. How one feels does not measure it.',
          },
          {
            text: 'Tell whoever is in charge, kindly and before they begin.',
            why: 'Your site’s rules and your local law set the limits, and those in charge see to it.',
          },
          {
            text: 'Put it off until someone can do it who has drunk nothing, even if that takes an hour.',
            why: 'A late job is the smaller trouble.',
          },
          {
            text: 'Offer them a lift home and a chair.',
            why: 'That is kind, and keeps them from wheel and valve.',
          },
        ],
      },
    };
  },
});
