// Draff with more in it than the malt left behind.
import { formatNumber as n } from '../../../core/format.ts';
import { impossible, optionOf } from './impossible.ts';
import { quoted, said } from './quoted.ts';

export default impossible({
  id: 'impossible-draff',
  title: 'Figures of the draff',
  topic: 'mashing',
  level: 2,
  sources: ['derived'],
  scenes: [
    'The haulier and the mash house compare what they wrote down.',
    'A sheet on draff lies in the office.',
    'Somebody reckons up the draff before the lorry comes.',
  ],
  spans: true,
  claims: (line, chance, mashes) => {
    const { house, malt, mash } = line;
    const mass = (kilograms: number) => said(kilograms * mashes, 'mass');
    const wet = house.draffMoisture;
    const dryMalt = malt.mass * (1 - house.maltMoisture / 100);
    // A house whose wort has more than the malt gave leaves no draff; it is told an ordinary one.
    const draff = mash.efficiency <= 100 ? mash.draff : 0.9 * malt.mass;
    const dryDraff = draff * (1 - wet / 100);
    const less = chance.pick([6, 8, 10]);
    const pressed = (dryDraff * 100) / (100 - wet + less);
    const kept = chance.pick([95, 96, 97]);
    const also = chance.pick([6, 8, 9]);
    const more = chance.pick([1.2, 1.3, 1.4]);
    const whole = quoted(dryMalt * mashes);
    const stayed = quoted(dryDraff * mashes, 3);
    const tooMuch = quoted(1.3 * stayed, 3);
    const exactly = (kilograms: number) => said(kilograms, 'mass', 7);
    return [
      {
        alike: {
          can: optionOf(
            `Of ${exactly(whole)} of dry malt ${exactly(whole - stayed)} went into the wort and ${exactly(stayed)} stayed in the draff.`,
            `It can be: the two parts make the whole.`,
          ),
          cannot: optionOf(
            `Of ${exactly(whole)} of dry malt ${exactly(whole - stayed)} went into the wort and ${exactly(tooMuch)} stayed in the draff.`,
            `The two parts would be ${exactly(whole - stayed + tooMuch)}, more than the dry malt that there was.`,
          ),
        },
        can: optionOf(
          `Of ${mass(dryMalt)} of dry malt ${mass(dryMalt - dryDraff)} went into the wort and ${mass(dryDraff)} stayed in the draff.`,
          'It can be: the two parts make the whole.',
        ),
        cannot: [
          optionOf(
            `Of ${mass(dryMalt)} of dry malt ${mass(dryMalt - dryDraff)} went into the wort and ${mass(dryDraff + 0.08 * dryMalt)} stayed in the draff.`,
            'The two parts would be more than the dry malt that there was.',
          ),
        ],
      },
      {
        alike: {
          can: optionOf(
            `${mass(draff)} of wet draff at ${said(wet, 'percent')} moisture hold ${mass(dryDraff)} of dry matter.`,
            `It can be: ${n(100 - wet, 1)} % of the whole is dry.`,
          ),
          cannot: optionOf(
            `${mass(draff)} of wet draff at ${said(wet, 'percent')} moisture hold ${mass(dryDraff * more)} of dry matter.`,
            `At ${said(wet, 'percent')} moisture only ${n(100 - wet, 1)} % are dry, which is ${mass(dryDraff)}.`,
          ),
        },
        can: optionOf(
          `${mass(draff)} of wet draff at ${said(wet, 'percent')} moisture hold ${mass((draff * wet) / 100)} of water.`,
          `It can be: that is ${said(wet, 'percent')} of the whole.`,
        ),
        cannot: [
          optionOf(
            `${mass(draff)} of wet draff at ${said(wet, 'percent')} moisture hold ${mass(dryDraff * more)} of dry matter.`,
            `At ${said(wet, 'percent')} moisture only ${n(100 - wet, 1)} % are dry, which is ${mass(dryDraff)}.`,
          ),
        ],
      },
      {
        alike: {
          can: optionOf(
            `Pressed from ${said(wet, 'percent')} to ${said(wet - less, 'percent')} moisture, with nothing added, ${mass(draff)} of draff became ${mass(pressed)}.`,
            `It can be: the dry matter stayed, and water ran off.`,
          ),
          cannot: optionOf(
            `Pressed from ${said(wet, 'percent')} to ${said(wet - less, 'percent')} moisture, with nothing added, ${mass(draff)} of draff became ${mass(draff * 1.02)}.`,
            `Pressing takes water away, so what is left must weigh less.`,
          ),
        },
        can: optionOf(
          `Pressed from ${said(wet, 'percent')} to ${said(wet - less, 'percent')} moisture, ${mass(draff)} of draff became ${mass(pressed)}.`,
          'It can be: the dry matter stayed, and water ran off.',
        ),
        cannot: [
          optionOf(
            `Pressed from ${said(wet, 'percent')} to ${said(wet - less, 'percent')} moisture, with nothing added, ${mass(draff)} of draff became ${mass(draff * 1.02)}.`,
            'Pressing takes water away, so what is left must weigh less.',
          ),
          optionOf(
            `Pressed from ${said(wet, 'percent')} to ${said(wet - less, 'percent')} moisture, ${mass(draff)} of draff lost ${mass((draff * wet * 1.05) / 100)} of water.`,
            `It held ${mass((draff * wet) / 100)} of water in all, and is still wet.`,
          ),
        ],
      },
      {
        alike: {
          can: optionOf(
            `The wort took ${kept} % of the extract, and the draff still has ${100 - kept} % of it.`,
            `It can be: what is not in the wort stayed behind.`,
          ),
          cannot: optionOf(
            `The wort took ${kept} % of the extract, and the draff still has ${also} % of it.`,
            `That makes ${kept + also} % of what the malt had.`,
          ),
        },
        can: optionOf(
          `The wort took ${kept} % of the extract, and the draff has the other ${100 - kept} %.`,
          'It can be: what is not in the wort stayed behind.',
        ),
        cannot: [
          optionOf(
            `The wort took ${kept} % of the extract, and the draff still has ${also} % of it.`,
            `That makes ${kept + also} % of what the malt had.`,
          ),
        ],
      },
    ];
  },
});
