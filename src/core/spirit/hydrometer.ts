// A glass hydrometer read at a temperature that is not its own.
import { density, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';

const GLASS_EXPANSION = 25e-6; // 1/K, growth of the volume of glass; OIML R 44 and ISO practice, from memory
const MARKED_AT = 20; // °C, at which the marks of a hydrometer hold; OIML R 44, from memory

/**
 * Density in vacuo, kg/m³, of a liquid at `temperature`, −20…100 °C, in which a hydrometer floats to the mark
 * that stands for the density `mark` at 20 °C. The glass sinks as deep by its mass; warm, it is larger,
 * so the same mark means a lighter liquid: mark ÷ (1 + 0.000025 × (t − 20)).
 * Source: law of Archimedes; expansion of glass from memory.
 * @example densityAtMark(density(1000), celsius(60)) // 999.0 (by hand, 1000 ÷ 1.001)
 */
export function densityAtMark(
  mark: Quantity<'density'>,
  temperature: Quantity<'temperature'>,
): Quantity<'density'> {
  const warmer = within('The temperature, °C,', temperature, -20, 100) - MARKED_AT;
  return density(mark / (1 + GLASS_EXPANSION * warmer));
}
