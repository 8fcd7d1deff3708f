// Bonding a hose before spirit flows.
import { formatNumber as n } from '../../../core/format.ts';
import { choice } from '../../choice.ts';

export default choice({
  id: 'the-earth-wire',
  title: 'The earth wire',
  topic: 'safety',
  form: 'judgement',
  level: 2,
  sources: ['niosh-ethanol', 'common-practice'],
  ask: (chance) => {
    const [what, litres] = chance.pick([
      ['a road tanker', 12_000],
      ['a road tanker', 8000],
      ['a steel tank on a pallet', 1000],
      ['a steel drum', 200],
      ['an empty vat', 5000],
      ['an empty vat', 2400],
    ] as const);
    const why = chance.pick([
      'its clamp is broken',
      'nobody finds the cable',
      'the cable is too short',
      'it lies in the other building',
    ]);
    return {
      prompt: `You are to pump ${n(litres, 0)} L of new spirit into ${what}. The hose is ready, but the earthing cable cannot be put on: ${why}. What do you do?`,
      right: {
        text: 'Do not pump until vessel and hose are earthed as the procedure says; report it.',
        why: 'Liquid that flows can charge a hose and a vessel, and the spark falls where the vapour is. Earthing comes before the flow.',
      },
      others: [
        {
          text: 'Pump at half the speed, since it is speed that makes the charge.',
          why: 'Slower makes less charge, and not none. The procedure wants the bond before spirit flows.',
        },
        {
          text: 'Start with the first few litres, and let a colleague see to the cable.',
          why: 'The first litres charge it too. The bond comes first.',
        },
        {
          text: 'Hold the hose against the vessel by hand while it runs.',
          why: 'A hand is no bond, and it puts you where the spark would be.',
        },
        {
          text: 'Pump it: spirit contains water and cannot be charged.',
          why: 'Nobody has told you that the site’s assessment says so. Vessels and hoses are earthed before spirit flows.',
        },
        {
          text: 'Wet the hose from outside and start.',
          why: 'Water on the outside is no earth that anybody has checked.',
        },
      ],
      bothWays: {
        would: [
          {
            text: 'Do not pump until vessel and hose are earthed as laid down.',
            why: 'Liquid that flows can charge a hose and a vessel, and the spark falls where the vapour is.',
          },
          {
            text: 'Have another cable brought and checked, however late it gets.',
            why: 'Earthing comes before the flow.',
          },
          {
            text: 'Shut the valves again, and put the hose away.',
            why: 'What stands ready is started by somebody who does not know.',
          },
          {
            text: 'Tell whoever is in charge that it cannot be earthed.',
            why: 'They decide what is done, by the site’s procedure.',
          },
        ],
      },
    };
  },
});
