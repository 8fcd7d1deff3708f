// Hot cleaning liquor splashes.
import { judged } from '../../judged.ts';
import before from './before/splashed-with-caustic.ts';

export default judged({
  id: 'splashed-with-caustic',
  title: 'A splash of cleaning liquor',
  topic: 'safety',
  level: 1,
  sources: ['cfr-29-1910-151', 'memory'],
  scene: (chance) => {
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
    return `A colleague is splashed with ${what} ${place}. It has hit ${where}. What comes first?`;
  },
  would: [
    [
      'Rinse it first with much water, and call out for help as you do.',
      'Heat and caustic both go on working until they are rinsed away.',
    ],
    [
      'Get them to the shower or the eye bath as soon as it has happened.',
      'Clean running water is nearest there. What is soaked comes off under the water.',
    ],
    [
      'Keep the water on for twenty minutes or more, even if the pain stops.',
      'Twenty minutes is the least, and then medical help takes over. Caustic works on where nothing is felt.',
    ],
    [
      'Send a colleague for the data sheet, and go on with the water.',
      'The sheet is wanted, and the water does not stop for it.',
    ],
    [
      'Have what is soaked off under the water, even if it is a good coat.',
      'Soaked cloth holds the caustic on the skin. It is cut off and not pulled over the head, and the water runs all the while.',
    ],
  ],
  wouldNot: [
    [
      'Call the first-aider first, and let nobody touch it until then.',
      'Every second counts. The water comes first, and the first-aider takes over there.',
    ],
    [
      'Get it off with a dry cloth, so that the water does not spread it.',
      'Wiping spreads it, and caustic burns before it shows. Only dry powder is brushed off first.',
    ],
    [
      'Keep the water on until the pain stops, and then report it.',
      'Pain is no measure: caustic burns where nothing is felt. The water runs for twenty minutes at least.',
    ],
    [
      'Look for the data sheet first, so that nothing is done wrong.',
      'Someone else can fetch it. The water cannot wait.',
    ],
    [
      'Have it rinsed with a weak acid, even if it is only vinegar, and then with water.',
      'Acid on caustic makes heat and a second burn, and looking for it loses time.',
    ],
    [
      'Keep the air off it with ointment, and have it looked at by a doctor.',
      'That keeps the caustic and the heat in. Water comes first.',
    ],
  ],
  before,
});
