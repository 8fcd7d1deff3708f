// A season of rounds from an empty receiver until they repeat themselves, and what one missed recycle does.
import { settleRound } from '../../core/distilling/round.ts';
import { roundsToSettle, runSeason, type Season } from '../../core/distilling/season.ts';
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { count, litresOfAlcohol, type Quantity } from '../../core/quantity.ts';
import { isRefusal, refuse } from '../../core/refusal.ts';
import { defineCalculator } from '../define.ts';
import { houseCuts, houseLimit, houseWash, planOf, type GivenRound } from './house-cuts.ts';

const MOST_ROUNDS = 200; // after so many, a season that has not settled is told so

interface Given extends GivenRound {
  readonly rounds: Quantity<'count'>;
  readonly missed: Quantity<'count'>;
}
const whole = (number: number) => Math.round(number);
const hearts = ({ rounds }: Season) =>
  litresOfAlcohol(rounds.reduce((sum, { heart }) => sum + heart.alcohol, 0));
const asPlanned = (given: Given) => runSeason(planOf(given), whole(given.rounds), whole(given.missed));

export default defineCalculator({
  id: 'season',
  stage: 'distilling',
  title: 'A season from an empty receiver',
  purpose:
    'Round after round from the first charge: when they balance, and what it costs to leave the feints out once.',
  sources: ['de-nevers', 'oiml-r22'],
  cautions: ['licence', 'ethanol-vapour'],
  inputs: {
    rounds: { kind: 'count', label: 'Rounds in the season', range: [1, 60], step: 1, value: 12 },
    missed: {
      kind: 'count',
      label: 'Foreshots and feints kept out in round (0: none)',
      range: [0, 60],
      step: 1,
      value: 8,
    },
    ...houseWash,
    ...houseCuts,
    ...houseLimit,
  },
  main: ['rounds', 'missed', 'heartEnd', 'feintsEnd', 'washStrength'],
  outputs: {
    settled: { kind: 'count', label: 'Balanced, to a thousandth, from round' },
    balanced: { kind: 'alcohol', label: 'Heart once balanced' },
    first: { kind: 'alcohol', label: 'Heart of the first round' },
    total: { kind: 'alcohol', label: 'Hearts of the season' },
    left: { kind: 'alcohol', label: 'Left in the receiver' },
    keptOut: { kind: 'alcohol', label: 'Kept out' },
    lost: { kind: 'alcohol', label: 'Missing from the hearts for it' },
  },
  refuse: ({ rounds, missed }) =>
    whole(missed) > whole(rounds)
      ? `Round ${whole(missed)} is not in a season of ${whole(rounds)}; give one from 1 to ${whole(rounds)}, or 0 for none.`
      : undefined,
  compute: (given) => {
    const plan = planOf(given);
    const balance = settleRound(plan);
    if (isRefusal(balance)) return balance;
    const told = asPlanned(given);
    if (isRefusal(told)) return told;
    const enough = runSeason(plan, Math.max(12, whole(given.rounds)));
    if (isRefusal(enough)) return enough;
    const settle = (season: Season) => roundsToSettle(season.rounds, balance.heart.alcohol);
    const longer = settle(enough) === undefined ? runSeason(plan, MOST_ROUNDS) : enough;
    const settled = isRefusal(longer) ? undefined : settle(longer);
    if (settled === undefined)
      return refuse(
        `These rounds settle so slowly that after ${MOST_ROUNDS} they are still not within a thousandth of balance. A heart that begins sooner settles sooner.`,
      );
    const undisturbed = enough.rounds
      .slice(0, whole(given.rounds))
      .reduce((sum, { heart }) => sum + heart.alcohol, 0);
    return {
      settled: count(settled),
      balanced: balance.heart.alcohol,
      first: told.rounds[0]!.heart.alcohol,
      total: hearts(told),
      left: told.left.alcohol,
      keptOut: told.keptOut.alcohol,
      lost: litresOfAlcohol(undisturbed - hearts(told)),
    };
  },
  steps: (given, result) => {
    const told = asPlanned(given);
    if (isRefusal(told)) return [];
    const lees = told.rounds.reduce((sum, { residue }) => sum + residue.alcohol, 0);
    const [rounds, missed] = [whole(given.rounds), whole(given.missed)];
    return [
      'Charge = low wines + foreshots and feints of the round before, let down with water where it would be too strong',
      `Round 1: ${w(told.lowWines.alcohol)} L of pure alcohol go in, ${n(result.first, 1)} are heart, ${n(told.rounds[0]!.back.alcohol, 1)} go to the receiver`,
      `In balance from round ${result.settled}: every heart from then on${missed > 0 && missed >= result.settled ? `, until the recycle is missed in round ${missed},` : missed > 0 ? ', were none kept out,' : ''} is within a thousandth of ${n(result.balanced, 1)} L`,
      'Over the season: low wines = hearts + spent lees + kept out + left in the receiver',
      `Low wines: ${rounds} × ${w(told.lowWines.alcohol, 8)} = ${n(rounds * told.lowWines.alcohol, 1)} L; the rest: ${n(result.total, 2)} + ${n(lees, 2)} + ${n(result.keptOut, 2)} + ${n(result.left, 2)} = ${n(result.total + lees + result.keptOut + result.left, 1)} L`,
    ];
  },
  remark: (given, result) => {
    const short = result.balanced - result.first;
    const begin = `The first heart is ${n(short, 0)} L of pure alcohol ${short < 0 ? 'above' : 'short of'} a balanced one; most of that is not lost but is in the receiver.`;
    return whole(given.missed) === 0
      ? begin
      : `${begin} Kept out in round ${whole(given.missed)}, ${n(result.keptOut, 0)} L are missing: the hearts that follow are ${n(result.lost, 0)} L short within this season, and the rounds have to settle again.`;
  },
  chart: (given) => {
    const told = asPlanned(given);
    const rounds = isRefusal(told) ? [] : told.rounds;
    return {
      caption: 'Pure alcohol in the heart, round by round',
      as: 'bars',
      columns: [
        { kind: 'count', label: 'Round', values: rounds.map((_, i) => i + 1) },
        { kind: 'alcohol', label: 'Heart', values: rounds.map(({ heart }) => heart.alcohol) },
        { kind: 'strength', label: 'Charge', values: rounds.map(({ charge }) => charge.strength) },
        { kind: 'volume20', label: 'Foreshots and feints', values: rounds.map(({ back }) => back.volume) },
      ],
    };
  },
  examples: [
    {
      given: {
        rounds: 60,
        missed: 0,
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
      gives: { balanced: 790 },
      within: 0.0077,
      source: 'memory',
      note: '98–99.5 % of the 800 L in the wash, as recalled for a good distillation: 784 to 796 L, whatever the cuts',
    },
  ],
});
