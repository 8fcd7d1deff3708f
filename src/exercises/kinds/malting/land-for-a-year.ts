// About how much land stands behind a year's spirit.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const MALT_FROM_BARLEY = 0.83; // t of malt from a tonne of barley; common practice

export default sum({
  id: 'land-for-a-year',
  title: 'Land behind a year’s spirit',
  topic: 'malting',
  form: 'estimate',
  level: 2,
  sources: ['common-practice', 'memory', 'derived'],
  of: 'land',
  to: 0,
  vary: {
    alcohol: ['alcohol', [100_000, 150_000, 200_000, 300_000, 500_000, 800_000, 1_000_000, 2_000_000]],
    spiritYield: ['yield', [400, 405, 410, 415]],
    harvest: ['harvest', [5.5, 6, 6.5]],
  },
  answer: ({ alcohol, spiritYield, harvest }) => alcohol / spiritYield / MALT_FROM_BARLEY / harvest,
  prompt: (show) =>
    `A visitor asks how much land a distillery of ${show.alcohol} a year needs. You know ${show.spiritYield} of malt, ${MALT_FROM_BARLEY} t of malt from a tonne of barley, and ${show.harvest} of barley. About how many hectares do you say?`,
  working: ({ alcohol, spiritYield, harvest }, answer) => [
    `Malt: ${n(alcohol, 0)} ÷ ${spiritYield}, about ${n(alcohol / spiritYield, 0)} t`,
    `Barley: that ÷ ${MALT_FROM_BARLEY}, about ${n(alcohol / spiritYield / MALT_FROM_BARLEY, 0)} t`,
    `Land: that ÷ ${harvest}, about ${n(answer, 0)} ha`,
  ],
  slips: [
    {
      family: 'forgotten',
      gives: ({ alcohol, spiritYield }) => alcohol / spiritYield / MALT_FROM_BARLEY,
      say: 'Those are the tonnes of barley; a hectare gives several of them.',
    },
    {
      family: 'upsideDown',
      gives: ({ alcohol, spiritYield, harvest }) => (alcohol / spiritYield / MALT_FROM_BARLEY) * harvest,
      say: 'The harvest was multiplied by; the more a hectare gives, the fewer are needed.',
    },
    {
      family: 'thousand',
      gives: (_, answer) => answer * 1000,
      say: 'A thousand was lost between kilograms and tonnes: the yield and the harvest are both in tonnes.',
    },
  ],
});
