// The smell of spirit at a warm condenser.
import { choice } from '../../choice.ts';

export default choice({
  id: 'spirit-in-the-air',
  title: 'Spirit can be smelt',
  topic: 'safety',
  form: 'judgement',
  level: 1,
  sources: ['niosh-ethanol', 'common-practice'],
  ask: (chance) => {
    const place = chance.pick([
      'near the spirit safe',
      'beside the low wines receiver',
      'under the condenser of the spirit still',
      'by the feints receiver',
    ]);
    const sign = chance.pick([
      'the condenser’s outlet pipe feels warm',
      'the cooling water has dwindled to a trickle',
      'the spirit in the safe runs warm',
      'the cooling water gauge stands at nothing',
    ]);
    const when = chance.pick([
      'In the middle of the heart run',
      'Half an hour into the feints',
      'Shortly after the foreshots',
      'At the start of the night shift',
    ]);
    return {
      prompt: `${when} you smell spirit ${place}, and ${sign}. What do you do first?`,
      right: {
        text: 'Stop the heat by the site’s procedure, keep people and sparks away, raise the alarm.',
        why: 'Vapour is escaping or soon will be, and it burns in air from about 3.3 %. Somebody in charge finds the cause before the still is started again.',
      },
      others: [
        {
          text: 'Finish what is running first, so that the spirit of this cut is not spoilt.',
          why: 'Each minute more brings more vapour. No cut is worth a fire.',
        },
        {
          text: 'Switch on the extra fan by its ordinary switch beside the receiver.',
          why: 'A switch may make a spark, and the cloud is just there. Nothing electrical is switched in it.',
        },
        {
          text: 'Climb up and feel with the hand where the vapour comes out.',
          why: 'You would stand in hot vapour that can burn you and catch fire.',
        },
        {
          text: 'Turn the cooling water up fully and wait to see whether the smell goes.',
          why: 'The heat goes on making vapour meanwhile. Stop the heat first; the water is looked into from a safe place.',
        },
        {
          text: 'Open the safe a little, to see and feel how the spirit runs.',
          why: 'The safe is locked by law for good reason, and an opening lets out more vapour.',
        },
        {
          text: 'Note it in the book, so that the next shift looks into it.',
          why: 'It is a danger now. Stop the heat and raise the alarm.',
        },
      ],
      bothWays: {
        would: [
          {
            text: 'Stop the heat by the procedure, and let the cut be spoilt if it must be.',
            why: 'Vapour is escaping or soon will be, and it burns in air from about 3.3 %.',
          },
          {
            text: 'Send everybody out, and keep whatever may spark away from there.',
            why: 'Where vapour is, one spark is enough.',
          },
          {
            text: 'Raise the alarm from a place where nothing smells of spirit.',
            why: 'A telephone or a switch may make the spark in the cloud.',
          },
          {
            text: 'Leave the still cold until someone in charge has found out what is wrong.',
            why: 'A cause that was not found comes again with the next charge.',
          },
        ],
      },
    };
  },
});
