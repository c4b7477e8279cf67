// Lets `import 'electron'` find the stand-in, in this process and those it starts with the same flag.
import { register } from 'node:module';

register('./resolve.mjs', import.meta.url);
