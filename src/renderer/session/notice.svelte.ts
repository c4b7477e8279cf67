/** The last result in words, shown at the foot of the window and read out by assistive technology. */
export class Notice {
  text = $state('');
  /** True when something could not be done. */
  failed = $state(false);
  #said = 0;

  say(text: string): void {
    this.#show(text, false);
  }

  fail(text: string): void {
    this.#show(text, true);
  }

  /** Something was done to the job or beside it: what was said of an earlier act is old news, what was said with this one is not. */
  expire(): void {
    if (performance.now() - this.#said > SAME_MOMENT) this.text = '';
  }

  #show(text: string, failed: boolean): void {
    this.text = text;
    this.failed = failed;
    this.#said = performance.now();
  }
}

/** What is said so soon before a change belongs to it, ms. */
const SAME_MOMENT = 1000;
