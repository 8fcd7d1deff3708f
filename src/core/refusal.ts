// "No answer" as a value: a sentence that says why there is none.

export interface Refusal {
  readonly refused: string;
}

/** A text that says something: an empty one does not pass the types. */
export type NonEmpty<Text extends string> = Text extends '' ? never : Text;

/**
 * Makes a refusal from its reason, one plain sentence.
 * @example refuse('It is empty.') // refuses: It is empty. (the reason)
 */
export function refuse<Text extends string>(reason: NonEmpty<Text>): Refusal {
  return { refused: reason };
}

/**
 * True when a result is a refusal and not an answer.
 * @example [isRefusal({ refused: 'It is empty.' }), isRefusal({ volume: 1 })] // [true, false] (the second is an answer)
 */
export function isRefusal(result: object): result is Refusal {
  return 'refused' in result;
}
