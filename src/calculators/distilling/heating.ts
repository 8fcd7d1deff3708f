// Inputs on heat and cooling that the calculators of both stills share.
export const heating = {
  efficiency: {
    kind: 'percent',
    label: 'Heat that reaches the liquid',
    range: [30, 100],
    step: 1,
    value: 90,
  },
} as const;
export const cooling = {
  rise: {
    kind: 'temperatureDifference',
    label: 'Cooling water warms by',
    range: [2, 80],
    step: 1,
    value: 40,
  },
} as const;
