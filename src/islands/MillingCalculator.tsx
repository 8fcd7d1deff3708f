// A calculator of milling, by its id.
import { milling } from '../calculators/milling/index.ts';
import { Calculator } from './Calculator.tsx';
import { pick } from './pick.ts';

export default function MillingCalculator(props: { readonly of: string; readonly alone?: boolean }) {
  return <Calculator of={pick(milling, props.of)} alone={props.alone ?? false} />;
}
