// The calculators of maturing.
import caskThroughYears from './cask-through-years.ts';
import casksAndBottles from './casks-and-bottles.ts';
import reduceToStrength from './reduce-to-strength.ts';

export const maturing = [caskThroughYears, casksAndBottles, reduceToStrength];
