// What sheets of generators before 7 show for “After the tasting”.
import type { Before } from '../../../judged.ts';

export default {
  right: [
    'See to it that someone else does it, and tell whoever is in charge.',
    'No plant is run and nothing is driven after tasting. How one feels does not measure it; your site’s rules and your local law set the limits.',
  ],
  others: [
    [
      'Let them go, after a strong coffee and some water.',
      'Neither takes alcohol out of the body. Only time does.',
    ],
    [
      'Reckon up the units, and let them go if they are below the weekly 14.',
      'That is a guideline for a week’s health, and says nothing about driving or running plant.',
    ],
    [
      'Let them go if they can walk a straight line.',
      'Judgement suffers before the walk does. The rule is none at all before running plant.',
    ],
    [
      'Go along and watch that nothing happens.',
      'A watcher does not take over the wheel or the valve in time.',
    ],
    [
      'Say nothing; it is their own affair.',
      'It is everybody’s who stands near. And a worry about drink is better raised early and kindly.',
    ],
  ],
  would: [
    [
      'See to it that somebody else takes over that job.',
      'No plant is run and nothing is driven after tasting. How one feels does not measure it.',
    ],
    [
      'Tell whoever is in charge, kindly and before they begin.',
      'Your site’s rules and your local law set the limits, and those in charge see to it.',
    ],
    [
      'Put it off until someone can do it who has drunk nothing, even if that takes an hour.',
      'A late job is the smaller trouble.',
    ],
    ['Offer them a lift home and a chair.', 'That is kind, and keeps them from wheel and valve.'],
  ],
} satisfies Before;
