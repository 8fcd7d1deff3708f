// A calculator of maturing, by its id.
import { declared } from './declared.tsx';

export default declared(
  import.meta.glob(['../calculators/maturing/*.ts', '!**/{index,regauge-inputs,store}.ts'], {
    import: 'default',
  }),
);
