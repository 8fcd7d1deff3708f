// A visitor wants a picture where a sign says no telephones.
import { choice } from '../../choice.ts';
import { judging, type JudgedOption } from '../../judged.ts';

const would: readonly JudgedOption[] = [
  [
    'In the yard you may, with the light so good, and in here it rests in the box.',
    'It says where a picture may be taken, and keeps out of the zone what is not made for it.',
  ],
  [
    'Please leave it in the box, as it may set vapour alight on any day of the year.',
    'The reason is true and takes one breath.',
  ],
  [
    'Not with that one, but I can ask whether there is a camera fit for this room.',
    'Whether one is lent, the site’s own assessment says.',
  ],
  [
    'Mine lies in the box as well, and it does no harm to have a look without it.',
    'A rule that holds for the guide too is soon believed.',
  ],
  [
    'Through the window you may, from the yard, as the sign does not go that far.',
    'Outside the marked zone a telephone does no harm.',
  ],
];

const wouldNot: readonly JudgedOption[] = [
  [
    'Turn its flash off first: it is the flash that may light the vapour in a room.',
    'The telephone itself is not made for the zone, flash or none.',
  ],
  [
    'Wait until the spirit has stopped, and I can take you back in for it.',
    'Vapour may stay in a room after a run, and the sign holds at all hours.',
  ],
  [
    'Not as it is: put it into flight mode, and it sends out nothing in here.',
    'It is the battery and the switch, and not only the call. Flight mode makes no telephone fit for a zone.',
  ],
  [
    'Not far in, but you may stay by the door with it if nothing can be smelt there.',
    'The nose is no gas meter, and the sign is for the whole room.',
  ],
  [
    'Leave yours in the box, please, and I will take one for you with mine.',
    'The guide’s telephone is no better than the visitor’s.',
  ],
];

const kind = choice({
  id: 'a-phone-among-the-stills',
  title: 'A telephone among the stills',
  topic: 'visitors',
  form: 'judgement',
  level: 1,
  sources: ['niosh-ethanol', 'memory'],
  ask: (chance) => {
    const where = chance.pick([
      'the still house',
      'the filling store',
      'the spirit store',
      'the room of the spirit safe',
    ]);
    const who = chance.pick([
      'A visitor',
      'The youngest of the group',
      'A man who writes about spirits',
      'A couple on their wedding trip',
    ]);
    return judging(
      `At the door of ${where} a sign shows a telephone crossed out, and below it hangs a box. ${who} asks you for one picture inside. What do you say?`,
      would,
      wouldNot,
    );
  },
});

export default { ...kind, since: 7 };
