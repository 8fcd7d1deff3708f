// A vessel to enter, and no permit.
import { choice } from '../../choice.ts';

export default choice({
  id: 'no-permit-yet',
  title: 'Before the permit',
  topic: 'safety',
  form: 'judgement',
  level: 2,
  sources: ['hse-co2', 'memory'],
  ask: (chance) => {
    const vessel = chance.pick([
      'the mash tun',
      'a washback',
      'the spirit still',
      'a malt bin',
      'the hot liquor tank',
    ]);
    const job = chance.pick([
      'free a blocked outlet',
      'fetch a dropped spanner',
      'scrape off a corner',
      'look at a crack',
    ]);
    const minutes = chance.pick([2, 3, 5, 10]);
    const who = chance.pick([
      'The foreman',
      'An older colleague',
      'The fitter',
      'The man from the contractor',
    ]);
    return {
      prompt: `${who} asks you to climb into ${vessel} and ${job}. “It takes ${minutes} minutes, the permit is being written.” What do you do?`,
      right: {
        text: 'Stay outside until the permit is given and all that it asks for is done.',
        why: 'Not even the head goes in before. Feeds, drives and heat are locked off, the air is tested, and someone trained stays outside. How the permit is given, and by whom, is your site’s and your local code’s to say.',
      },
      others: [
        {
          text: 'Go in, since the permit is as good as written and the job is short.',
          why: 'What it asks for, locking off and testing the air, has not been done yet. The paper is not the point; those steps are.',
        },
        {
          text: 'Put only head and arms in and do it from the manhole.',
          why: 'The head in the vessel is an entry. What the air does to you does not ask where your feet stand.',
        },
        {
          text: 'Go in, but leave your radio on and call out every minute.',
          why: 'A call that stops does not bring you out. The air is tested before, and not by you.',
        },
        {
          text: 'Go in, since the vessel was entered yesterday and nothing happened.',
          why: 'The air and the locks of today are not those of yesterday. Each entry has its own permit.',
        },
        {
          text: 'Let the colleague go in, and watch from above.',
          why: 'Neither of you has a permit. Nobody goes in until it is given.',
        },
      ],
      bothWays: {
        would: [
          {
            text: 'Stay outside, head and arms too, until the permit is given.',
            why: 'Not even the head goes in before.',
          },
          {
            text: 'Wait until feeds, drives and heat are locked off and the air is tested.',
            why: 'Those steps are what the permit is for. Your site’s and your local code’s procedure says who does them.',
          },
          {
            text: 'Say no to it, whoever asks and however long it takes.',
            why: 'Two minutes are long enough to be overcome in.',
          },
          {
            text: 'Go and see how far the permit has got, and let the job rest.',
            why: 'Whoever gives it knows what is still to be done.',
          },
        ],
      },
    };
  },
});
