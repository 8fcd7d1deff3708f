// A share between 0 and 1 stretched over the whole line, where what happens near nothing has as much room as the rest.

/**
 * ln(x / (1 − x)), for x between 0 and 1.
 * @example logit(0.5) // 0 (ln 1)
 */
export const logit = (x: number) => Math.log(x / (1 - x));

/**
 * The share whose logit is `u`.
 * @example fromLogit(Math.log(3)) // 0.75 (3 of 4)
 */
export const fromLogit = (u: number) => 1 / (1 + Math.exp(-u));
