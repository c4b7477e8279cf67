/** Sources by number, in the order in which a text names them. */
import { sourceText, type Source } from './sources';

export class NumberedSources {
  readonly #sources: Source[] = [];

  /** ` [1, 4]`; nothing for none. */
  readonly marks = (sources: readonly Source[]): string => {
    const numbers = sources.map((source) => this.#numberOf(source)).sort((a, b) => a - b);
    return numbers.length === 0 ? '' : ` [${numbers.join(', ')}]`;
  };

  /** All that were named so far, number and words. */
  rows(): (readonly [string, string])[] {
    return this.#sources.map((source, index) => [`[${index + 1}]`, sourceText(source)]);
  }

  #numberOf(source: Source): number {
    const index = this.#sources.indexOf(source);
    return index >= 0 ? index + 1 : this.#sources.push(source);
  }
}
