// Working alone.
import { choice } from '../../choice.ts';

export default choice({
  id: 'alone-at-night',
  title: 'Alone in the house',
  topic: 'safety',
  form: 'judgement',
  level: 1,
  sources: ['common-practice'],
  ask: (chance) => {
    const job = chance.pick([
      'clear a blocked drain below the washbacks',
      'climb on to the still to look at the vacuum valve',
      'pump spirit into the vat',
      'clean the malt bin’s mouth',
    ]);
    const hour = chance.pick(['22:40', '1:15', '3:30', '5:05']);
    const who = chance.pick([
      'Your partner has gone home ill',
      'The second man is an hour late',
      'Your colleague was called to the other building',
      'The night watch does not answer',
    ]);
    const reach = chance.pick([
      'The telephone works.',
      'You have a radio.',
      'Your phone has no signal here.',
    ]);
    return {
      prompt: `It is ${hour}. ${who}, and you are alone. You were to ${job}. ${reach} What do you do?`,
      right: {
        text: 'Leave that job, report that you are alone, and keep to what one may do alone.',
        why: 'Which work needs two is laid down by the site. If something happens to you, nobody would know, and nobody would raise the alarm.',
      },
      others: [
        {
          text: 'Do it, but call someone before and after.',
          why: 'If the second call does not come, help is late. The job waits for a second person.',
        },
        {
          text: 'Do it quickly while everything is quiet.',
          why: 'Haste and nobody near are the two worst companions.',
        },
        {
          text: 'Do it with the door open so that somebody might hear you.',
          why: 'There is nobody to hear you. “Might” is no procedure.',
        },
        {
          text: 'Ask a visitor from the guest house to stand by.',
          why: 'Someone untrained does not know what to look for and may follow you into danger.',
        },
        {
          text: 'Do half of it now and half when the other one comes.',
          why: 'The dangerous half does not wait until there are two.',
        },
      ],
      bothWays: {
        would: [
          {
            text: 'Leave that job, and report that you are alone.',
            why: 'Which work needs two is laid down by the site. If something happens to you, nobody would know.',
          },
          {
            text: 'Keep to what the site lets one person do at night.',
            why: 'Which work that is, the site’s procedure says.',
          },
          {
            text: 'Wait with it until a second trained person has come to help.',
            why: 'Two are asked for because one of them may have to raise the alarm.',
          },
          {
            text: 'Hand it over to the next shift, and note why.',
            why: 'A job left with a note is found; one begun alone may not be.',
          },
        ],
      },
    };
  },
});
