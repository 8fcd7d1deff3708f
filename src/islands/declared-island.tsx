// An island that shows one calculator of a stage, by its id, and fetches no other declaration.
import type { AnyCalculator } from '../calculators/define.ts';
import { Calculator } from './Calculator.tsx';

/** Ways to the declarations of a stage, by their ids. */
type Ways = Readonly<Record<string, () => Promise<{ readonly default: AnyCalculator }>>>;
interface Props {
  readonly of: string;
  readonly alone: boolean;
  /** Where its sums come from, as the page says it. */
  readonly sources: string;
}

/** An island of a stage; its declaration must have been `fetched` before it is drawn. An unknown id stops the build. */
export function declaredIsland(ways: Ways) {
  const here = new Map<string, AnyCalculator>();
  const fetched = async ({ of }: Pick<Props, 'of'>) => {
    if (!Object.hasOwn(ways, of)) throw new RangeError(`No calculator of this stage is called "${of}".`);
    here.set(of, (await ways[of]!()).default);
  };
  const Island = (props: Props) => (
    <Calculator of={here.get(props.of)!} alone={props.alone} sources={props.sources} />
  );
  return Object.assign(Island, { fetched });
}
