// Spirit from casks into bottles and cases.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { bottleSpirit } from '../../core/maturing/bottling.ts';
import { defineCalculator } from '../define.ts';

export default defineCalculator({
  id: 'casks-and-bottles',
  stage: 'maturing',
  title: 'From cask to bottle',
  purpose: 'Water to bottling strength; whole bottles and cases.',
  sources: ['oiml-r22', 'uk-duty-manual'],
  inputs: {
    volume: {
      kind: 'volume20',
      label: 'Spirit out of the casks',
      range: [0.1, 300_000],
      step: 10,
      from: 'matured.volume',
    },
    from: { kind: 'strength', label: 'Its strength', range: [1, 97], step: 0.1, from: 'matured.strength' },
    to: {
      kind: 'strength',
      label: 'Bottling strength',
      range: [1, 70],
      step: 0.1,
      from: 'bottling.strength',
    },
    lost: { label: 'Lost in filtering and bottling', house: 'filterLoss' },
    bottle: { house: 'bottleSize' },
    perCase: { kind: 'count', label: 'Bottles in a case', range: [1, 48], step: 1, value: 6 },
  },
  main: ['volume', 'from', 'to', 'bottle'],
  outputs: {
    bottles: { kind: 'count', label: 'Bottles', digits: 0 },
    cases: { kind: 'count', label: 'Full cases', digits: 0 },
    loose: { kind: 'count', label: 'Loose bottles', digits: 0 },
    water: { kind: 'volume20', label: 'Water to add', digits: 1 },
    volume: { kind: 'volume20', label: 'Volume to bottle', digits: 1 },
    alcohol: { kind: 'alcohol', label: 'Pure alcohol in the bottles' },
    alcoholLost: { kind: 'alcohol', label: 'Pure alcohol lost', digits: 2 },
  },
  refuse: ({ from, to }) =>
    to > from
      ? `Water cannot raise the strength: the spirit is at ${n(from, 1)} % vol, and ${n(to, 1)} was asked for.`
      : undefined,
  compute: ({ volume, from, ...plan }) => {
    const run = bottleSpirit({ volume, strength: from }, plan);
    return { ...run, water: run.reduction.waterVolume, volume: run.bottled };
  },
  steps: (given, result) => {
    const alcohol = (given.volume * given.from) / 100;
    return [
      `Pure alcohol = ${w(given.volume)} × ${w(given.from)} ÷ 100 = ${w(alcohol)} L`,
      'Volume at bottling strength = pure alcohol ÷ bottling strength × 100',
      `${w(alcohol)} ÷ ${w(given.to)} × 100 = ${n((100 * alcohol) / given.to, 1)} L; less ${n(given.lost, 1)} % lost = ${n(result.volume, 1)} L`,
      'Bottles = volume to bottle ÷ bottle, whole ones only',
      `${w(result.volume)} L ÷ ${w(given.bottle / 100)} L = ${n((100 * result.volume) / given.bottle, 1)}, so ${n(result.bottles, 0)}`,
      `${n(result.bottles, 0)} bottles, ${n(Math.floor(given.perCase), 0)} to a case, fill ${n(result.cases, 0)} cases; ${n(result.loose, 0)} are left over`,
    ];
  },
  examples: [
    {
      given: { volume: 840, from: 40, to: 40, lost: 0, bottle: 70, perCase: 12 },
      gives: { bottles: 1200, cases: 100, loose: 0, alcohol: 336 },
      within: 1e-9,
      source: 'uk-duty-manual',
      note: 'a hundred cases of twelve bottles of 70 cL at 40 % vol hold 336 L of pure alcohol',
    },
    {
      given: { volume: 172, from: 60.34883721, to: 46, lost: 0, bottle: 70, perCase: 12 },
      gives: { bottles: 322, cases: 26, loose: 10 },
      within: 0,
      source: 'derived',
      note: '103.8 L of pure alcohol ÷ 0.46 ÷ 0.7 L = 322.36 bottles',
    },
    {
      given: { volume: 100, from: 55, to: 40, lost: 0, bottle: 70, perCase: 6 },
      gives: { water: 38.5 },
      within: 0.005,
      source: 'dilution-table',
      note: 'printed for 60 °F, three figures',
    },
  ],
});
