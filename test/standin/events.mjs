// The event object that Electron hands to listeners who may prevent what is about to happen.

/** @param {Record<string, unknown>} [facts] */
export function preventable(facts = {}) {
  return {
    ...facts,
    defaultPrevented: false,
    preventDefault() {
      this.defaultPrevented = true;
    },
  };
}
