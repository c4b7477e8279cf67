/** Property tests draw new cases on every run, unless MATWRIGHT_SEED (a whole number) says which: CI gives one tree one verdict. */
import fc from 'fast-check';

const seed = Number.parseInt(process.env.MATWRIGHT_SEED ?? '', 10);
if (Number.isSafeInteger(seed)) fc.configureGlobal({ seed });
