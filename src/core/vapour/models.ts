// Both models of vapour over liquid, for what judges one by the other.
import { vanLaar, type VapourModel } from './equilibrium.ts';
import { wilson } from './wilson.ts';

export const vapourModels: readonly VapourModel[] = [vanLaar, wilson];
