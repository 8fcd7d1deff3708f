// What the fact sheet says of washbacks and condensers, against the vessels.
import { expect, test } from 'vitest';
import { factsAgainstVessels, withVessels } from '../../src/house/facts-beside.ts';
import { factSays } from '../../src/house/facts.ts';
import { builtInParts } from '../../src/house/parts/built-in.ts';
import { factsPart } from '../../src/house/parts/facts.ts';
import { plantPart } from '../../src/house/parts/plant.ts';
import { plainPlant } from '../core/plants.ts';

test('what is said of both alike, or of one alone, is not told', () => {
  expect(factsAgainstVessels(factsPart.read(builtInParts.facts).value, plantPart.read(builtInParts.plant).value)).toEqual([]);
  expect(factsAgainstVessels({ washbacks: { is: 'larch' }, condenser: { is: 'shell-and-tube' } }, plainPlant)).toEqual([]);
  expect(factsAgainstVessels({ washbacks: { words: 'Of steel.' } }, plainPlant)).toEqual([]);
  expect(factsAgainstVessels({ washbacks: { is: 'steel' } }, plantPart.empty)).toEqual([]);
  const usual = plainPlant.washbacks.map((each) => ({ ...each, usual: ['material'] }));
  expect(factsAgainstVessels({ washbacks: { is: 'steel' } }, { ...plainPlant, washbacks: usual })).toEqual([]);
}); // prettier-ignore

test('what differs is told with both', () => {
  expect(factsAgainstVessels({ washbacks: { is: 'steel' }, condenser: { is: 'worm-tub' } }, plainPlant)).toEqual([
    'The washbacks: the fact sheet says “steel”, the stills and vessels “wood”.',
    'The condensers: the fact sheet says “worm tub”, the stills and vessels “shell and tube”.',
  ]);
  const both = [...plainPlant.washbacks, { ...plainPlant.washbacks[0]!, material: 'steel' as const }];
  expect(factsAgainstVessels({ washbacks: { is: 'both' } }, plainPlant)).toHaveLength(1);
  expect(factsAgainstVessels({ washbacks: { is: 'both' } }, { ...plainPlant, washbacks: both })).toEqual([]);
  expect(factsAgainstVessels({ washbacks: { is: 'oak' } }, { ...plainPlant, washbacks: both })[0]).toContain('“wood” and “steel”');
}); // prettier-ignore

test('vessels tell what the fact sheet does not, in its own choices; usual values tell nothing', () => {
  const both = [...plainPlant.washbacks, { ...plainPlant.washbacks[0]!, material: 'steel' as const }];
  expect(withVessels({}, plainPlant)).toEqual({
    washbacks: { is: 'wood' },
    condenser: { is: 'shell-and-tube' },
  });
  expect(withVessels({}, { ...plainPlant, washbacks: both }).washbacks).toEqual({ is: 'both' });
  expect(withVessels({ washbacks: { is: 'oak' } }, plainPlant).washbacks).toEqual({ is: 'oak' });
  const usual = plainPlant.washbacks.map((each) => ({ ...each, usual: ['material'] }));
  expect(withVessels({}, { ...plainPlant, washbacks: usual }).washbacks).toBeUndefined();
  // Each is a choice that the fact sheet takes, and has a sentence.
  for (const id of ['washbacks', 'condenser'] as const)
    expect(factSays(withVessels({}, plainPlant), id)).toMatch(/^We|^Our/);
});
