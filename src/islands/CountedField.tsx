// What was counted or read of a figure that can be computed: empty when it was not; what is computed stands beside it.
import { createMemo } from 'solid-js';
import { figureTable, headOf, pathsOf, type FigureId } from '../core/figures/index.ts';
import { numberAt } from '../core/line/beside.ts';
import { computedBeside } from '../core/line/counted-beside.ts';
import { useKnown } from '../browser/known-store.ts';
import { textOfFigure } from '../house/prose.ts';
import { countFigure } from '../browser/change-figure.ts';
import { useHouse } from '../browser/house-store.ts';
import { NumberField } from './NumberField.tsx';

export function CountedField(props: { readonly of: FigureId }) {
  const { line } = useHouse();
  const { counted, hangsOn } = useKnown();
  const { kind, limits } = figureTable[props.of];
  const computed = createMemo(() => numberAt(line(), pathsOf(props.of)[0]!)!);
  const beside = () => {
    const own = counted(props.of);
    return own === undefined ? '' : `: ${computedBeside(props.of, own, computed())}`;
  };
  return (
    <div class="figure-of-house counted">
      <NumberField
        id={`counted-${props.of}`}
        label={headOf(props.of)}
        kind={kind}
        range={limits}
        step={kind === 'gravity' ? 0.001 : limits[1] > 1000 ? 1 : 0.1}
        value={counted(props.of)}
        take={(value) => countFigure(props.of, value)}
        clear={() => countFigure(props.of, undefined)}
        meaning={`${hangsOn(props.of).length > 0 ? 'Our estimate' : 'Computed'}: ${textOfFigure(props.of, computed())}${beside()}`}
      />
    </div>
  );
}
