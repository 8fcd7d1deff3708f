// What the reader has learnt, unpacked when a talk is first read.
import learntText from './learnt.ts';
import type { Model } from './match.ts';
import { modelOf } from './model-text.ts';

let model: Model | undefined;

export const learnt = (): Model => (model ??= modelOf(learntText));
