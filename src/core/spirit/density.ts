// Density of ethanol–water mixtures by the general formula of OIML R 22.
import { celsius, density, massPercent, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';

// The 54 coefficients of OIML R 22, kg/m³ with p as a fraction and t in °C; also Directive 76/766/EEC, Annex, OJ L 262 (1976).
// A1–A4, B1–B4 and nine digits of A5 were read in the Directive; all 54 agree in every digit with two public transcriptions of R 22, one in R and one in Python.

export const WATER_DENSITY = 998.20123; // A1: water at 20 °C, kg/m³; OIML R 22

/** A2–A12: powers 1–11 of the mass fraction at 20 °C, kg/m³. */
const A = [
  -192.9769495, 389.1238958, -1668.103923, 13522.15441, -88292.78388, 306287.4042, -613838.1234, 747017.2998,
  -547846.1354, 223446.0334, -39032.85426,
];

/** Powers 1–6 of (t − 20) for water, kg/(m³ K^k). */
const B = [-0.20618513, -0.0052682542, 0.000036130013, -3.8957702e-7, 7.169354e-9, -9.9739231e-11];

/** C[i][k]: power i+1 of (t − 20) with power k+1 of the mass fraction, kg/(m³ K^(i+1)). */
const C = [
  [
    0.1693443461530087, -10.46914743455169, 71.96353469546523, -704.7478054272792, 3924.090430035045,
    -12101.64659068747, 22486.46550400788, -26055.62982188164, 18523.73922069467, -7420.201433430137,
    1285.617841998974,
  ],
  [
    -0.0119301300505701, 0.2517399633803461, -2.170575700536993, 13.53034988843029, -50.29988758547014,
    109.635566657757, -142.2753946421155, 108.043594285623, -44.14153236817392, 7.442971530188783,
  ],
  [
    -0.0006802995733503803, 0.01876837790289664, -0.2002561813734156, 1.02299296671922, -2.895696483903638,
    4.810060584300675, -4.672147440794683, 2.458043105903461, -0.5411227621436812,
  ],
  [0.000004075376675622027, -0.00000876305857347111, 0.000006515031360099368, -0.00000151578483698721],
  [-2.788074354782409e-8, 1.345612883493354e-8],
];

/** c₀x + c₁x² + … by Horner's rule. */
function polynomial(coefficients: readonly number[], x: number): number {
  let sum = 0;
  for (let k = coefficients.length - 1; k >= 0; k--) sum = (sum + coefficients[k]!) * x;
  return sum;
}

/**
 * Density of an ethanol–water mixture in vacuo, kg/m³.
 * `massPercent` 0–100 % mass, `temperature` −20…40 °C; refuses anything outside.
 * Below 0 °C weak mixtures freeze, which the formula does not know.
 * Temperatures are on the 1968 scale in the original: at most 0.004 kg/m³ from today's.
 * Source: OIML R 22 (1973/1975), general formula.
 * @example densityOfSpirit(massPercent(100), celsius(20)) // 789.24 (OIML R 22, table for 20 °C)
 */
export function densityOfSpirit(
  massPercent: Quantity<'massPercent'>,
  temperature: Quantity<'temperature'>,
): Quantity<'density'> {
  const p = within('The mass share of ethanol, % mass,', massPercent, 0, 100) / 100;
  const dt = within('The temperature, °C,', temperature, -20, 40) - 20;
  let rho = WATER_DENSITY + polynomial(A, p);
  if (dt !== 0) {
    rho += polynomial(B, dt);
    for (let i = C.length - 1, power = dt ** C.length; i >= 0; i--, power /= dt) {
      rho += polynomial(C[i]!, p) * power;
    }
  }
  return density(rho);
}

export const ETHANOL_DENSITY = densityOfSpirit(massPercent(100), celsius(20)); // pure ethanol at 20 °C, kg/m³; OIML R 22
