// Someone lies at the bottom of a vessel.
import { choice } from '../../choice.ts';

export default choice({
  id: 'collapsed-in-a-tun',
  title: 'Someone is down in a vessel',
  topic: 'safety',
  form: 'judgement',
  level: 1,
  sources: ['hse-co2', 'common-practice'],
  ask: (chance) => {
    const vessel = chance.pick([
      'an empty washback',
      'a washback that was drained this morning',
      'the mash tun',
      'a steep',
      'a grain bin',
      'an emptied low wines receiver',
    ]);
    const time = chance.pick([
      'at ten past six in the morning',
      'at half past two at night',
      'shortly before noon',
      'at twenty to five',
    ]);
    const near = chance.pick([
      'A ladder stands beside you.',
      'A second colleague is running for a rope.',
      'You think you can reach an arm if you lean in.',
      'The manhole is wide, and the bottom is only two metres down.',
    ]);
    return {
      prompt: `${time[0]!.toUpperCase()}${time.slice(1)} you find a colleague lying at the bottom of ${vessel}. There is no answer when you shout. ${near} What do you do?`,
      right: {
        text: 'Stay outside, raise the alarm, and say that the air in there may be bad.',
        why: 'You cannot help if you fall too. Rescuers trained and equipped for it, with air of their own, go in; your site’s procedure says how they are called.',
      },
      others: [
        {
          text: 'Climb down at once, hold your breath and bring them out into the open air.',
          why: 'Whoever follows without air of their own becomes the second casualty. Lifting somebody takes more than one breath.',
        },
        {
          text: 'Tie a rope round your waist, have a second colleague hold it, and climb down.',
          why: 'A rope does not give you air. Two untrained people then have to be pulled out instead of one.',
        },
        {
          text: 'Stay on the rim, lean in as far as you can and try to catch hold of them.',
          why: 'The bad air may reach to the rim. Heads do not belong in there either.',
        },
        {
          text: 'Fetch the gas meter from the workshop first, so that you can tell what is wrong.',
          why: 'Every minute counts. The alarm comes first, and no reading would allow you to go in.',
        },
        {
          text: 'Hold a burning match over the opening to see whether there is air.',
          why: 'A flame says nothing of carbon dioxide in amounts that harm, and where there is vapour or dust it may kill you both.',
        },
        {
          text: 'Pour water over them to wake them, and wait a moment to see.',
          why: 'That loses time, and they would wake in the same air. Raise the alarm.',
        },
      ],
      bothWays: {
        would: [
          {
            text: 'Stay outside, raise the alarm, and say that the air in there may be bad.',
            why: 'You cannot help if you fall too. Rescuers trained and equipped for it go in.',
          },
          {
            text: 'Keep everybody else away from the opening too, until the rescuers are here with their gear.',
            why: 'Those who want to help are the next to fall.',
          },
          {
            text: 'Call those who are trained to go in and bring air of their own along.',
            why: 'Your site’s procedure says how they are called.',
          },
          {
            text: 'Tell the rescuers when you found them and what the vessel held before.',
            why: 'It tells them what the air may be.',
          },
        ],
      },
    };
  },
});
