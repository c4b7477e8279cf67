/** Hears keys for the whole window and runs the commands they stand for. */
import type { Workbench } from '../workbench';
import { COMMANDS, isEnabled, keysOf, type Command } from './commands';
import { isPressed } from './keys';

export const isMac = /Mac/.test(navigator.platform);

/** Keeps what is being typed, then runs the command. */
export async function runCommand(command: Command, bench: Workbench): Promise<void> {
  const typing = document.activeElement;
  if (typing instanceof HTMLInputElement || typing instanceof HTMLTextAreaElement) {
    typing.blur();
    typing.focus();
  }
  if (!isEnabled(command, bench)) return;
  try {
    await command.run(bench);
  } catch (fault) {
    bench.notice.fail(`${command.label} could not be done: ${fault instanceof Error ? fault.message : String(fault)}`);
  }
}

export function hearKeys(bench: Workbench): (event: KeyboardEvent) => void {
  return (event) => {
    if (bench.dialogs.isOpen) return;
    const command = COMMANDS.find((each) =>
      keysOf(each, bench.info.kind).some((keys) => isPressed(keys, event, isMac)),
    );
    if (command === undefined || belongsToTyping(command, event)) return;
    event.preventDefault();
    void runCommand(command, bench);
  };
}

/** Keys that a text under the caret needs for itself. */
function belongsToTyping(command: Command, event: KeyboardEvent): boolean {
  const target = event.target;
  const typing =
    target instanceof HTMLTextAreaElement || (target instanceof HTMLInputElement && target.type === 'text');
  if (!typing) return target instanceof HTMLSelectElement && command.name === 'remove';
  if (command.name === 'remove') return true;
  // Half-typed text takes back its own letters first.
  return (command.name === 'undo' || command.name === 'redo') && target.dataset['drafting'] === 'true';
}
