// An oxygen alarm that says nothing of carbon dioxide.
import { choice } from '../../choice.ts';

export default choice({
  id: 'the-silent-alarm',
  title: 'The alarm is silent',
  topic: 'safety',
  form: 'judgement',
  level: 2,
  sources: ['hse-co2', 'niosh-co2', 'memory'],
  ask: (chance) => {
    const place = chance.pick([
      'the cellar under the washbacks',
      'the drain pit behind the tun room',
      'the low passage beside the washbacks',
      'the pump pit below the tun room',
    ]);
    const reading = chance.pick(['20.4', '20.2', '20.1', '19.9']);
    const need = chance.pick(['read a meter', 'shut a valve', 'fetch a hose', 'look for a leak']);
    return {
      prompt: `You have to ${need} in ${place}. The oxygen meter at the door shows ${reading} % and is silent; there is no carbon dioxide meter at hand. What do you do?`,
      right: {
        text: 'Stay out until carbon dioxide itself has been measured by the site’s procedure.',
        why: 'Air with 5 % carbon dioxide still holds 19.9 % oxygen, so an oxygen alarm set at 19.5 can stay silent in air that is already harmful.',
      },
      others: [
        {
          text: 'Go in: the alarm is set at 19.5 %, and the reading is above it.',
          why: 'Carbon dioxide poisons long before it has crowded out enough oxygen to set off that alarm.',
        },
        {
          text: 'Go in with the oxygen meter on your belt and come out when it sounds.',
          why: 'It may sound too late or never. It does not measure the gas that harms you here.',
        },
        {
          text: 'Go in quickly and breathe through a dust mask.',
          why: 'A dust mask holds back dust. Gas goes straight through it.',
        },
        {
          text: 'Open the door for five minutes, and then go in.',
          why: 'The gas is heavier than air and stays in low places. Only a measurement, by the site’s rules, can tell.',
        },
        {
          text: 'Go in while a colleague watches you from the door.',
          why: 'A watcher does not make the air fit to breathe. The air is measured first, and the permit says the rest.',
        },
      ],
      bothWays: {
        would: [
          {
            text: 'Stay out until carbon dioxide itself has been measured there.',
            why: 'Air with 5 % carbon dioxide still holds 19.9 % oxygen, so an oxygen alarm set at 19.5 can stay silent.',
          },
          {
            text: 'Ask for the permit, as for any place with bad air.',
            why: 'The site’s procedure says what is measured, and by whom.',
          },
          {
            text: 'Have the right meter brought, and let the job wait for it.',
            why: 'Only that meter measures the gas that harms here.',
          },
          {
            text: 'Warn the others that its silence says nothing.',
            why: 'They would trust it as you might have.',
          },
        ],
      },
    };
  },
});
