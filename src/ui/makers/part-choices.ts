import { knownParts } from '../../maker';
import { strings } from '../../words';
import { textOf } from './Entries';
import type { Editing } from './editing';

/** The parts that can be chosen: those that the program knows and the file's own. Made when drawn: words change with the language. */
export function partChoices(edit: Editing): (readonly [part: string, name: string])[] {
  const own = edit
    .list(['parts'])
    .map((part) => textOf(part, 'id', ''))
    .filter((id) => id !== '');
  const others = own.filter((id) => !(knownParts as readonly string[]).includes(id));
  return [...knownParts.map((part) => [part, strings.parts[part]] as const), ...others.map((id) => [id, id] as const)];
}
