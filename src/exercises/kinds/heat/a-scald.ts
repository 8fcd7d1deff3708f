// The first half hour after a scald.
import { choice } from '../../choice.ts';
import { judging, type JudgedOption } from '../../judged.ts';

const would: readonly JudgedOption[] = [
  [
    'Get them to a tap, and keep it running over the burn for twenty minutes.',
    'Cool running water for twenty minutes is what stops the burn going deeper.',
  ],
  [
    'Take off what is wet or tight first, as far as nothing sticks.',
    'Wet cloth holds the heat against the skin, and what swells is caught in a strap or a boot.',
  ],
  [
    'Shout for the first-aider while you hold the burn under the tap.',
    'Cooling and calling go together: neither has to wait.',
  ],
  [
    'Let the water run on over it after the pain has gone.',
    'Pain goes long before the heat has left the skin. It takes twenty minutes.',
  ],
  [
    'Lay something clean on it loosely after it has been cooled, and get it seen.',
    'Cooled first, covered loosely, and seen by a doctor: that is the order.',
  ],
];

const wouldNot: readonly JudgedOption[] = [
  [
    'Get them some ice, and hold it on the burn for twenty minutes.',
    'Ice harms burnt skin. Cool running water is what is wanted.',
  ],
  [
    'Leave on what is wet or tight, and let the water run over it.',
    'Wet cloth holds the heat against the skin. Off with it, where it does not stick.',
  ],
  [
    'Put some cream on the burn while the first-aider is on the way.',
    'Cream keeps the heat in. Cool it under running water while you wait.',
  ],
  [
    'Stop the water after a minute or two, if the pain has gone.',
    'Pain goes long before the heat has left the skin. It takes twenty minutes.',
  ],
  [
    'Bind it up firmly in something clean first, and get it seen.',
    'Bound up hot it goes on burning. It is cooled for twenty minutes first.',
  ],
];

const kind = choice({
  id: 'a-scald',
  title: 'A scald',
  topic: 'heat',
  form: 'judgement',
  level: 1,
  sources: ['burn-first-aid', 'memory'],
  ask: (chance) => {
    const who = chance.pick([
      'a new colleague',
      'a colleague of your shift',
      'a fitter',
      'a student on placement',
    ]);
    const what = chance.pick([
      'A hose of mashing water at 80 °C slips and goes over the forearm of',
      'Pot ale from a drain valve splashes the hand of',
      'Spent lees run into the boot of',
      'Steam from a flange catches the wrist of',
    ]);
    return judging(`${what} ${who}. The valve is shut. What do you do?`, would, wouldNot);
  },
});

export default { ...kind, since: 7 };
