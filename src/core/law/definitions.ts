// Legal definitions of malt spirit aged in wood, as points to be met. Texts read are named in sources.ts; article numbers marked † are from memory.
import type { Claim, Country, Definition, Point } from './claim.ts';

const point = (asks: string, article: string, meets: (claim: Claim) => boolean): Point => ({
  asks,
  article,
  meets,
});

const bottledWhere = (country: Country) => (claim: Claim) => (claim.bottledIn ?? claim.madeIn) === country;
const plain = ({ added }: Claim) => added !== 'sweetening or flavouring';
const oak = ({ wood }: Claim) => wood !== 'other wood';
const distilledBelow = (limit: number) => (claim: Claim) => claim.distilledAt < limit;
const distilledAtMost = (limit: number) => (claim: Claim) => claim.distilledAt <= limit;
const bottledAtLeast = (limit: number) => (claim: Claim) => claim.bottledAt >= limit;
const agedAtLeast = (years: number) => (claim: Claim) => claim.years >= years;
const caskAtMost = (litres: number) => (claim: Claim) => claim.largestCask <= litres;

export const definitions: readonly Definition[] = [
  {
    id: 'scotland-single-malt',
    name: 'Single malt Scotch whisky',
    source: 'swr-2009',
    points: [
      point('made in Scotland', 'reg. 3 †', ({ madeIn }) => madeIn === 'Scotland'),
      point(
        'from malted barley and no other cereal',
        'reg. 3 †',
        ({ grain }) => grain === 'malted barley only',
      ),
      point('at a single distillery', 'reg. 3 †', ({ oneDistillery }) => oneDistillery),
      point('batch distilled in pot stills', 'reg. 3 †', ({ still }) => still === 'pot still'),
      point('distilled below 94.8 % vol', 'reg. 3 †', distilledBelow(94.8)),
      point('matured only in Scotland', 'reg. 3 †', ({ maturedIn }) => maturedIn === 'Scotland'),
      point('in oak casks', 'reg. 3 †', oak),
      point('of 700 litres or less', 'reg. 3 †', caskAtMost(700)),
      point('for at least three years', 'reg. 3 †', agedAtLeast(3)),
      point('with nothing added but water and plain caramel', 'reg. 3 †', plain),
      point('bottled at 40 % vol or more', 'reg. 3 †', bottledAtLeast(40)),
      point('bottled in Scotland', 'since 23 November 2012', bottledWhere('Scotland')),
    ],
  },
  {
    id: 'scotland',
    name: 'Scotch whisky',
    source: 'swr-2009',
    points: [
      point('made in Scotland', 'reg. 3 †', ({ madeIn }) => madeIn === 'Scotland'),
      point('distilled below 94.8 % vol', 'reg. 3 †', distilledBelow(94.8)),
      point('matured only in Scotland', 'reg. 3 †', ({ maturedIn }) => maturedIn === 'Scotland'),
      point('in oak casks', 'reg. 3 †', oak),
      point('of 700 litres or less', 'reg. 3 †', caskAtMost(700)),
      point('for at least three years', 'reg. 3 †', agedAtLeast(3)),
      point('with nothing added but water and plain caramel', 'reg. 3 †', plain),
      point('bottled at 40 % vol or more', 'reg. 3 †', bottledAtLeast(40)),
    ],
  },
  {
    id: 'eu-whisky',
    name: 'Whisky or whiskey in the European Union',
    source: 'eu-2019-787',
    points: [
      point('each distillation below 94.8 % vol', 'Annex I, category 2', distilledBelow(94.8)),
      point('matured in wooden casks of 700 litres or less', 'Annex I, category 2', caskAtMost(700)),
      point('for at least three years', 'Annex I, category 2', agedAtLeast(3)),
      point('with nothing added but water and plain caramel', 'Annex I, category 2', plain),
      point('bottled at 40 % vol or more', 'Annex I, category 2', bottledAtLeast(40)),
    ],
  },
  {
    id: 'ireland',
    name: 'Irish whiskey',
    source: 'beverages-2024',
    points: [
      point('made in Ireland', 'as summarised in the review', ({ madeIn }) => madeIn === 'Ireland'),
      point('distilled below 94.8 % vol', 'as summarised in the review', distilledBelow(94.8)),
      point('matured at least three years in wooden casks', 'as summarised in the review', agedAtLeast(3)),
    ],
  },
  {
    id: 'us-whisky',
    name: 'Whisky in the United States',
    source: 'cfr-27-5',
    points: [
      point('distilled below 95 % vol (190 proof)', '27 CFR 5.143', distilledBelow(95)),
      point('in oak barrels', '27 CFR 5.143', oak),
      point('bottled at 40 % vol (80 proof) or more', '27 CFR 5.143', bottledAtLeast(40)),
    ],
  },
  {
    id: 'us-malt',
    name: 'Malt whisky in the United States',
    source: 'cfr-27-5',
    points: [
      point(
        'at least 51 % malted barley',
        '27 CFR 5.143',
        ({ grain }) => grain !== 'less than 51 % malted barley',
      ),
      point('distilled at 80 % vol (160 proof) or less', '27 CFR 5.143', distilledAtMost(80)),
      point('into charred new oak', '27 CFR 5.143', ({ wood }) => wood === 'new charred oak'),
      point('at 62.5 % vol (125 proof) or less', '27 CFR 5.143', ({ filledAt }) => filledAt <= 62.5),
      point('bottled at 40 % vol (80 proof) or more', '27 CFR 5.143', bottledAtLeast(40)),
    ],
  },
  {
    id: 'us-single-malt',
    name: 'American single malt whisky',
    source: 'cfr-27-5',
    points: [
      point(
        'mashed and distilled in the United States',
        '27 CFR 5.143, T.D. TTB-199',
        ({ madeIn }) => madeIn === 'the United States',
      ),
      point(
        'from malted barley alone',
        '27 CFR 5.143, T.D. TTB-199',
        ({ grain }) => grain === 'malted barley only',
      ),
      point(
        'all distilled at one distillery',
        '27 CFR 5.143, T.D. TTB-199',
        ({ oneDistillery }) => oneDistillery,
      ),
      point('at 80 % vol (160 proof) or less', '27 CFR 5.143, T.D. TTB-199', distilledAtMost(80)),
      point(
        'matured in the United States',
        '27 CFR 5.143, T.D. TTB-199',
        ({ maturedIn }) => maturedIn === 'the United States',
      ),
      point(
        'in oak barrels of 700 litres or less',
        '27 CFR 5.143, T.D. TTB-199',
        (claim) => oak(claim) && claim.largestCask <= 700,
      ),
      point('bottled at 40 % vol (80 proof) or more', '27 CFR 5.143, T.D. TTB-199', bottledAtLeast(40)),
    ],
  },
  {
    id: 'canada',
    name: 'Canadian whisky',
    source: 'beverages-2024',
    points: [
      point('made in Canada', 'as summarised in the review', ({ madeIn }) => madeIn === 'Canada'),
      point(
        'matured at least three years in small casks of 700 litres or less',
        'as summarised in the review; 700 litres from memory',
        (claim) => claim.years >= 3 && claim.largestCask <= 700,
      ),
      point('bottled at 40 % vol or more', 'as summarised in the review', bottledAtLeast(40)),
    ],
  },
  {
    id: 'japan',
    name: 'Japanese whisky, by the industry’s own standard',
    source: 'japan-standard',
    points: [
      point('made in Japan', 'from memory', ({ madeIn }) => madeIn === 'Japan'),
      point('matured in Japan', 'from memory', ({ maturedIn }) => maturedIn === 'Japan'),
      point(
        'at least three years in wood of 700 litres or less',
        'from memory',
        (claim) => claim.years >= 3 && claim.largestCask <= 700,
      ),
      point('bottled at 40 % vol or more', 'from memory', bottledAtLeast(40)),
      point('bottled in Japan', 'from memory', bottledWhere('Japan')),
    ],
  },
];
