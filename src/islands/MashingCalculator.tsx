// A calculator of mashing, by its id.
import { mashing } from '../calculators/mashing/index.ts';
import { Calculator } from './Calculator.tsx';
import { pick } from './pick.ts';

export default function MashingCalculator(props: { readonly of: string; readonly alone?: boolean }) {
  return <Calculator of={pick(mashing, props.of)} alone={props.alone ?? false} />;
}
