// A calculator of mashing, by its id.
import { declared } from './declared.tsx';

export default declared(
  import.meta.glob(['../calculators/mashing/*.ts', '!**/{index,bed}.ts'], { import: 'default' }),
);
