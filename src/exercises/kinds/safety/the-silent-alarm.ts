// An oxygen alarm that says nothing of carbon dioxide.
import { judged } from '../../judged.ts';
import before from './before/the-silent-alarm.ts';

export default judged({
  id: 'the-silent-alarm',
  title: 'The alarm is silent',
  topic: 'safety',
  level: 2,
  sources: ['hse-co2', 'niosh-co2', 'memory'],
  scene: (chance) => {
    const place = chance.pick([
      'the cellar under the washbacks',
      'the drain pit behind the tun room',
      'the low passage beside the washbacks',
      'the pump pit below the tun room',
    ]);
    const reading = chance.pick(['20.4', '20.2', '20.1', '19.9']);
    const need = chance.pick(['read a meter', 'shut a valve', 'fetch a hose', 'look for a leak']);
    return `You have to ${need} in ${place}. The oxygen meter at the door shows ${reading} % and is silent; there is no carbon dioxide meter at hand. What do you do?`;
  },
  would: [
    [
      'Ask for the permit first, and then have carbon dioxide itself read there.',
      'Carbon dioxide harms before oxygen is low: with 5 % of it, air still holds 19.9 %.',
    ],
    [
      'Have the right meter brought, and let the job wait until it is.',
      'Only a meter for carbon dioxide measures the gas that harms here.',
    ],
    [
      'Go back from the door into fresh air, and look for a meter that shows carbon dioxide.',
      'An oxygen alarm set at 19.5 % stays silent in air that is already harmful. At the door 20.4 % may mean over 2 % of carbon dioxide, and 19.9 % some 5 %.',
    ],
    [
      'Tell the others that this meter does not show the gas that harms.',
      'They would trust its silence as you might have.',
    ],
    [
      'Say no to going in, however short the job is.',
      'A few breaths are enough. The site’s procedure says what is measured, by whom, and who goes in.',
    ],
  ],
  wouldNot: [
    [
      'Have the oxygen meter on as you go in, and leave if it sounds.',
      'It may sound too late or never. It does not measure the gas that harms you here.',
    ],
    [
      'Have a trained colleague watch from the door, and call out to you.',
      'A watcher does not make the air fit to breathe, and may stand in 2 to 5 % of carbon dioxide at the door already. It is measured first, and the permit says the rest.',
    ],
    [
      'Keep the door open for an hour, even if it is cold, and then go in.',
      'The gas is heavier than air and stays in low places. Only a measurement, by the site’s rules, can tell.',
    ],
    [
      'Wear a dust mask that fits, and come back out as soon as you can.',
      'A dust mask holds back dust. Gas goes straight through it.',
    ],
    [
      'Let a flame down there first, so that you can see what the air is.',
      'A flame says nothing of carbon dioxide in amounts that harm, and where there is vapour it may kill you.',
    ],
  ],
  before,
});
