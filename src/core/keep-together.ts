// Keeps a number and its unit on one line in text that was written with plain spaces.

const UNIT =
  /(\d) (%|°C|kg|g|mg|t|L|hL|mL|cL|m³|mm|h|min|s|ppm|kPa|kWh|MJ|kJ|K|years?|weeks?|days?|hours?|minutes?)(?![\w])/g;

/**
 * A text with no-break spaces between its numbers and their units, and within “% vol”.
 * @example keepTogether('40 kg a day') // '40\u00a0kg a day' (a number stays with its unit)
 */
export const keepTogether = (text: string): string =>
  text.replace(UNIT, '$1\u00a0$2').replace(/% vol\b/g, '%\u00a0vol');
