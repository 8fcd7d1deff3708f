// The words of a talk by which a quantity is known for its figure.
import type { TalkFigureId } from '../talk/figures.ts';
import { labelOf } from '../talk/labels.ts';
import type { ReadQuantity } from '../talk/script.ts';
import { mentionsIn, type ConceptName, type Mention } from '../talk/words.ts';

const REACH = 160; // characters of the same or the sentence before in which a word speaks for a quantity
const concepts = new Map<TalkFigureId, ReadonlySet<ConceptName>>();

/** What the name of a figure speaks of. */
function conceptsOf(figure: TalkFigureId): ReadonlySet<ConceptName> {
  const found = concepts.get(figure) ?? new Set(mentionsIn(labelOf(figure)).map(({ concept }) => concept));
  concepts.set(figure, found);
  return found;
}

/** The two nearest words of the name of a figure that stand about a quantity, as they are said. */
export function wordsFor(
  text: string,
  mentions: readonly Mention[],
  { start, end }: ReadQuantity,
  figure: TalkFigureId,
): readonly string[] {
  const wanted = conceptsOf(figure);
  const away = (each: Mention) => Math.max(each.start - end, start - each.end, 0);
  const near = mentions
    .filter((each) => wanted.has(each.concept) && away(each) <= REACH)
    .sort((a, b) => away(a) - away(b));
  const byConcept = new Map(near.toReversed().map((each) => [each.concept, each]));
  const said = near.filter((each) => byConcept.get(each.concept) === each);
  return [...new Set(said.map((each) => text.slice(each.start, each.end).toLowerCase()))].slice(0, 2);
}
