// A calculator of fermenting, by its id.
import { fermenting } from '../calculators/fermenting/index.ts';
import { Calculator } from './Calculator.tsx';
import { pick } from './pick.ts';

export default function FermentingCalculator(props: { readonly of: string; readonly alone?: boolean }) {
  return <Calculator of={pick(fermenting, props.of)} alone={props.alone ?? false} />;
}
