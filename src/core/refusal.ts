// "No answer" as a value: a sentence that says why there is none.

export interface Refusal {
  readonly refused: string;
}

/**
 * Makes a refusal from its reason, one plain sentence.
 * @example refuse('It is empty.') // refuses: It is empty. (the reason)
 */
export function refuse(reason: string): Refusal {
  return { refused: reason };
}

/**
 * True when a result is a refusal and not an answer.
 * @example [isRefusal({ refused: 'It is empty.' }), isRefusal({ volume: 1 })] // [true, false] (the second is an answer)
 */
export function isRefusal(result: object): result is Refusal {
  return 'refused' in result;
}
