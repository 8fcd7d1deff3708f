// What the gas of a washback at its height would do to the air of a room, were that air mixed.
import { FRESH_AIR, gasVolume, hoursBefore, levelAfter, steadyLevel } from '../../core/fermenting/gas.ts';
import { releaseRate } from '../../core/fermenting/release.ts';
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { hours, quantity, type Quantity } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';

const EIGHT_HOURS = quantity('ppm', 5000); // limit over 8 hours, in common use; common practice
const QUARTER_HOUR = quantity('ppm', 15_000); // limit over 15 minutes in Britain; EH40
const AT_ONCE = quantity('ppm', 40_000); // immediately dangerous to life or health; NIOSH, by an inspection reference
const CHART_STEPS = 48;

interface Given {
  readonly gas: Quantity<'mass'>;
  readonly half: Quantity<'hours'>;
  readonly steepness: Quantity<'perHour'>;
  readonly temperature: Quantity<'temperature'>;
  readonly escapes: Quantity<'percent'>;
  readonly room: Quantity<'space'>;
  readonly freshAir: Quantity<'flow'>;
}

const roomOf = ({ gas, half, steepness, temperature, escapes, room, freshAir }: Given) => ({
  volume: room,
  freshAir,
  gas: quantity(
    'flow',
    gasVolume((gas * releaseRate({ half, steepness }, half) * escapes) / 100, temperature),
  ),
});

export default defineCalculator({
  id: 'carbon-dioxide-in-a-room',
  stage: 'fermenting',
  title: 'Carbon dioxide in a room',
  purpose:
    'Shows how fast a washback at its peak would spoil the air of a room, were that air mixed. It clears no room.',
  sources: ['common-practice', 'niosh-co2', 'hse-co2', 'eh40', 'balling', 'memory'],
  cautions: ['carbon-dioxide', 'confined-space'],
  inputs: {
    gas: {
      kind: 'mass',
      label: 'Carbon dioxide from one washback',
      range: [0.01, 60_000],
      step: 10,
      from: 'wash.carbonDioxide',
    },
    half: { kind: 'hours', label: 'Half the fall reached at', range: [4, 60], step: 1, value: 16 },
    steepness: { kind: 'perHour', label: 'Steepness of the fall', range: [0.05, 1], step: 0.01, value: 0.2 },
    temperature: { kind: 'temperature', label: 'Room temperature', range: [0, 40], step: 1, value: 20 },
    escapes: { kind: 'percent', label: 'Gas that gets into the room', range: [1, 100], step: 1, value: 100 },
    room: {
      kind: 'space',
      label: 'Room',
      range: [5, 100_000],
      step: 10,
      value: 600,
      sized: { by: 'wortVolume' },
    },
    freshAir: {
      kind: 'flow',
      label: 'Fresh air',
      range: [0, 500_000],
      step: 100,
      value: 600,
      sized: { by: 'wortVolume' },
    },
    watched: { kind: 'hours', label: 'Time considered', range: [0.5, 24], step: 0.5, value: 4 },
  },
  main: ['room', 'freshAir', 'escapes', 'gas'],
  outputs: {
    flow: { kind: 'flow', label: 'Gas into the room', digits: 1 },
    steady: { kind: 'ppm', label: 'Level at which it would settle', digits: 0 },
    below5000: { kind: 'minutes', label: 'Mixed air below 5,000 ppm for', down: true },
    below15000: { kind: 'minutes', label: 'Mixed air below 15,000 ppm for', down: true },
    below40000: { kind: 'minutes', label: 'Mixed air below 40,000 ppm for', down: true },
  },
  compute: (given) => {
    const room = roomOf(given);
    const before = (limit: Quantity<'ppm'>) =>
      quantity('minutes', 60 * hoursBefore(limit, room, given.watched));
    return {
      flow: room.gas,
      steady: steadyLevel(room),
      below5000: before(EIGHT_HOURS),
      below15000: before(QUARTER_HOUR),
      below40000: before(AT_ONCE),
    };
  },
  steps: ({ room, freshAir, watched }, { flow, steady, below5000 }) => [
    `Where it settles, gas and fresh air leave mixed as they come: (1,000,000 × gas + ${FRESH_AIR} × fresh air) ÷ (gas + fresh air)`,
    `(1,000,000 × ${w(flow, 9)} + ${FRESH_AIR} × ${w(freshAir)}) ÷ (${w(flow, 9)} + ${w(freshAir)}) = ${n(steady, 0)} ppm`,
    `On the way there the gap closes by the part (gas + fresh air) ÷ room in an hour: (${w(flow, 9)} + ${w(freshAir)}) ÷ ${w(room)} = ${n((flow + freshAir) / room, 4)}`,
    steady > EIGHT_HOURS && below5000 < 60 * watched
      ? `5,000 ppm: ln((${n(steady, 0)} − ${FRESH_AIR}) ÷ (${n(steady, 0)} − 5,000)) ÷ ${n((flow + freshAir) / room, 4)} × 60 = ${n(below5000, 1)} min, cut down to whole minutes`
      : `5,000 ppm is not passed in the ${n(watched, 1)} h considered, by this sum of mixed air alone`,
  ],
  remark: (given) => {
    const room = roomOf(given);
    const reached = levelAfter(room, given.watched);
    const not = [EIGHT_HOURS, QUARTER_HOUR, AT_ONCE].filter((limit) => limit >= reached);
    const unreached =
      not.length === 0
        ? ''
        : `In the ${n(given.watched, 1)} h considered, the sum does not pass ${not.map((limit) => n(limit, 0)).join(' or ')} ppm, so the whole of that time is shown. `;
    return `${unreached}A sum with mixed air is no safety measure: the gas lies low, and near a washback, a drain or a pit it can be far above this level at once. Only measured carbon dioxide, your site’s procedures and your local code decide whether anyone may be there.`;
  },
  chart: (given) => {
    const room = roomOf(given);
    const at = Array.from({ length: CHART_STEPS + 1 }, (_, i) => (i * given.watched) / CHART_STEPS);
    return {
      caption: 'Carbon dioxide in mixed air',
      limits: [
        { value: EIGHT_HOURS, label: 'limit over 8 hours', known: 'published' },
        { value: QUARTER_HOUR, label: 'British limit over 15 minutes', known: 'published' },
      ],
      columns: [
        { kind: 'minutes', label: 'Minutes', values: at.map((hour) => 60 * hour) },
        { kind: 'ppm', label: 'Carbon dioxide', values: at.map((hour) => levelAfter(room, hours(hour))) },
      ],
    };
  },
  examples: [
    {
      given: {
        gas: 1281.71,
        half: 60,
        steepness: 0.2,
        temperature: 20,
        escapes: 10,
        room: 350.28,
        freshAir: 346.7772,
        watched: 4,
      },
      gives: { flow: 3.5028, steady: 10_415.8, below5000: 36.771, below15000: 240, below40000: 240 },
      within: 2e-4,
      source: 'derived',
      note: 'by hand: a twentieth of 700.56 m³ an hour, a tenth of it into the room; with 99 times as much fresh air of 420 ppm it is 0.01 × 1,000,000 + 0.99 × 420, one change of air an hour, and ln(9,995.8 ÷ 5,415.8) h to 5,000 ppm',
    },
    {
      given: {
        gas: 0.4805,
        half: 60,
        steepness: 0.668,
        temperature: 20,
        escapes: 100,
        room: 36,
        freshAir: 14.4,
        watched: 4,
      },
      gives: { flow: 0.044, steady: 3420 },
      within: 0.02,
      source: 'oxford-s4-03',
      note: '0.044 m³ of gas an hour in a cellar of 36 m³ with 0.4 changes of air settle at 0.003 of it, there nitrogen; with the 420 ppm of fresh air 3,420, and 0.044 ÷ 14.4 is 0.00306 before rounding',
    },
  ],
});
