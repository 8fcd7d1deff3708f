// What a careful colleague says of a line, at the edge of each caution; its rules by the law and the trade.
import { expect, test } from 'vitest';
import { cautions } from '../../src/core/line/cautions.ts';
import type { Line } from '../../src/core/line/line.ts';
import { asPrinted, plain } from '../../src/core/cross-check/quoted.ts';
import { builtInLine } from '../../src/house/line-of.ts';

const built = builtInLine();
const { mash, malt, wash, charge, heart, matured, round, house } = built;
/** The weight and stage of the cautions that say something, where a part of the line is another. */
const told = (change: object, says: RegExp) =>
  cautions({ ...built, ...change } as Line)
    .filter((each) => says.test(each.says))
    .map(({ stage, weight }) => `${stage}, ${weight}`);

const impossible = (stage: string) => [`${stage}, impossible`];
const unusual = (stage: string) => [`${stage}, unusual`];
test.each([
  ['all that the malt had is 100 %', /of the extract the malt had/, impossible('mashing'), { mash: { ...mash, efficiency: 100 } }, { mash: { ...mash, efficiency: 100.1 } }],
  ['85 % of it is poor and no error', /^Only 84\.9 % of the malt's extract/, unusual('mashing'), { mash: { ...mash, efficiency: 85 } }, { mash: { ...mash, efficiency: 84.9 } }],
  ['no extract may be left, and no less', /less than none/, impossible('fermenting'), { wash: { ...wash, attenuation: { ...wash.attenuation, realExtract: 0 } } }, { wash: { ...wash, attenuation: { ...wash.attenuation, realExtract: -0.1 } } }],
  ['two per cent of alcohol are within the sums', /the malt could give/, impossible('fermenting'), { malt: { ...malt, alcohol: 100 }, wash: { ...wash, alcohol: 102 } }, { malt: { ...malt, alcohol: 100 }, wash: { ...wash, alcohol: 102.1 } }],
  ['a charge has 30 % vol or less', /^The spirit charge is 30\.1 % vol/, unusual('distilling'), { charge: { ...charge, strength: 30 } }, { charge: { ...charge, strength: 30.1 } }],
  ['half a litre is no letting down', /let down with 1 L of water/, unusual('distilling'), { round: { ...round, dilution: 0.5 } }, { round: { ...round, dilution: 0.6 } }],
  ['a heart may be filled at its own strength', /it is filled as it comes/, unusual('maturing'), { heart: { ...heart, strength: house.fillingStrength } }, { heart: { ...heart, strength: house.fillingStrength - 0.1 } }],
  ['and bottled at the cask’s', /it is bottled as it comes/, unusual('maturing'), { matured: { ...matured, strength: house.bottlingStrength } }, { matured: { ...matured, strength: house.bottlingStrength - 0.1 } }],
  ['whisky has 40 % vol', /the 40 % vol that most laws ask/, unusual('maturing'), { matured: { ...matured, strength: 40 } }, { matured: { ...matured, strength: 39.9 } }],
])('%s', (_rule, says, weight, kept, passed) => {
  expect(told(kept, says)).toEqual([]);
  expect(told(passed, says)).toEqual(weight);
}); // prettier-ignore

test('a quoted figure as it is printed: gravity to three places, a thousand and more whole, else one decimal where it has any', () => {
  const printed = [plain('originalGravity', 1.058), plain('heartStrength', 70), plain('heartStrength', 69.44), plain('washVolume', 999.6), plain('washVolume', 1000.6), plain('casksInStore', 12)];
  expect(printed.map((text) => text.replace(/\s/g, ' '))).toEqual(['1.058', '70 % vol', '69.4 % vol', '999.6 L', '1,001 L', '12']);
  expect([asPrinted('originalGravity', 1.0584), asPrinted('heartStrength', 69.44), asPrinted('washVolume', 1000.6), asPrinted('washVolume', 0.04)]).toEqual([1.058, 69.4, 1001, 0.04]);
}); // prettier-ignore
