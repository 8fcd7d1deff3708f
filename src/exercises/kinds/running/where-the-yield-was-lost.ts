// Which stage a low yield comes from, by what was measured between the stages.
import type { Chance } from '../../seeded-random.ts';
import { choice } from '../../choice.ts';
import { formatNumber as n } from '../../../core/format.ts';

const STAGES = [
  ['In the malt.', 'A tonne of it held less extract to begin with.'],
  ['In the mash tun.', 'Less of the malt’s extract came into the wort.'],
  ['In the washback.', 'A kilogram of extract in the wort made less alcohol.'],
  ['In the stills.', 'Less of the wash’s alcohol came into the spirit.'],
] as const;

/** What a tonne gives at each stage as a part of what the stage before gave; the first in kilograms of extract. */
const usual = [772, 0.972, 0.545, 0.985] as const;
const LOST = [0.93, 0.94, 0.945, 0.95, 0.955];
const NEAR = [0.997, 0.998, 0.999, 1, 1.001, 1.002]; // how far a stage in order strays from week to week

/** Extract in the malt, extract in the wort, alcohol in the wash and in the spirit, rounded as the sheet has them. */
function readings(parts: readonly number[], chance: Chance): readonly number[] {
  let now = 1;
  return parts.map((part, i) => chance.quotes.quote((now *= part), i < 2 ? 0 : 1));
}

const kind = choice({
  id: 'where-the-yield-was-lost',
  title: 'Where the yield was lost',
  topic: 'running',
  form: 'judgement',
  level: 3,
  sources: ['derived'],
  ask: (chance) => {
    const at = chance.below(STAGES.length);
    const near = () => chance.pick(NEAR);
    const before = readings(
      usual.map((part) => part * near()),
      chance,
    );
    const now = readings(
      usual.map((part, i) => part * (i === at ? chance.pick(LOST) : near())),
      chance,
    );
    const [a, b, c, d] = before.map((was, i) => [n(was, i < 2 ? 0 : 1), n(now[i]!, i < 2 ? 0 : 1)]);
    const parts = [before, now].map((of) => of.slice(1).map((each, i) => (100 * each) / of[i]!));
    const told = [0, 1, 2].map((i) => `${n(parts[0]![i]!, 1)} % before and ${n(parts[1]![i]!, 1)} % now`);
    const sums = `Extract into the wort: ${told[0]}. Litres of alcohol to a hundred kilograms of extract: ${n(parts[0]![1]!, 1)} before and ${n(parts[1]![1]!, 1)} now. Alcohol of the wash into the spirit: ${told[2]}.`;
    const options = STAGES.map(([text, why], i) => ({
      text,
      why: `${i === at ? why : 'That step gives what it gave.'} ${sums}`,
    }));
    return {
      prompt: `A tonne of malt gave ${d![0]} L of pure alcohol as spirit last month, and gives ${d![1]} L now. By the sheets, last month and now: extract in the tonne, by analysis, ${a![0]} and ${a![1]} kg; extract in its wort, ${b![0]} and ${b![1]} kg; pure alcohol in its wash, ${c![0]} and ${c![1]} L. Where was it lost?`,
      right: options[at]!,
      others: options.filter((_, i) => i !== at),
    };
  },
});

export default { ...kind, since: 7 };
