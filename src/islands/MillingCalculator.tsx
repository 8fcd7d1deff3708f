// A calculator of milling, by its id.
import { declared } from './declared.tsx';

export default declared(
  import.meta.glob(['../calculators/milling/*.ts', '!**/index.ts'], { import: 'default' }),
);
