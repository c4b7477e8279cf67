/** The command line: `npm run -s matwright -- VERB JOB`. */
import { runWords } from './run-words';
import { terminal } from './terminal';

process.exitCode = await runWords(process.argv.slice(2), terminal());
