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
      'Look for a tool that is made for such a zone, and have that one used.',
      'Gear that is made for the place is what the site’s assessment asks for, with a permit where it says so.',
    ],
    [
      'Step in before it is switched on, with a hand up and a loud stop.',
      'A spark needs a moment only. Good manners can be mended afterwards.',
    ],
    [
      'Have the job wait until those in charge have given a permit for it.',
      'Work that may spark needs leave, given as your site’s procedure says.',
    ],
  ],
  wouldNot: [
    [
      'Call those in charge, and let the job begin while you wait for their word.',
      'Their word has to come first: the spark may come sooner.',
    ],
    [
      'Let it be used, unless a trained colleague can smell spirit there.',
      'The nose grows used to spirit and measures nothing.',
    ],
    [
      'Have a trained colleague stand by with foam until the job is done.',
      'A flash of vapour is over before anyone moves. The spark is what must not be.',
    ],
    [
      'Keep it above your head, even if that is hard, since the vapour lies low.',
      'Warm vapour rises first, so no height is safe. The zone is drawn by the site’s assessment.',
    ],
    [
      'Look for gloves and goggles, so that the job can be done in them.',
      'They keep no spark from the vapour, and would not save anyone in a flash.',
    ],
    [
      'Look it over for damage, and let it be used if it is sound.',
      'Sound gear of the ordinary kind sparks too. Only what is made for the zone may be used in it.',
    ],
  ],
  before,
});
