import { strings } from '../../words';

/** Each of some kinds with its name, to choose from. Made when drawn: words change with the language. */
export const kindsOf = <const K extends string>(kinds: readonly K[], names: Readonly<Record<K, string>>) =>
  kinds.map((kind) => [kind, names[kind]] as const);

export const yesNo = () =>
  [
    [true, strings.makers.yes],
    [false, strings.makers.no],
  ] as const;
