// Hot cleaning liquor splashes.
import { choice } from '../../choice.ts';

export default choice({
  id: 'splashed-with-caustic',
  title: 'A splash of cleaning liquor',
  topic: 'safety',
  form: 'judgement',
  level: 1,
  sources: ['memory'],
  ask: (chance) => {
    const where = chance.pick(['the eye', 'the face', 'a bare forearm', 'the neck, under the collar']);
    const what = chance.pick([
      'caustic cleaning liquor',
      'hot caustic from the cleaning tank',
      'strong caustic that was being measured out',
    ]);
    const place = chance.pick([
      'beside the washbacks',
      'at the cleaning tank',
      'under the wash still',
      'in the chemicals store',
    ]);
    return {
      prompt: `A colleague is splashed with ${what} ${place}. It has hit ${where}. What comes first?`,
      right: {
        text: 'Rinse at once with much clean running water, and have somebody call for help.',
        why: 'Heat and caustic both go on working until they are rinsed away. How long, and what then, is said by the site’s first-aid rules and the sheet of the chemical.',
      },
      others: [
        {
          text: 'Neutralise it with some vinegar or weak acid.',
          why: 'Acid on caustic makes heat and a second burn, and looking for it loses time. Water comes first.',
        },
        {
          text: 'Wipe it off with a dry cloth and see whether it reddens.',
          why: 'Wiping spreads it, and caustic burns before it shows.',
        },
        {
          text: 'Put ointment on it and wrap it up.',
          why: 'That keeps the caustic and the heat in.',
        },
        {
          text: 'Walk with them to the office to enter it in the accident book.',
          why: 'It has to be entered, but afterwards. Rinse at once.',
        },
        {
          text: 'Look up the chemical’s data sheet first.',
          why: 'Someone else can fetch it. The water cannot wait.',
        },
      ],
      bothWays: {
        would: [
          {
            text: 'Rinse it at once with much clean running water.',
            why: 'Heat and caustic both go on working until they are rinsed away.',
          },
          {
            text: 'Have somebody call for help while you go on with the water.',
            why: 'How long, and what then, is said by the site’s first-aid rules.',
          },
          {
            text: 'Get them to the nearest shower or eye bath.',
            why: 'Clean running water is nearest there, as your site has laid it out.',
          },
          {
            text: 'Send someone for the data sheet, and do not wait for it.',
            why: 'The sheet is wanted, and the water does not stop for it.',
          },
        ],
      },
    };
  },
});
