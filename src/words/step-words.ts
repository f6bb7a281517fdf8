/** How one language names what stands in a maker file. */
export interface StepNames {
  /** A list of the file: what one entry of it is called, and how the whole is. */
  lists: Record<string, readonly [one: string, whole: string]>;
  /** Fields whose name in the file is not the one on the screen. */
  fields: Record<string, string>;
  /** One group of characters within a layout. */
  slot: (number: number) => string;
  firstDate: string;
  lastDate: string;
  /** A step as a person says it: what was done, and to what. */
  steps: Record<'change' | 'add to' | 'remove' | 'move', (what: string) => string>;
  /** An entry was added, `place` is where; empty for the file itself. */
  added: (entry: string, place: string) => string;
}

/** Says places and steps of a maker file in one language. */
export function stepSayer({ lists, fields, slot, firstDate, lastDate, steps, added }: StepNames) {
  /** Of a period's two dates, or of one of several periods, which. */
  const periodWords = (name: string, places: number[]): string => {
    const end = places.at(-1) === 1 ? firstDate : lastDate;
    const period = fields[name] ?? name;
    return places.length === 1 ? `${period}, ${end}` : `${period} ${places[0]}, ${end}`;
  };

  /** A place in a file as a person says it: `codeSystems[0].layout[2].letters` is "code system 1, slot 3, letters". */
  const place = (path: string): string =>
    path
      .split('.')
      .map((step) => {
        const [, name = step, inside = ''] = /^(\w+)((?:\[\d+\])*)$/.exec(step) ?? [];
        const [first, ...more] = [...inside.matchAll(/\d+/g)].map(([at]) => Number(at) + 1);
        if (first === undefined) return lists[name]?.[1] ?? fields[name] ?? name;
        if (name === 'used' || name === 'made') return periodWords(name, [first, ...more]);
        const entry = `${lists[name]?.[0] ?? fields[name] ?? name} ${first}`;
        return more.length === 0 ? entry : [entry, ...more.map(slot)].join(', ');
      })
      .join(', ');

  /** A step as a person says it: `change codeSystems[0].used` becomes "change code system 1, period". */
  const step = (what: string): string => {
    const [, action, path] = /^(change|add to|remove|move) ([\w.[\]]+)$/.exec(what) ?? [];
    if (!action || !path) return what;
    if (path === 'the file') return what;
    const names = path.split('.');
    const list = lists[names.at(-1) ?? ''];
    // "add to plants" says what was added: a plant.
    if (action === 'add to' && list) {
      const inside = names.slice(0, -1).join('.');
      return added(list[0], inside === '' || inside === 'trade' ? '' : place(inside));
    }
    return steps[action as keyof StepNames['steps']](place(path));
  };

  return { place, step };
}
