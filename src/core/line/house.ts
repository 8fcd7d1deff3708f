// The figures a house gives: what `line` is computed from. Each stands in the table of figures, src/core/figures.
import type { choices, ChoiceName, KindOf, NumberName } from '../figures/index.ts';
import type { Quantity } from '../quantity.ts';

type Numbers = { readonly [N in NumberName]: Quantity<KindOf<N>> };
type Choices = { readonly [C in ChoiceName]: keyof (typeof choices)[C]['options'] };

export interface House extends Numbers, Choices {}
