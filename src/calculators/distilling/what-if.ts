// What a changed cut or more reflux would do to the balanced round, beside the house as it is.
import { settleRound } from '../../core/distilling/round.ts';
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { litres20, litresOfAlcohol, quantity, share, strength, type Quantity } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';
import { houseCuts, houseLimit, houseWash, planOf, type GivenRound } from './house-cuts.ts';
import { isRefusal } from '../../core/refusal.ts';

interface Changed extends GivenRound {
  readonly change: 'earlier' | 'later' | 'reflux';
  readonly cutBy: Quantity<'strengthDifference'>;
  readonly refluxBy: Quantity<'share'>;
}

/** The house's figures with the one change made. */
function after<G extends Changed>(given: G): G {
  if (given.change === 'reflux')
    return { ...given, spiritReflux: share(given.spiritReflux + given.refluxBy) };
  const by = given.change === 'earlier' ? given.cutBy : -given.cutBy;
  return { ...given, heartEnd: strength(given.heartEnd + by) };
}
const said = (given: Changed) => ({ from: n(given.heartEnd, 1), to: n(after(given).heartEnd, 1) });

export default defineCalculator({
  id: 'what-if',
  stage: 'distilling',
  title: 'What if the cut were moved?',
  purpose: 'The balanced round with another cut or more reflux, beside the house as it is.',
  sources: ['de-nevers', 'oiml-r22'],
  cautions: ['licence', 'ethanol-vapour'],
  inputs: {
    change: {
      label: 'What to change',
      options: {
        earlier: 'the heart ends earlier, at a higher strength',
        later: 'the heart ends later, at a lower strength',
        reflux: 'the still has more reflux',
      },
      value: 'earlier',
    },
    cutBy: {
      kind: 'strengthDifference',
      label: 'Move the cut by',
      range: [0, 20],
      step: 0.1,
      value: 2,
      usedWhen: { choice: 'change', is: ['earlier', 'later'] },
    },
    refluxBy: {
      kind: 'share',
      label: 'Raise the reflux by',
      range: [0, 1],
      step: 0.01,
      value: 0.1,
      usedWhen: { choice: 'change', is: ['reflux'] },
    },
    ...houseWash,
    ...houseCuts,
    ...houseLimit,
  },
  main: ['change', 'cutBy', 'refluxBy', 'heartEnd', 'feintsEnd'],
  outputs: {
    heart: { kind: 'volume20', label: 'Heart', digits: 1 },
    heartMore: { kind: 'volume20', label: 'Change in the heart', digits: 1 },
    strength: { kind: 'strength', label: 'Strength of the heart', digits: 2 },
    strengthMore: { kind: 'strengthDifference', label: 'Change in strength' },
    alcohol: { kind: 'alcohol', label: 'Alcohol in the heart', digits: 2 },
    alcoholMore: { kind: 'alcohol', label: 'Change in its alcohol', digits: 2 },
    charge: { kind: 'alcohol', label: 'Alcohol in the charge' },
    chargeMore: { kind: 'alcohol', label: 'Change in the charge’s alcohol' },
    feints: { kind: 'volume20', label: 'Feints', digits: 1 },
    feintsMore: { kind: 'volume20', label: 'Change in the feints', digits: 1 },
  },
  refuse: (given) => {
    const { heartEnd, spiritReflux } = after(given);
    if (heartEnd < 20 || heartEnd > 85)
      return `The heart would end at ${n(heartEnd, 1)} % vol; it can be from 20 to 85 % vol.`;
    if (spiritReflux > 1)
      return `The reflux would be ${n(spiritReflux, 2)}; it can be from 0 to 1, a whole further stage.`;
    return undefined;
  },
  compute: (given) => {
    const now = settleRound(planOf(given));
    if (isRefusal(now)) return now;
    const then = settleRound(planOf(after(given)));
    if (isRefusal(then)) return then;
    return {
      heart: then.heart.volume,
      heartMore: litres20(then.heart.volume - now.heart.volume),
      strength: then.heart.strength,
      strengthMore: quantity('strengthDifference', then.heart.strength - now.heart.strength),
      alcohol: then.heart.alcohol,
      alcoholMore: litresOfAlcohol(then.heart.alcohol - now.heart.alcohol),
      charge: then.charge.alcohol,
      chargeMore: litresOfAlcohol(then.charge.alcohol - now.charge.alcohol),
      feints: then.feints.volume,
      feintsMore: litres20(then.feints.volume - now.feints.volume),
    };
  },
  steps: (given, result) => [
    given.change === 'reflux'
      ? `Reflux from ${n(given.spiritReflux, 2)} to ${n(after(given).spiritReflux, 2)}; the cuts stay`
      : `The heart ends at ${said(given).to} instead of ${said(given).from} % vol; all else stays`,
    'Each round is solved for the charge that comes back unchanged: low wines in, heart and spent lees out',
    `Heart: ${w(result.heart)} × ${w(result.strength)} ÷ 100 = ${n(result.alcohol, 1)} L of pure alcohol; now it is ${n(result.alcohol - result.alcoholMore, 1)}`,
    `Charge: ${n(result.charge, 1)} L of pure alcohol, now ${n(result.charge - result.chargeMore, 1)}; feints: ${n(result.feints, 1)} L, now ${n(result.feints - result.feintsMore, 1)}`,
  ],
  remark: (given, { alcohol, alcoholMore, feintsMore, strengthMore }) => {
    const less =
      Math.abs(alcoholMore) < 0.005 * alcohol ? 'hardly changes' : alcoholMore > 0 ? 'rises' : 'falls';
    const heart =
      Math.abs(strengthMore) < 0.005 ? 'as strong as now' : strengthMore > 0 ? 'stronger' : 'weaker';
    const boiled = Math.abs(feintsMore) < 0.05 ? 'as much' : feintsMore > 0 ? 'more' : 'less';
    return `The alcohol of a balanced heart ${less}; the heart is ${heart}, and ${boiled} liquid goes round to be boiled again.${
      given.change === 'later'
        ? ' A later cut brings in more of what comes late, so taste before litres.'
        : ''
    }`;
  },
  examples: [
    {
      given: {
        change: 'earlier',
        cutBy: 2,
        refluxBy: 0.1,
        washVolume: 10_000,
        washStrength: 8,
        washReflux: 0.05,
        washEnd: 1,
        foreshotsBy: 'share',
        foreshotsShare: 2,
        foreshotsVolume: 40,
        foreshotsMinutes: 15,
        foreshotsFlow: 160,
        runs: 1,
        foreshotsStrength: 73,
        heartEnd: 62,
        feintsEnd: 1,
        spiritReflux: 0.1,
        airPressure: 101.325,
        dilution: 'when-needed',
        chargeLimit: 30,
      },
      gives: { alcohol: 790 },
      within: 0.0077,
      source: 'memory',
      note: '98–99.5 % of the 800 L in the wash, as recalled for a good distillation: 784 to 796 L, whatever the cuts',
    },
  ],
});
