/** The last result in words, shown at the foot of the window and read out by assistive technology. */
export class Notice {
  text = $state('');
  /** True when something could not be done. */
  failed = $state(false);

  say(text: string): void {
    this.text = text;
    this.failed = false;
  }

  fail(text: string): void {
    this.text = text;
    this.failed = true;
  }
}
