// Something that may make a spark where spirit is.
import { choice } from '../../choice.ts';

export default choice({
  id: 'a-spark-at-the-receiver',
  title: 'A spark near spirit',
  topic: 'safety',
  form: 'judgement',
  level: 1,
  sources: ['niosh-ethanol', 'memory'],
  ask: (chance) => {
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
    return {
      prompt: `${who} is about to use ${thing} ${place}. The spirit there is at ${strength} % vol. What do you do?`,
      right: {
        text: 'Stop it, have it taken away, and ask those in charge what may be used there.',
        why: 'Spirit over 40 % vol may give off vapour that burns at room temperature. Which gear is allowed where, and with which permit, is settled by your site’s assessment and local code.',
      },
      others: [
        {
          text: 'Let it be used as long as all windows and doors are open.',
          why: 'An open window is no measurement and no assessment. Sparks are kept away.',
        },
        {
          text: 'Let it be used quickly, with a fire extinguisher at hand.',
          why: 'A flash of vapour is over before anyone reaches for the extinguisher. The spark is what must not be.',
        },
        {
          text: 'Allow it, since spirit can only be lit when it has been heated.',
          why: 'From 40 % vol it is to be treated as flammable at room temperature.',
        },
        {
          text: 'Allow it, but only a few steps further away.',
          why: 'How far the area reaches is settled by the site’s assessment and not by steps.',
        },
        {
          text: 'Sniff first, and allow it if you smell nothing.',
          why: 'The nose grows used to spirit and measures nothing.',
        },
        {
          text: 'Wet the floor round it and let them go on.',
          why: 'Wet floors do not keep vapour from a spark.',
        },
      ],
      bothWays: {
        would: [
          {
            text: 'Stop it, and have the thing taken out of the spirit area.',
            why: 'Spirit over 40 % vol may give off vapour that burns at room temperature, and sparks are kept away from it.',
          },
          {
            text: 'Ask those in charge for a tool that is made for such a place.',
            why: 'Which gear is allowed where is settled by your site’s assessment and local code.',
          },
          {
            text: 'Let it wait until a permit for this work has been given.',
            why: 'Work that may spark needs leave, given as your site’s procedure says.',
          },
          {
            text: 'Have it done elsewhere, in a place without vapour.',
            why: 'Where that is, the site’s assessment says, and not the nose.',
          },
        ],
      },
    };
  },
});
