// Yeast as pressed cake, as cream and as cells: each from the others.
import { kilograms, litres, quantity, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';

export const DRY_IN_PRESSED = 0.3; // dry matter in pressed yeast, part of its mass; from memory

type Cells = Quantity<'cells'>;
type PerGram = Quantity<'cellsPerGram'>;
type Held = Quantity<'gramsPerLitre'>;
const LEAST = Number.MIN_VALUE;
const MOST = Number.MAX_VALUE;

/**
 * Grams of pressed yeast that a litre of cream is worth, from its dry matter, g/L above 0.
 * @example pressedFromDry(quantity('gramsPerLitre', 180)) // 600 (180 ÷ 0.3)
 */
export function pressedFromDry(dry: Held): Held {
  return quantity(
    'gramsPerLitre',
    within('The dry matter in the cream, g/L,', dry, LEAST, MOST) / DRY_IN_PRESSED,
  );
}

/**
 * Pressed yeast, kg, in so many litres of cream that hold so many grams of it each.
 * @example pressedFromCream(litres(100), quantity('gramsPerLitre', 600)) // 60 (100 × 0.6)
 */
export function pressedFromCream(cream: Quantity<'volume'>, held: Held): Quantity<'mass'> {
  return kilograms((within('The cream, L,', cream, 0, MOST) * held) / 1000);
}

/**
 * Litres of cream for a mass of pressed yeast; undoes `pressedFromCream`.
 * @example creamFromPressed(kilograms(60), quantity('gramsPerLitre', 600)) // 100 (60 ÷ 0.6)
 */
export function creamFromPressed(pressed: Quantity<'mass'>, held: Held): Quantity<'volume'> {
  return litres((1000 * pressed) / within('The yeast in the cream, g/L,', held, LEAST, MOST));
}

/**
 * Million cells to a millilitre of wort, L above 0, from pressed yeast with so many billion cells to the gram.
 * @example cellsFromPressed(kilograms(10), litres20(5000), quantity('cellsPerGram', 10)) // 20 (100,000 billion cells in 5 million mL)
 */
export function cellsFromPressed(
  pressed: Quantity<'mass'>,
  wort: Quantity<'volume20'>,
  perGram: PerGram,
): Cells {
  within('The wort, L,', wort, LEAST, MOST);
  return quantity('cells', (1000 * within('The yeast, kg,', pressed, 0, MOST) * perGram) / wort);
}

/**
 * Pressed yeast, kg, that brings wort to so many million cells a millilitre; undoes `cellsFromPressed`.
 * @example pressedFromCells(quantity('cells', 20), litres20(5000), quantity('cellsPerGram', 10)) // 10 (the same sum backwards)
 */
export function pressedFromCells(
  cells: Cells,
  wort: Quantity<'volume20'>,
  perGram: PerGram,
): Quantity<'mass'> {
  within('The cells in a gram, billion,', perGram, LEAST, MOST);
  return kilograms((within('The cells, million/mL,', cells, 0, MOST) * wort) / (1000 * perGram));
}
