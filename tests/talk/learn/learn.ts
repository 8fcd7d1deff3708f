// Learns the reader of talks from all labelled talks and writes what it learnt: `npm run learn-talk`.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync } from 'node:zlib';
import { modelAsText } from '../../../src/talk/model-text.ts';
import { scripts } from '../judge.ts';
import { recombinedTalks } from '../recombine.ts';
import { readerWithout } from './stacked.ts';
import { toLearn } from './talks.ts';

const talks = [...scripts(), ...recombinedTalks()].map(toLearn);
const text = modelAsText(readerWithout(talks)());
const file = `// What the reader has learnt from labelled talks; written by \`npm run learn-talk\`, not by hand. See model-text.ts for its form.
export default ${JSON.stringify(text)};
`;
writeFileSync(join(import.meta.dirname, '../../../src/talk/learnt.ts'), file);
console.log(
  `${talks.length} talks; ${text.split('\n').length} signs; ${(file.length / 1000).toFixed(0)} kB, ${(brotliCompressSync(file).length / 1000).toFixed(1)} kB by brotli`,
);
