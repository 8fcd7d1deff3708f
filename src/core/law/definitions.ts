// Legal definitions of malt spirit aged in wood, as points to be met. Articles marked ~ are from memory.
import type { Claim, Country, Definition, Point } from './claim.ts';

const point = (asks: string, article: string, meets: (claim: Claim) => boolean): Point => ({
  asks,
  article,
  meets,
});

const madeIn =
  (country: Country) =>
  ({ madeIn }: Claim) =>
    madeIn === country;
const maturedIn =
  (country: Country) =>
  ({ maturedIn }: Claim) =>
    maturedIn === country;
const bottledWhere = (country: Country) => (claim: Claim) => (claim.bottledIn ?? claim.madeIn) === country;
const plain = ({ added }: Claim) => added !== 'sweetening or flavouring';
const oak = ({ wood }: Claim) => wood !== 'other wood';
const distilledBelow = (limit: number) => (claim: Claim) => claim.distilledAt < limit;
const distilledAtMost = (limit: number) => (claim: Claim) => claim.distilledAt <= limit;
const bottledAtLeast = (limit: number) => (claim: Claim) => claim.bottledAt >= limit;
const agedAtLeast = (years: number) => (claim: Claim) => claim.years >= years;
const caskAtMost = (litres: number) => (claim: Claim) => claim.largestCask <= litres;
const maltedBarleyOnly = ({ grain }: Claim) => grain === 'malted barley only';

/** What every Scotch whisky must meet. */
const scotch: readonly Point[] = [
  point('made in Scotland', 'reg. 3(1)(a)', madeIn('Scotland')),
  point('distilled below 94.8 % vol', 'reg. 3(1)(b)', distilledBelow(94.8)),
  point('matured only in Scotland', 'reg. 3(1)(d)', maturedIn('Scotland')),
  point('in oak casks', 'reg. 3(1)(c)', oak),
  point('of 700 litres or less', 'reg. 3(1)(c)', caskAtMost(700)),
  point('for at least three years', 'reg. 3(1)(e)', agedAtLeast(3)),
  point('with nothing added but water and plain caramel', 'reg. 3(1)(h)', plain),
  point('bottled at 40 % vol or more', 'reg. 3(1)(i)', bottledAtLeast(40)),
];

/** The European definition, in the regulation of 2019 and in the older one that Great Britain kept. */
const european = (article: string): readonly Point[] => [
  point('each distillation below 94.8 % vol', article, distilledBelow(94.8)),
  point('matured in wooden casks of 700 litres or less', article, caskAtMost(700)),
  point('for at least three years', article, agedAtLeast(3)),
  point('with nothing added but water and plain caramel', article, plain),
  point('bottled at 40 % vol or more', article, bottledAtLeast(40)),
];

/** The proof of distillation is the composite proof of the spirits, by section 19.1. */
const COMPOSITE = '27 CFR 5.143; the spirit as a whole, not its first drop, 19.1';

/** What a label in the United States must say besides; the number of today’s section is from memory. */
const ageInAmerica = ({ years }: Claim): readonly string[] =>
  years < 4
    ? [
        'Under four years old, its age must stand on the label; months may be counted (27 CFR 5.74 ~, formerly 5.40).',
      ]
    : [];

/** What may go into whisky there without taking its name; the number of today’s section is from memory. */
const addedInAmerica = (claim: Claim): readonly string[] =>
  plain(claim)
    ? []
    : [
        'What is added must be harmless, usual in the trade and no more than 2.5 % by volume; “straight” whisky and bourbon take none (27 CFR 5.155 ~, formerly 5.23).',
      ];

const mindsInAmerica = (claim: Claim) => [...ageInAmerica(claim), ...addedInAmerica(claim)];

export const definitions: readonly Definition[] = [
  {
    id: 'scotland-single-malt',
    name: 'Single malt Scotch whisky',
    sources: ['swr-2009'],
    since: '2009-11-23',
    readOn: '2026-11-29',
    readIn: 'the opening of the regulations, their list, and the revenue’s manual, page SPIR3260',
    textAt: 'legislation.gov.uk/uksi/2009/2890',
    points: [
      ...scotch.slice(0, 1),
      point('from malted barley and no other cereal', 'reg. 3(2) ~', maltedBarleyOnly),
      point('at a single distillery', 'reg. 3(2) ~', ({ oneDistillery }) => oneDistillery),
      point('batch distilled in pot stills', 'reg. 3(2) ~', ({ still }) => still === 'pot still'),
      ...scotch.slice(1),
      point('bottled in Scotland', 'reg. 7, since 23 November 2012', bottledWhere('Scotland')),
    ],
  },
  {
    id: 'scotland',
    name: 'Scotch whisky',
    sources: ['swr-2009'],
    since: '2009-11-23',
    readOn: '2026-11-29',
    readIn: 'the opening of the regulations, and the revenue’s manual, page SPIR3260',
    textAt: 'legislation.gov.uk/uksi/2009/2890',
    points: scotch,
  },
  {
    id: 'great-britain',
    name: 'Whisky or whiskey in Great Britain',
    sources: ['ec-110-2008'],
    since: '2020-12-31',
    readOn: '2026-11-29',
    readIn:
      'articles 1 and 5 of the regulation as kept, and category 2 as quoted by two others; the revenue’s manual, page SPIR3250, names the newer European one, which asks the same',
    textAt: 'legislation.gov.uk/eur/2008/110',
    points: european('Annex II, category 2'),
    minds: ({ madeIn }) =>
      madeIn === 'Scotland' ? ['Whisky made in Scotland must be Scotch whisky (SI 2009/2890, reg. 5).'] : [],
  },
  {
    id: 'eu-whisky',
    name: 'Whisky or whiskey in the European Union',
    sources: ['eu-2019-787'],
    since: '2021-05-25',
    readOn: '2026-11-29',
    readIn: 'the British revenue’s manual, page SPIR3250; the day it took effect is from memory',
    textAt: 'eur-lex.europa.eu/eli/reg/2019/787/oj/eng',
    points: european('Annex I, category 2'),
  },
  {
    id: 'eu-single-malt',
    name: 'Single malt in the European Union',
    sources: ['eu-2019-787'],
    since: '2021-05-25',
    readOn: '2026-11-30',
    readIn: 'point (e) as others quote it; the rest as for whisky',
    textAt: 'eur-lex.europa.eu/eli/reg/2019/787/oj/eng',
    points: [
      point('distilled from malted barley alone', 'Annex I, category 2(e)', maltedBarleyOnly),
      point('at a single distillery', 'Annex I, category 2(e)', ({ oneDistillery }) => oneDistillery),
      ...european('Annex I, category 2'),
    ],
  },
  {
    id: 'ireland',
    name: 'Irish whiskey',
    sources: ['irish-whiskey-1980', 'irish-file-2014', 'eu-2019-787'],
    since: '2014-10',
    readOn: '2026-11-29',
    readIn:
      'the Act; the technical file of October 2014, section 2, in two copies; the version of March 2019 was not read',
    textAt: 'irishstatutebook.ie/1980/en/act/pub/0033; the file with the Department of Agriculture',
    points: [
      point('distilled on the island of Ireland', 'Act of 1980, s. 1(3)(a)', madeIn('Ireland')),
      point('distilled below 94.8 % vol', 'Act of 1980, s. 1(3)(a)', distilledBelow(94.8)),
      point('matured only on the island of Ireland', 'Act of 1980, s. 1(3)(b)', maturedIn('Ireland')),
      point('for at least three years', 'Act of 1980, s. 1(3)(b)', agedAtLeast(3)),
      point('in wooden casks of 700 litres or less', 'technical file, 2.1.1', caskAtMost(700)),
      point('with nothing added but water and plain caramel', 'technical file, 2.1.1', plain),
      point('bottled at 40 % vol or more', 'technical file, 2.3.1', bottledAtLeast(40)),
    ],
  },
  {
    id: 'us-whisky',
    name: 'Whisky in the United States',
    sources: ['cfr-27-5', 'cfr-27-5-former', 'ttb-69-58', 'cfr-27-19'],
    since: '2022-03-11',
    readOn: '2026-11-25',
    readIn: 'a copy of the electronic code; the day it took effect is from memory',
    textAt: 'ecfr.gov/current/title-27/part-5',
    points: [
      point('distilled below 95 % vol (190 proof)', COMPOSITE, distilledBelow(95)),
      point('in oak barrels', '27 CFR 5.143', oak),
      point('bottled at 40 % vol (80 proof) or more', '27 CFR 5.143', bottledAtLeast(40)),
    ],
    minds: mindsInAmerica,
  },
  {
    id: 'us-malt',
    name: 'Malt whisky in the United States',
    sources: ['cfr-27-5', 'cfr-27-5-former', 'ttb-69-58', 'cfr-27-19'],
    since: '2022-03-11',
    readOn: '2026-11-25',
    readIn: 'a copy of the electronic code; the day it took effect is from memory',
    textAt: 'ecfr.gov/current/title-27/part-5',
    points: [
      point(
        'at least 51 % malted barley',
        '27 CFR 5.143',
        ({ grain }) => grain !== 'less than 51 % malted barley',
      ),
      point('distilled at 80 % vol (160 proof) or less', COMPOSITE, distilledAtMost(80)),
      point('into charred new oak', '27 CFR 5.143', ({ wood }) => wood === 'new charred oak'),
      point('at 62.5 % vol (125 proof) or less', '27 CFR 5.143', ({ filledAt }) => filledAt <= 62.5),
      point('bottled at 40 % vol (80 proof) or more', '27 CFR 5.143', bottledAtLeast(40)),
    ],
    minds: mindsInAmerica,
  },
  {
    id: 'us-single-malt',
    name: 'American single malt whisky',
    sources: ['ttb-199', 'cfr-27-5', 'ttb-69-58', 'cfr-27-19'],
    since: '2025-01-19',
    readOn: '2026-11-29',
    readIn: 'the summary of the final rule, and the trade’s reports of it',
    textAt: 'govinfo.gov/content/pkg/FR-2024-12-18/html/2024-29938.htm',
    points: [
      point(
        'mashed and distilled in the United States',
        '27 CFR 5.143, T.D. TTB-199',
        madeIn('the United States'),
      ),
      point('from malted barley alone', '27 CFR 5.143, T.D. TTB-199', maltedBarleyOnly),
      point(
        'all distilled at one distillery',
        '27 CFR 5.143, T.D. TTB-199',
        ({ oneDistillery }) => oneDistillery,
      ),
      point('at 80 % vol (160 proof) or less', COMPOSITE, distilledAtMost(80)),
      point('matured in the United States', '27 CFR 5.143, T.D. TTB-199', maturedIn('the United States')),
      point(
        'in oak barrels of 700 litres or less',
        '27 CFR 5.143, T.D. TTB-199',
        (claim) => oak(claim) && claim.largestCask <= 700,
      ),
      point('with nothing added but water and caramel', '27 CFR 5.143, T.D. TTB-199', plain),
      point('bottled at 40 % vol (80 proof) or more', '27 CFR 5.143, T.D. TTB-199', bottledAtLeast(40)),
    ],
    minds: (claim) => [
      ...(claim.added === 'water and plain caramel'
        ? ['The label must say that there is caramel in it.']
        : []),
      ...ageInAmerica(claim),
    ],
  },
  {
    id: 'canada',
    name: 'Canadian whisky',
    sources: ['canada-fdr'],
    since: '2000',
    readOn: '2026-11-29',
    readIn:
      'B.02.020 as current to 26 November 2024, and B.02.002 with the 700 litres as amended on 18 December 2024 (SOR/2024-244): read B.02.020 again',
    textAt: 'laws-lois.justice.gc.ca, C.R.C., c. 870',
    points: [
      point('mashed and distilled in Canada', 'B.02.020(1)(a)(v)', madeIn('Canada')),
      point('matured in Canada', 'B.02.020(1)(a)(v)', maturedIn('Canada')),
      point('for at least three years', 'B.02.020(1)(a)(ii)', agedAtLeast(3)),
      point('in small wood, of 700 litres or less', 'B.02.020(1)(a)(ii), B.02.002', caskAtMost(700)),
      point('bottled at 40 % vol or more', 'B.02.020(1)(a)(vi)', bottledAtLeast(40)),
    ],
    minds: ({ added }) =>
      added === 'sweetening or flavouring'
        ? ['“Flavouring” means other spirit or wine there; sweetening is not named (B.02.020).']
        : [],
  },
  {
    id: 'japan',
    name: 'Japanese whisky, by the industry’s own standard',
    sources: ['japan-standard'],
    since: '2021-04-01',
    readOn: '2026-11-29',
    readIn: 'the standard as four reports of 2021 give it; members had until 31 March 2024',
    textAt: 'yoshu.or.jp ~, the association’s own pages',
    points: [
      point('mashed, fermented and distilled in Japan', 'standard of 2021', madeIn('Japan')),
      point('distilled below 95 % vol', 'standard of 2021', distilledBelow(95)),
      point('matured in Japan', 'standard of 2021', maturedIn('Japan')),
      point(
        'at least three years in wood of 700 litres or less',
        'standard of 2021',
        (claim) => claim.years >= 3 && claim.largestCask <= 700,
      ),
      point('with nothing added but water and plain caramel', 'standard of 2021', plain),
      point('bottled at 40 % vol or more', 'standard of 2021', bottledAtLeast(40)),
      point('bottled in Japan', 'standard of 2021', bottledWhere('Japan')),
    ],
  },
];
