// How far a mash is off, read on the other scale.
import { formatNumber as n } from '../../../core/format.ts';
import { unitsOf } from '../../../core/units.ts';
import { sum } from '../../sum.ts';

const scale = unitsOf('temperature').find(({ unit }) => unit === '°F')!;

export default sum({
  id: 'fahrenheit-and-celsius',
  title: 'Fahrenheit and Celsius',
  topic: 'mashing',
  level: 2,
  sources: ['derived'],
  of: 'temperatureDifference',
  to: 1,
  within: 0.02,
  vary: {
    reading: ['count', [150, 151, 152, 153, 154, 155, 156, 157, 158, 159, 160]],
    wanted: ['temperature', [63, 63.5, 64, 64.2, 64.5, 65], 'house.mashTemperature'],
  },
  answer: ({ reading, wanted }) => scale.toCore(reading) - wanted,
  prompt: (show) =>
    `An old thermometer in the mash tun reads ${show.reading} °F, and the mash is wanted at ${show.wanted}. Water freezes at 32 °F and boils at 212 °F. By how many degrees Celsius is the mash too hot?`,
  working: ({ reading, wanted }, answer) => [
    'From freezing to boiling are 180 degrees of the one scale and 100 of the other, so 1.8 to 1; the 32 comes off first',
    `(${reading} − 32) ÷ 1.8 = ${n(scale.toCore(reading), 1)} °C`,
    `${n(scale.toCore(reading), 1)} − ${wanted} = ${n(answer, 1)} degrees`,
  ],
  slips: [
    {
      family: 'temperature',
      gives: ({ reading, wanted }) => reading / 1.8 - wanted,
      say: 'The 32 was left out; water freezes at 32 °F, not at nought.',
    },
    {
      family: 'otherFigure',
      gives: (_, answer) => answer * 1.8,
      say: 'Those are degrees Fahrenheit; a degree Celsius is 1.8 of them.',
    },
    {
      family: 'order',
      gives: ({ reading, wanted }) => reading / 1.8 - 32 - wanted,
      say: 'The 32 was taken off after dividing; it is in degrees Fahrenheit, so it comes off first.',
    },
  ],
});
