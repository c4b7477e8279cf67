/** Words of the command line in, exit code out: finds the verb, its help, or what is wrong with the words. */
import { Command, CommanderError } from 'commander';
import { version } from '../../package.json';
import type { Verb } from './verb';
import { VERBS } from './verbs';
import type { ExitCode, World } from './world';

const CALL = 'npm run -s matwright --';

const OVERVIEW = `
JOB is the file of a job (resources/README.md tells what it may say), or - for standard input.
The answer goes to standard output, all else to standard error.
Exit codes: 0 done, 1 errors found in the job, 2 wrong use or something that can't be read or written.

Call it so:
  ${CALL} VERB JOB
  ${CALL} VERB --help`;

/** Does what the words ask; never throws. */
export async function runWords(words: readonly string[], world: World): Promise<ExitCode> {
  let code: ExitCode = 0;
  const said: string[] = [];
  const program = outline(world, (text) => said.push(text));
  for (const verb of VERBS) {
    addVerb(program, verb, async (options, [job = '', ...more]) => {
      code = await verb.run(world, options, job, more);
    });
  }
  try {
    await program.parseAsync([...words], { from: 'user' });
  } catch (fault) {
    if (!(fault instanceof CommanderError)) return tellFault(world, fault);
    code = fault.exitCode === 0 ? 0 : 2;
  }
  try {
    if (said.length > 0) await world.say(said.join(''));
  } catch (fault) {
    return tellFault(world, fault);
  }
  return code;
}

function outline(world: World, write: (text: string) => void): Command {
  return new Command('matwright')
    .description('Designs mats for pictures and makes the full-scale templates to cut them by.')
    .version(version, '-V, --version', 'print the version')
    .usage('VERB JOB [options]')
    .helpOption('-h, --help', 'print this help')
    .commandsGroup('Verbs:')
    .helpCommand('help [verb]', 'print the help of a verb')
    .addHelpText('after', OVERVIEW)
    .exitOverride()
    .configureOutput({
      writeOut: write,
      writeErr: (text) => world.tell(text),
      getOutHelpWidth: () => world.columns,
      getErrHelpWidth: () => world.columns,
    })
    .showHelpAfterError('(--help tells how it is used)');
}

function addVerb(program: Command, verb: Verb, run: (options: never, jobs: readonly string[]) => Promise<void>): void {
  const command = program
    .command(verb.name)
    .summary(verb.summary)
    .description(`${verb.summary[0]?.toUpperCase()}${verb.summary.slice(1)}.`)
    .helpOption('-h, --help', 'print this help');
  const { name, what, isOptional } = verb.takesFile ?? {
    name: 'JOB',
    what: 'the file of the job, or - for standard input',
  };
  const takesOne = verb.takesJob || verb.takesFile !== undefined;
  const given = isOptional ? `[${name}]` : verb.takesSeveral ? `<${name}...>` : `<${name}>`;
  if (takesOne) command.argument(given, what);
  for (const option of verb.options) command.addOption(option);
  const examples = verb.examples.map((example) => `  ${example}`).join('\n');
  command.addHelpText('after', `\n${verb.more}\n\nExamples:\n${examples}`);
  command.action(async (...words: unknown[]) =>
    run(command.opts() as never, takesOne ? [words[0] ?? ''].flat().map(String) : []),
  );
}

/** A file system's refusal, or a fault of our own: in one line, without the trace that only a developer can read. */
function tellFault(world: World, fault: unknown): ExitCode {
  const message = fault instanceof Error ? fault.message : String(fault);
  world.tell(`A fault stopped this: ${message}\n`);
  return 2;
}
