// A calculator of malting, by its id.
import { declared } from './declared.tsx';

export default declared(
  import.meta.glob(['../calculators/malting/*.ts', '!**/index.ts'], { import: 'default' }),
);
