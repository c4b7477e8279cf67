/** Options that several verbs share. */
import { Option } from 'commander';

export function jsonOption(what: string): Option {
  return new Option('--json', `answer in JSON: ${what}`);
}

export function viewOption(what: string): Option {
  return new Option('--view <side>', what).choices(['back', 'front']).default('back');
}
