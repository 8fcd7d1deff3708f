// Figures of the distilling, and what is chosen there.
import { computed, spokenSpreads, type FigureChoice, type Figure } from './define.ts';

// prettier-ignore
export const distillingFigures = {
  airPressure: { is: 'measured', kind: 'pressure', label: 'Air pressure', limits: [60, 110], step: 0.5, meaning: 'Pressure of the air at the still house; it falls with height and weather.' },
  numberOfStills: { is: 'said', kind: 'count', label: 'Number of stills', limits: [1, 60] },
  washReflux: { is: 'measured', kind: 'share', label: 'Reflux of the wash still', limits: [0, 1], step: 0.01, meaning: 'How much of one more stage of distilling its head and neck give: 0 for none, 1 for a whole one. Set it so that strength and litres of the low wines agree with yours.' },
  washEnd: { is: 'set', kind: 'strength', label: 'Wash run ends at', limits: [0.1, 20], step: 0.1, usual: { range: [1, 1], source: 'common-practice' }, meaning: 'Strength of the low wines at the safe when the wash still is stopped.' },
  lowWinesVolume: { is: 'computed', counted: true, kind: 'volume20', label: 'Low wines from a mash', limits: [5, 300_000], at: 'lowWines.volume', grows: true, card: true, quoted: { typical: 15_000, spread: spokenSpreads.volume }, watched: true },
  lowWinesStrength: { is: 'computed', counted: true, kind: 'strength', label: 'Low-wines strength', limits: [8, 35], at: 'lowWines.strength', card: true, quoted: { typical: 22, spread: spokenSpreads.strength }, watched: true },
  lowWinesAlcohol: { ...computed.alcohol, label: 'Pure alcohol in the low wines', at: 'lowWines.alcohol' },
  potAleVolume: { ...computed.volume, counted: true, label: 'Pot ale from a mash', at: 'potAle.volume' },
  potAleStrength: { ...computed.strength, label: 'Strength of the pot ale', at: 'potAle.strength' },
  potAleAlcohol: { ...computed.alcohol, label: 'Pure alcohol in the pot ale', at: 'potAle.alcohol' },
  chargeVolume: { is: 'computed', counted: true, kind: 'volume20', label: 'Spirit charge for a mash', limits: [5, 400_000], at: 'charge.volume', grows: true, card: true, quoted: { typical: 24_000, spread: spokenSpreads.volume }, watched: true },
  chargeStrength: { is: 'computed', counted: true, kind: 'strength', label: 'Spirit-charge strength', limits: [10, 80], at: 'charge.strength', card: true, watched: true, quoted: { typical: 27, spread: spokenSpreads.strength } },
  chargeAlcohol: { ...computed.alcohol, label: 'Pure alcohol in the spirit charge', at: 'charge.alcohol' },
  dilutionWater: { ...computed.volume, label: 'Reducing water for the spirit charge', at: 'round.dilution', watched: true },
  spiritReflux: { is: 'measured', kind: 'share', label: 'Reflux of the spirit still', limits: [0, 1], step: 0.01, meaning: 'How much of one more stage of distilling its head and neck give: 0 for none, 1 for a whole one. Set it so that the strength at the start of the run agrees with your safe.' },
  boilOff: { is: 'computed', kind: 'energy', label: 'Heat to boil off both runs', limits: [0, 1e7], at: 'stills.boilOff', grows: true, watched: true },
  foreshotsShare: { is: 'set', kind: 'percent', label: 'Foreshots, by share', limits: [0, 40], step: 0.1, usual: { range: [1, 5], source: 'common-practice' }, instead: 'it matters only while the foreshots end after a share of the alcohol', meaning: 'Share of the charge’s alcohol taken as foreshots.' },
  foreshotsVolume: { is: 'set', kind: 'volume20', label: 'Foreshots, by volume', limits: [0, 20_000], step: 1, instead: 'it matters only while the foreshots end after so many litres', meaning: 'Litres taken as foreshots in one run of one still, at 20 °C.' },
  foreshotsMinutes: { is: 'set', kind: 'minutes', label: 'Foreshots, by time', limits: [0, 180], step: 1, usual: { range: [5, 45], source: 'common-practice' }, instead: 'it matters only while the foreshots end after so many minutes', meaning: 'Minutes for which the foreshots of one run come over.' },
  foreshotsFlow: { is: 'measured', either: true, kind: 'volumeFlow', label: 'Flow of the foreshots', limits: [1, 20_000], step: 10, instead: 'it matters only while the foreshots end after so many minutes', meaning: 'Litres that come over from one still in an hour while they run.' },
  foreshotsStrength: { is: 'set', kind: 'strength', label: 'Foreshots, by strength', limits: [20, 90], step: 0.1, usual: { range: [72, 75], source: 'common-practice' }, instead: 'it matters only while the foreshots end at a strength', meaning: 'Strength at the safe at which the foreshots end.' },
  foreshotsTaken: { ...computed.volume, label: 'Foreshots from a mash', at: 'foreshots.volume', watched: true },
  foreshotsBegin: { ...computed.strength, label: 'Strength at which the run begins', at: 'foreshots.begins' },
  foreshotsMeanStrength: { ...computed.strength, label: 'Strength of the foreshots', at: 'foreshots.strength' },
  foreshotsAlcohol: { ...computed.alcohol, label: 'Pure alcohol in the foreshots', at: 'foreshots.alcohol' },
  heartBegins: { is: 'computed', kind: 'strength', label: 'Strength at which the heart begins', limits: [40, 88], usual: { range: [71, 76], source: 'common-practice' }, at: 'heart.begins', quoted: { typical: 73, spread: spokenSpreads.strength } },
  heartEnd: { is: 'set', kind: 'strength', label: 'Heart ends at', told: 'Strength at which the heart ends', alias: 'heartEnds', limits: [20, 85], step: 0.1, usual: { range: [58, 66], source: 'common-practice' }, card: true, meaning: 'Strength at the safe at which the heart ends and the feints begin.', quoted: { typical: 62, spread: spokenSpreads.strength } },
  heartVolume: { is: 'computed', counted: true, kind: 'volume20', label: 'New spirit from a mash', limits: [1, 150_000], at: 'heart.volume', grows: true, card: true, watched: true, quoted: { typical: 4600, spread: spokenSpreads.volume } },
  heartStrength: { is: 'computed', counted: true, kind: 'strength', label: 'Strength of the new spirit', limits: [50, 87], usual: { range: [67, 71], source: 'common-practice' }, at: 'heart.strength', card: true, watched: true, quoted: { typical: 68.5, spread: spokenSpreads.strength, houses: { spread: 2.5, why: 'new spirit is collected at 63 to 71 % vol', source: 'common-practice' } } },
  heartAlcohol: { is: 'computed', counted: true, kind: 'alcohol', label: 'Pure alcohol from a mash', limits: [1, 100_000], at: 'heart.alcohol', grows: true, card: true, quoted: { typical: 3160, spread: spokenSpreads.alcohol }, watched: true },
  alcoholPerWeek: { is: 'computed', kind: 'alcohol', label: 'Pure alcohol a week', limits: [1, 5e6], also: ['maturing'], at: 'beside.alcoholPerWeek', quoted: { typical: 31_600, spread: spokenSpreads.alcohol } },
  alcoholPerYear: { is: 'computed', counted: true, kind: 'alcohol', label: 'Pure alcohol a year', limits: [1, 2e8], also: ['maturing'], at: 'beside.alcoholPerYear', quoted: { typical: 1.45e6, spread: spokenSpreads.alcohol } },
  feintsEnd: { is: 'set', kind: 'strength', label: 'Feints end at', limits: [0.1, 40], step: 0.1, usual: { range: [1, 1], source: 'nicol-2003' }, meaning: 'Strength at the safe at which the spirit still is stopped.' },
  feintsVolume: { ...computed.volume, counted: true, label: 'Feints from a mash', at: 'feints.volume', watched: true },
  feintsStrength: { ...computed.strength, counted: true, label: 'Strength of the feints', at: 'feints.strength' },
  feintsAlcohol: { ...computed.alcohol, label: 'Pure alcohol in the feints', at: 'feints.alcohol' },
  spentLeesVolume: { ...computed.volume, label: 'Spent lees from a mash', at: 'spentLees.volume' },
  spentLeesStrength: { ...computed.strength, label: 'Strength of the spent lees', at: 'spentLees.strength' },
  spentLeesAlcohol: { ...computed.alcohol, label: 'Pure alcohol in the spent lees', at: 'spentLees.alcohol' },
  chargeLimit: { is: 'set', kind: 'strength', label: 'Highest strength of the charge', limits: [15, 60], step: 0.5, usual: { range: [25, 30], source: 'common-practice' }, instead: 'it matters only for a charge that would be stronger', meaning: 'A stronger charge is let down to this with water, where the house does that.' },
} as const satisfies Record<string, Figure>;

export const distillingChoices = {
  foreshotsBy: {
    label: 'Foreshots end',
    meaning: 'How the stillman decides that the heart begins.',
    options: {
      share: 'after a share of the alcohol',
      volume: 'after so many litres',
      minutes: 'after so many minutes',
      strength: 'at a strength',
    },
  },
  dilution: {
    label: 'A charge that is too strong',
    meaning: 'What is done with a spirit charge above the highest strength set.',
    options: { 'when-needed': 'is let down with water', never: 'is run as it is' },
  },
} as const satisfies Record<string, FigureChoice>;
