// Something that may make a spark where spirit is.
import { judged } from '../../judged.ts';
import before from './before/a-spark-at-the-receiver.ts';

export default judged({
  id: 'a-spark-at-the-receiver',
  title: 'A spark near spirit',
  topic: 'safety',
  level: 1,
  sources: ['niosh-ethanol', 'derived', 'memory'],
  scene: (chance) => {
    const place = chance.pick([
      'beside the open intermediate spirit receiver',
      'at the filling point',
      'next to the vat that is being filled',
      'in the cask store, beside a leaking butt',
    ]);
    const thing = chance.pick([
      'an ordinary electric drill',
      'a phone to take pictures with flash',
      'an ordinary extension lamp',
      'a battery grinder',
    ]);
    const who = chance.pick(['A contractor', 'A visitor', 'A new colleague', 'The electrician’s apprentice']);
    const strength = chance.pick([58, 63.5, 68, 70]);
    return `${who} is about to use ${thing} ${place}. The spirit there is at ${strength} % vol. What do you do?`;
  },
  would: [
    [
      'Have it carried out of the zone first, and then ask what may be used there.',
      'Sparks are kept away from vapour; which gear is allowed where is settled by your site’s assessment and local code.',
    ],
    [
      'Say no, even if it is only for a minute, until the assessment allows it.',
      'Spirit over 40 % vol may give off vapour that burns at room temperature. The site’s assessment says what may be used beside it.',
    ],
    [
      'Have it wait until a trained colleague has found a way that makes no spark.',
      'Another place, or gear that is made for the zone: the site’s assessment says which, with a permit where it asks for one.',
    ],
    [
      'Step in before it is switched on, with a hand up and a loud stop.',
      'A spark needs a moment only. Good manners can be mended afterwards.',
    ],
    [
      'Let the job wait until a permit has been given, even if it is a short one.',
      'Work that may spark needs leave, given as your site’s procedure says.',
    ],
  ],
  wouldNot: [
    [
      'Report it to whoever is in charge, and let the job go on until they are there.',
      'Their word has to come first: the spark may come sooner.',
    ],
    [
      'Have a colleague with a good nose say when the air is clear, and then let it be used.',
      'The nose grows used to spirit and measures nothing.',
    ],
    [
      'Have a trained colleague stand by with foam until the job is done.',
      'A flash of vapour is over before anyone moves. The spark is what must not be.',
    ],
    [
      'Say no unless gloves and goggles are worn, and let it go on if they are.',
      'They keep no spark from the vapour, and would not save anyone in a flash.',
    ],
    [
      'Stop it until it has been looked over, and then let it be used.',
      'Sound gear of the ordinary kind sparks too. Only what is made for the zone may be used in it.',
    ],
  ],
  before,
});
