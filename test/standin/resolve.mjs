// A loader hook: the name `electron` leads to the stand-in, every other name where it always did.

/** @type {import('node:module').ResolveHook} */
export const resolve = (specifier, context, next) =>
  specifier === 'electron'
    ? { url: new URL('./electron.mjs', import.meta.url).href, shortCircuit: true }
    : next(specifier, context);
