// A calculator of malting, by its id.
import { malting } from '../calculators/malting/index.ts';
import { Calculator } from './Calculator.tsx';
import { pick } from './pick.ts';

export default function MaltingCalculator(props: { readonly of: string; readonly alone?: boolean }) {
  return <Calculator of={pick(malting, props.of)} alone={props.alone ?? false} />;
}
