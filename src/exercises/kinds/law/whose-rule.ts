// Whose rule it is.
import { choice, EVEN_WORDING_SINCE } from '../../choice.ts';

const names = {
  scotch: 'Single malt Scotch whisky.',
  eu: 'Whisky in the European Union.',
  irish: 'Irish whiskey.',
  usMalt: 'Malt whisky in the United States.',
  usSingle: 'American single malt whisky.',
  canada: 'Canadian whisky.',
  japan: 'Japanese whisky.',
} as const;
type Name = keyof typeof names;

/** What a rule says, whose it is, and those for whom it plainly is not so. */
// prettier-ignore
const rules: readonly (readonly [says: string, of: Name, not: readonly Name[], why: string])[] = [
  ['may not be filled at more than 62.5 % vol', 'usMalt', ['scotch', 'eu', 'usSingle', 'irish'], 'Of these only malt whisky in the United States has a limit for the filling, 125 proof.'],
  ['must lie in charred new oak', 'usMalt', ['scotch', 'eu', 'usSingle', 'canada', 'japan'], 'Used oak makes “whisky distilled from malt mash” there; the others let used casks in.'],
  ['must be of at least 51 % malted barley, and may hold other grain', 'usMalt', ['scotch', 'usSingle', 'eu'], 'The single malts ask for malted barley alone, and the European rule names no such share.'],
  ['may come off the still at 80 % vol and no stronger', 'usSingle', ['scotch', 'eu', 'irish'], 'The European, Scottish and Irish limit is below 94.8 % vol.'],
  ['has no least time in wood, unless “straight” stands beside it', 'usSingle', ['scotch', 'eu', 'irish', 'canada', 'japan'], 'The others ask for three years.'],
  ['has no least time in wood, and must go into new oak', 'usMalt', ['scotch', 'eu', 'irish', 'canada', 'japan'], 'The United States set no least time for it; the others ask for three years.'],
  ['must lie three years in wood that need not be oak', 'eu', ['scotch', 'usMalt', 'usSingle'], 'The European rule says wooden casks; the others say oak.'],
  ['must lie three years, in oak and nothing else', 'scotch', ['eu', 'usMalt', 'usSingle', 'irish'], 'The European and Irish rules say wood; those of the United States set no three years.'],
  ['must be distilled in batches in pot stills', 'scotch', ['eu', 'usMalt', 'usSingle', 'irish', 'canada'], 'Of these only the Scottish single malt names the pot still.'],
  ['may not carry the words “pure malt”', 'scotch', ['usMalt', 'usSingle', 'canada', 'japan'], 'The Scottish regulations forbid them.'],
  ['may hold plain caramel only if the label says so', 'usSingle', ['scotch', 'eu', 'irish'], 'The others, in Europe, may hold plain caramel without that.'],
  ['must be of malted barley alone from one distillery, with no three years asked', 'usSingle', ['scotch', 'usMalt', 'eu', 'irish', 'canada', 'japan'], 'The others ask for three years, or let other grain in.'],
  ['is ruled by a standard of the trade and not by a law', 'japan', ['scotch', 'eu', 'irish', 'usMalt', 'usSingle'], 'The Japanese standard is one that an industry set itself.'],
];

/** Names that stand in every question from generator 3 on, each right as often as the others. */
const FOUR = ['scotch', 'eu', 'usMalt', 'usSingle'] as const satisfies readonly Name[];
const rulesOf = (name: Name) =>
  rules.filter(([, of, not]) => of === name && FOUR.every((each) => each === of || not.includes(each)));

export default choice({
  id: 'whose-rule',
  title: 'Whose rule is it?',
  topic: 'law',
  form: 'judgement',
  level: 1,
  sources: ['swr-2009', 'eu-2019-787', 'cfr-27-5', 'ttb-199', 'beverages-2024', 'japan-standard'],
  ask: (chance) => {
    const [says, of, not, why] = chance.pick(
      chance.generator < EVEN_WORDING_SINCE ? rules : rulesOf(chance.pick(FOUR)),
    );
    return {
      prompt: `A spirit of this name ${says}. Which name is it?`,
      right: { text: names[of], why },
      others: (chance.generator < EVEN_WORDING_SINCE ? not : FOUR.filter((name) => name !== of)).map(
        (name) => ({
          text: names[name],
          why: `Its rule is another. ${why}`,
        }),
      ),
    };
  },
});
