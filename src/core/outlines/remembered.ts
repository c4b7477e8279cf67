/** Answers kept for questions that come again and again: a window under the hand is laid out with the same outline each time. */

/** The same function, with its last `most` answers at hand. It must depend on nothing but the text. */
export function remembered<T>(most: number, answer: (question: string) => T): (question: string) => T {
  const known = new Map<string, T>();
  return (question) => {
    const found = known.get(question);
    if (found !== undefined) return found;
    const made = answer(question);
    const [oldest] = known.keys();
    if (known.size >= most && oldest !== undefined) known.delete(oldest);
    known.set(question, made);
    return made;
  };
}
