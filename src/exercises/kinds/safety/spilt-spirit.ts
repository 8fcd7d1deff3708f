// A spill of strong spirit.
import { choice } from '../../choice.ts';

export default choice({
  id: 'spilt-spirit',
  title: 'Spirit on the floor',
  topic: 'safety',
  form: 'judgement',
  level: 1,
  sources: ['niosh-ethanol', 'common-practice'],
  ask: (chance) => {
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
    return {
      prompt: `${cause}, and about ${litres} L of spirit at ${strength} % vol have run out ${place}. What do you do first?`,
      right: {
        text: 'Keep people and sparks away, raise the alarm, and follow the spill procedure.',
        why: 'At this strength it gives off vapour that can burn at room temperature. Who clears it, how, and where it goes, is laid down by the site.',
      },
      others: [
        {
          text: 'Hose it into the nearest drain with much water.',
          why: 'Never into an open drain: vapour and spirit travel along it, and the river is at its end.',
        },
        {
          text: 'Mop it up at once with the floor machine.',
          why: 'Its motor may make the spark.',
        },
        {
          text: 'Throw sawdust on it and sweep it up briskly.',
          why: 'Sawdust soaked with spirit burns well. Use what the procedure names, once the sparks are away.',
        },
        {
          text: 'Open all doors and go on with your work until it has dried.',
          why: 'While it dries it fills the room with vapour.',
        },
        {
          text: 'Switch the lights off by their ordinary switch to be safe.',
          why: 'A switch may make a spark just then. Nothing electrical is switched in the cloud.',
        },
        {
          text: 'Save what you can into a bucket, since duty is due on it.',
          why: 'The account comes later. You would stand in the vapour with an open bucket.',
        },
      ],
      bothWays: {
        would: [
          {
            text: 'Keep people and sparks away from it, and raise the alarm.',
            why: 'At this strength it gives off vapour that can burn at room temperature.',
          },
          {
            text: 'Stop what still runs out, if that can be done from outside.',
            why: 'Less spirit makes less vapour; nobody walks into it for that.',
          },
          {
            text: 'Keep it out of the drain with what is laid ready for that.',
            why: 'Vapour and spirit travel along a drain, and the river is at its end.',
          },
          {
            text: 'Let those clear it up whom the procedure names.',
            why: 'Who clears it, how, and where it goes, is laid down by the site.',
          },
        ],
      },
    };
  },
});
