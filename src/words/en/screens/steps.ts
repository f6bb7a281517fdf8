/** A list of a maker file: what one entry of it is called, and how the whole is. */
const lists: Record<string, readonly [one: string, whole: string]> = {
  aliases: ['other name', 'other names'],
  sources: ['source', 'sources'],
  codeSystems: ['code system', 'code systems'],
  plants: ['plant', 'plants'],
  construction: ['fact', 'facts of how it is made'],
  models: ['model', 'models'],
  examples: ['example', 'examples'],
  layout: ['slot', 'slots'],
  layouts: ['layout', 'layouts'],
  newPriceFloor: ['price', 'prices'],
  table: ['range', 'ranges of numbers'],
  weights: ['weight', 'weights'],
  also: ['also called', 'also called'],
  not: ['word against', 'words against'],
  parts: ['part', 'parts to be seen'],
};

/** Fields whose name in the file is not the one on the screen. */
const fields: Record<string, string> = {
  id: 'short name',
  place: 'country',
  stamped: 'stamping',
  trade: 'how it is sold',
  used: 'period',
  made: 'years made',
  is: 'what it is',
  reads: 'what it reads',
  sampleSales: 'sample sales',
  dayOfYear: 'day of the year',
  any: 'unexplained characters',
  serial: 'running number',
  check: 'check character',
  min: 'at least',
  max: 'at most',
  over: 'covers',
  of: 'kind',
};

/** A place in a file as a person says it: `codeSystems[0].layout[2].letters` is "code system 1, slot 3, letters". */
export function placeWords(path: string): string {
  return path
    .split('.')
    .map((step) => {
      const [, name = step, inside = ''] = /^(\w+)((?:\[\d+\])*)$/.exec(step) ?? [];
      const [first, ...more] = [...inside.matchAll(/\d+/g)].map(([at]) => Number(at) + 1);
      if (first === undefined) return lists[name]?.[1] ?? fields[name] ?? name;
      if (name === 'used' || name === 'made') return periodWords(name, [first, ...more]);
      const entry = `${lists[name]?.[0] ?? fields[name] ?? name} ${first}`;
      return more.length === 0 ? entry : [entry, ...more.map((at) => `slot ${at}`)].join(', ');
    })
    .join(', ');
}

/** Of a period's two dates, or of one of several periods, which. */
function periodWords(name: string, places: number[]): string {
  const end = places.at(-1) === 1 ? 'first date' : 'last date';
  const period = fields[name] ?? name;
  return places.length === 1 ? `${period}, ${end}` : `${period} ${places[0]}, ${end}`;
}

/** A step as a person says it: `change codeSystems[0].used` becomes "change code system 1, period". */
export function stepWords(what: string): string {
  const [, action, path] = /^(change|add to|remove|move) ([\w.[\]]+)$/.exec(what) ?? [];
  if (!action || !path) return what;
  if (path === 'the file') return what;
  const names = path.split('.');
  const list = lists[names.at(-1) ?? ''];
  // "add to plants" says what was added: a plant.
  if (action === 'add to' && list) return placedIn(`add ${list[0]}`, names.slice(0, -1).join('.'));
  return `${action} ${placeWords(path)}`;
}

const placedIn = (words: string, path: string) =>
  path === '' || path === 'trade' ? words : `${words} to ${placeWords(path)}`;
