// A calculator of distilling, by its id.
import { declared } from './declared.tsx';

export default declared(
  import.meta.glob(['../calculators/distilling/*.ts', '!**/{index,heating,house-cuts}.ts'], {
    import: 'default',
  }),
);
