// A calculator of distilling, by its id.
import { distilling } from '../calculators/distilling/index.ts';
import { Calculator } from './Calculator.tsx';
import { pick } from './pick.ts';

export default function DistillingCalculator(props: { readonly of: string; readonly alone?: boolean }) {
  return <Calculator of={pick(distilling, props.of)} alone={props.alone ?? false} />;
}
