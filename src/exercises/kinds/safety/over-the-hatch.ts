// Someone bends over the open hatch of a washback.
import { choice } from '../../choice.ts';

export default choice({
  id: 'over-the-hatch',
  title: 'Bending over the hatch',
  topic: 'safety',
  form: 'judgement',
  level: 1,
  sources: ['hse-co2', 'ivhhn-co2', 'niosh-idlh-co2'],
  ask: (chance) => {
    const who = chance.pick(['a visitor', 'a new colleague', 'a photographer', 'the student on your tour']);
    const hours = chance.pick([12, 18, 20, 24, 30, 36]);
    const why = chance.pick([
      'to smell the wash',
      'to see the froth',
      'to fetch a pen that fell in',
      'to listen to it',
    ]);
    return {
      prompt: `A washback has been working for ${hours} hours. While you talk to the others, ${who} climbs its step and bends over the open hatch ${why}. What do you do?`,
      right: {
        text: 'Call them back at once, lead everyone away, then close the hatch.',
        why: 'Above the wash may lie nearly pure carbon dioxide, which fells a person in a breath. If they are dizzy: fresh air, and help as your site lays down. Then report it.',
      },
      others: [
        {
          text: 'Let them have one quick sniff, and hold their jacket.',
          why: 'One breath can be enough: at 25 % carbon dioxide in air a person drops almost at once.',
        },
        {
          text: 'Ask them to hold their nose, to be quick, and only to look.',
          why: 'They would still breathe what lies over the wash. The head does not belong there.',
        },
        {
          text: 'Go up beside them and show how to fan the gas towards the nose by hand.',
          why: 'Then two heads are over the hatch. Offer the smell in a glass, well away from it.',
        },
        {
          text: 'Nothing, for a little carbon dioxide is in every fizzy drink too.',
          why: 'In air it poisons. At 7 to 10 % people pass out within a few minutes and may die, and at 25 % almost at once.',
        },
        {
          text: 'Finish your sentence, then explain the danger to the whole group.',
          why: 'The explanation can wait and the person cannot. Stop first, explain later.',
        },
      ],
      bothWays: {
        would: [
          {
            text: 'Call them back at once, and lead the whole group away from the washback.',
            why: 'Above the wash may lie nearly pure carbon dioxide, which fells a person in a breath.',
          },
          {
            text: 'Have the hatch closed, and let them smell it in a glass, well away.',
            why: 'The smell can be had without the gas.',
          },
          {
            text: 'Break off in mid-sentence; what the danger is can be explained later.',
            why: 'The explanation can wait and the person cannot.',
          },
          {
            text: 'Report it afterwards, and keep the step roped off.',
            why: 'What happened once on a tour happens again.',
          },
        ],
      },
    };
  },
});
