import { isPlaceCode, unknownPlace } from '../place';
import { listOfPeriods, periodSpan } from '../span';
import { type MakerFault, type MakerProblem, makerProblem } from './fault';
import { plainName } from './name';
import { isKnownPart } from './parts';
import type { MakerFile, Period } from './schema';

/** What a file of right form says that cannot be: countries, dates, parts, systems and numbers. */
export const sayingProblems = (file: MakerFile): MakerProblem[] => [
  ...placeProblems(file),
  ...periodProblems(file),
  ...partProblems(file),
  ...modelProblems(file),
  ...carrierProblems(file),
  ...rangeProblems(file),
];

function placeProblems(file: MakerFile): MakerProblem[] {
  return file.plants.flatMap(({ place }, index): MakerProblem[] => {
    if (isPlaceCode(place) || place === unknownPlace) return [];
    const fault: MakerFault = { kind: 'no-country', place };
    return [makerProblem('maker-file-place', `plants[${index}].place`, fault)];
  });
}

type Placed = [where: string, period: Period];

/** Every period of a file by its path, wherever it stands: fields named `used` or `made`, in entries and inside them. */
function periodsIn(file: MakerFile): Placed[] {
  const { stamped, ...rest } = file;
  const found: Placed[] = stamped ? [['stamped', [stamped.from, stamped.to]]] : [];
  const open: { path: string; value: unknown }[] = Object.entries(rest).map(([path, value]) => ({ path, value }));
  while (open.length > 0) {
    const { path, value } = open.shift()!;
    if (Array.isArray(value)) open.unshift(...value.map((inside, at) => ({ path: `${path}[${at}]`, value: inside })));
    else if (typeof value === 'object' && value !== null) {
      for (const [field, inside] of Object.entries(value)) {
        if ((field === 'used' || field === 'made') && Array.isArray(inside)) {
          const all = listOfPeriods(inside as Period | Period[]);
          found.push(
            ...all.map(
              (one, at): Placed => [
                `${path}.${field}${Array.isArray(inside[0]) && all.length > 1 ? `[${at}]` : ''}`,
                one,
              ],
            ),
          );
        } else open.push({ path: `${path}.${field}`, value: inside });
      }
    }
  }
  return found;
}

function periodProblems(file: MakerFile): MakerProblem[] {
  return periodsIn(file).flatMap(([where, period]) => {
    const span = periodSpan(period);
    const backwards = span?.from && span.to && span.from > span.to;
    if (span && !backwards) return [];
    const [from, to] = period;
    const fault: MakerFault = span
      ? { kind: 'backwards', from: String(from), to: String(to) }
      : { kind: 'no-such-date', period: period.map(String) };
    return [makerProblem('maker-file-period', where, fault)];
  });
}

/** A part that is neither known nor the file's own is more likely a slip than a part. */
function partProblems(file: MakerFile): MakerProblem[] {
  const own = new Set(file.parts.map(({ id }) => id));
  const named: [string, string][] = [
    ...file.construction.map(({ part }, at): [string, string] => [`construction[${at}].part`, part]),
    ...file.numbers.map(({ part }, at): [string, string] => [`numbers[${at}].part`, part]),
    ...file.models.flatMap(({ parts = [] }, at) =>
      parts.map((part, place): [string, string] => [`models[${at}].parts[${place}]`, part]),
    ),
  ];
  return named
    .filter(([, part]) => !isKnownPart(part) && !own.has(part))
    .map(([where, part]) => makerProblem('maker-file-part', where, { kind: 'no-part', part }));
}

/** Two entries of one model would leave open which of them holds: its other years and sizes are further runs. */
function modelProblems(file: MakerFile): MakerProblem[] {
  const known = new Set<string>();
  return file.models.flatMap(({ name }, at): MakerProblem[] => {
    const isKnown = known.has(plainName(name));
    known.add(plainName(name));
    return isKnown
      ? [makerProblem('maker-file-double-model', `models[${at}].name`, { kind: 'double-model', name })]
      : [];
  });
}

function carrierProblems(file: MakerFile): MakerProblem[] {
  const ids = new Set(file.codeSystems.map(({ id }) => id));
  return file.carriers.flatMap(({ systems = [] }, at) =>
    systems.flatMap((id, place) => {
      const where = `carriers[${at}].systems[${place}]`;
      return ids.has(id) ? [] : [makerProblem('maker-file-system-unknown', where, { kind: 'no-system', id })];
    }),
  );
}

function rangeProblems(file: MakerFile): MakerProblem[] {
  const backwards = (where: string, least: number, most: number): MakerProblem[] =>
    least <= most ? [] : [makerProblem('maker-file-range', where, { kind: 'more-than', least, most })];
  const prices = file.prices.flatMap(({ least, most }, at): MakerProblem[] => {
    const where = `prices[${at}].least`;
    if (least === undefined && most === undefined)
      return [makerProblem('maker-file-range', where, { kind: 'no-amount' })];
    return backwards(where, least ?? 0, most ?? Number.POSITIVE_INFINITY);
  });
  const numbers = file.numbers.flatMap((number, at): MakerProblem[] => {
    if (number.of !== 'colour') return backwards(`numbers[${at}].least`, number.least, number.most);
    return (['lightness', 'greenRed', 'blueYellow'] as const).flatMap((axis) =>
      backwards(`numbers[${at}].${axis}`, ...number[axis]),
    );
  });
  return [...prices, ...numbers];
}
