// Which point of a definition a spirit misses.
import { judgeClaim, type Claim, type Country, type Definition } from '../../../core/law/claim.ts';
import { definitions } from '../../../core/law/definitions.ts';
import { seededChance, type Chance } from '../../seeded-random.ts';
import { choice, EVEN_WORDING_SINCE } from '../../choice.ts';
import { soundSpirit, spiritInWords } from './claims.ts';

/** The generator from which a point says what it is about where it stands alone. */
const SAID_IN_FULL = 7;
const inFull: Readonly<Record<string, string>> = {
  'at 62.5 % vol (125 proof) or less': 'filled at 62.5 % vol (125 proof) or less',
  'at 80 % vol (160 proof) or less': 'distilled at 80 % vol (160 proof) or less',
  'of 700 litres or less': 'in casks of 700 litres or less',
  'for at least three years': 'matured for at least three years',
};
const sentence = (asks: string) => `${asks[0]!.toUpperCase()}${asks.slice(1)}.`;

type Change = (chance: Chance) => Partial<Claim>;

const weak: Change = (chance) => ({ bottledAt: chance.pick([38, 39, 39.5, 39.8]) });
const young: Change = (chance) => ({ years: chance.pick([2, 2.5]) });
const large: Change = (chance) => ({ largestCask: chance.pick([720, 750, 800]) });
const strong: Change = (chance) => ({ distilledAt: chance.pick([80.5, 81, 82, 83]) });
const fullStrength: Change = (chance) => ({ filledAt: chance.pick([63, 63.5, 64, 65]) });
const sweet: Change = () => ({ added: 'sweetening or flavouring' });
const twoHouses: Change = () => ({ oneDistillery: false });
const away: Change = () => ({ maturedIn: 'Canada' });
const chestnut: Change = () => ({ wood: 'other wood' });
const usedOak: Change = () => ({ wood: 'used or uncharred oak' });

interface Case {
  readonly id: string;
  readonly country: Country;
  /** What makes a spirit of that country meet the definition, where it might not. */
  readonly meets: Partial<Claim>;
  readonly misses: readonly Change[];
}

const cases: readonly Case[] = [
  {
    id: 'scotland-single-malt',
    country: 'Scotland',
    meets: {},
    misses: [weak, young, large, sweet, twoHouses, away, chestnut],
  },
  { id: 'eu-whisky', country: 'another EU country', meets: {}, misses: [weak, young, large, sweet] },
  {
    id: 'us-malt',
    country: 'the United States',
    meets: { wood: 'new charred oak', filledAt: 62 },
    misses: [weak, strong, fullStrength, usedOak],
  },
  {
    id: 'us-single-malt',
    country: 'the United States',
    meets: {},
    misses: [weak, strong, large, twoHouses, away],
  },
];

/** The points that a question of a case can be about: with no others shown, none is never the one. */
const pointsOf = (misses: readonly Change[], sound: Claim, definition: Definition): ReadonlySet<string> =>
  new Set(
    misses.flatMap((miss) =>
      judgeClaim({ ...sound, ...miss(seededChance('points')) }, definition).flatMap(({ asks, met }) =>
        met ? [] : [asks],
      ),
    ),
  );

export default choice({
  id: 'point-it-misses',
  title: 'Which point does it miss?',
  topic: 'law',
  form: 'judgement',
  level: 2,
  sources: ['swr-2009', 'eu-2019-787', 'cfr-27-5', 'ttb-199'],
  ask: (chance) => {
    const { id, country, meets, misses } = chance.pick(cases);
    const definition = definitions.find((each) => each.id === id)!;
    const sound = { ...soundSpirit(chance, country), ...meets };
    const claim = { ...sound, ...chance.pick(misses)(chance) };
    const verdicts = judgeClaim(claim, definition);
    const missable = chance.generator < EVEN_WORDING_SINCE ? undefined : pointsOf(misses, sound, definition);
    const option = ({ asks, met }: (typeof verdicts)[number]) => ({
      text: sentence(chance.generator < SAID_IN_FULL ? asks : (inFull[asks] ?? asks)),
      why: met ? 'That point is met.' : 'That is the point it misses, and no other makes up for it.',
    });
    return {
      prompt: `${spiritInWords(claim)} It misses one point of the definition “${definition.name}”. Which?`,
      right: option(verdicts.find(({ met }) => !met)!),
      others: verdicts.filter(({ asks, met }) => met && (missable?.has(asks) ?? true)).map(option),
    };
  },
});
