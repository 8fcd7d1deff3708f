// A calculator of maturing, by its id.
import { maturing } from '../calculators/maturing/index.ts';
import { Calculator } from './Calculator.tsx';
import { pick } from './pick.ts';

export default function MaturingCalculator(props: { readonly of: string; readonly alone?: boolean }) {
  return <Calculator of={pick(maturing, props.of)} alone={props.alone ?? false} />;
}
