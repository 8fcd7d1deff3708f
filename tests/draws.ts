// The tests draw the same figures every time; the long runs (`npm run fuzz`) draw new ones, and say from which number.
import fc from 'fast-check';

const ALWAYS_THE_SAME = 32058; // any number will do
if (process.env['FUZZ'] === undefined) fc.configureGlobal({ seed: ALWAYS_THE_SAME });
