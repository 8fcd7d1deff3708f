// A calculator of fermenting, by its id.
import { declared } from './declared.tsx';

export default declared(
  import.meta.glob(['../calculators/fermenting/*.ts', '!**/index.ts'], { import: 'default' }),
);
