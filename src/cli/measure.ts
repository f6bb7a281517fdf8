import { existsSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import * as z from 'zod';
import { inPixelsOf, type Mark, type Measure, markSchema, measureMarks, type PixelImage, scaledWhere } from '../photo';
import type { Problem } from '../problem';
import { sayProblem } from '../words';
import { problemWords } from './check-report';
import { textAt } from './file-text';
import { openPhotoFile } from './photo-file';
import { runMain } from './run-main';

const usage = `usage: npm run -s measure -- [--json] MARKS.json

MARKS.json: [{"file": PHOTO, "marks": [{"what": WHAT, "points": [[x, y], …]}]}], pixels of the upright photo; a point may also be {"x": …, "y": …}.
A photo's path is seen from the folder of MARKS.json, or else from where the command is run.
  repeat-x, repeat-y  four corners of a panel, clockwise from its top left; px, the panel being as wide as its top and bottom on the average
  mirror-off          four corners: how far the nearest upright mirror axis lies off the middle; share of the repeat, right positive
  edges-off           four corners: by how much farther from an axis the left edge cuts the pattern than the right one; 0 where they cut it at mirrored places
  motif-off           four corners, then the middle of one motif (or its four corners): how far the nearest motif lies off the middle
  back                four corners of the front, then four of the back: "turned" or "upright"
  seam-off            four corners of a panel, then two points of the seam that cuts it: the step along the seam
  count, pitch, evenness, slant   two points, the first and last hole of a row of stitches; stitch, px, share of the pitch, degree
  skipped             the same two points: how many of the stitches that were counted are missing, or passed over by a loose thread; "where" has the holes
                      before and after each such place, two by two
  lab                 a patch (its middle, two corners of a box, or a polygon); it needs a white; L, a, b, the uncertainty in de2000
  difference          two patches, the first half of the points and the second
  white               measures nothing: a white card or object, for the lab and difference of its photo
"within" beside "points": pixels by which a hand's point may be off; 1.5% of the photo's longer side unless said.
It prints [{"file", "measures": [{"what", "value", "uncertainty", "unit", "where", "why"}]}]; a value of null was not measured, and "why" says what was missing
("mark": the mark has another form than the above, and "form" says where); the uncertainty is the half-width that holds in 95 of 100 cases.
A photo that cannot be read has "problem" and no measures; the others are measured all the same, and the status is 1.`;

/** What stands beside a photo's marks may be a note of whoever made them. */
const photoSchema = z.looseObject({ file: z.string().min(1), marks: z.array(z.unknown()) });

/** A mark of another form than is asked for stands where its measure would. */
type NoMark = Pick<Measure, 'value' | 'uncertainty' | 'unit' | 'where'> & { what: unknown; why: 'mark'; form: string };

interface Result {
  file: string;
  measures: (Measure | NoMark)[];
  problem?: Problem;
}

async function measured(given: unknown, at: number, folder: string): Promise<Result> {
  const read = photoSchema.safeParse(given);
  if (!read.success) {
    const { file } = (given ?? {}) as { file?: unknown };
    return failed(typeof file === 'string' ? file : '', {
      code: 'marks-form',
      where: 'marks',
      what: `Number ${at + 1} of the list is no photo with marks: ${faultsOf(read.error)}.`,
      remedy: 'Give it the form that --help shows.',
    });
  }
  const { file, marks } = read.data;
  const beside = resolve(folder, file);
  const opened = await openPhotoFile(existsSync(beside) ? beside : file);
  if (!opened.ok) return failed(file, { ...opened.problem, where: file });
  const { image, scale } = opened.value;
  return { file, measures: measuresOf(image, marks, scale) };
}

const failed = (file: string, problem: Problem): Result => ({ file, measures: [], problem });

/** The measures of a photo's marks, in their order; a mark of another form takes nothing from the others. */
function measuresOf(image: PixelImage, given: readonly unknown[], scale: number): Result['measures'] {
  const marks = given.map((mark) => markSchema.safeParse(mark));
  const known = marks.flatMap(({ data }) => (data ? [scaledMark(data, scale)] : []));
  const measures = measureMarks(image, known).values();
  return marks.flatMap(({ data, error }, at): Result['measures'] => {
    if (!data) return [noMark(given[at], error)];
    if (data.what === 'white') return [];
    const measure = measures.next().value!;
    return [{ ...inPixelsOf(scale, measure), where: measure.where && scaledWhere(measure.where, scale, scale) }];
  });
}

const scaledMark = (mark: Mark, scale: number): Mark => ({
  ...mark,
  points: mark.points.map(({ x, y }) => ({ x: x / scale, y: y / scale })),
  ...(mark.within !== undefined && { within: mark.within / scale }),
});

function noMark(given: unknown, error: z.ZodError): NoMark {
  const { what = null } = (given ?? {}) as { what?: unknown };
  return { what, value: null, uncertainty: null, unit: null, where: null, why: 'mark', form: faultsOf(error) };
}

/** "points: Too small: expected array to have >=1 items; …" */
const faultsOf = ({ issues }: z.ZodError): string =>
  issues.map(({ path, message }) => [...(path.length > 0 ? [path.join('.')] : []), message].join(': ')).join('; ');

/** A problem says in the same place what it is and what to do. */
const asJson = ({ problem, ...result }: Result) =>
  problem === undefined ? result : { ...result, problem: { ...problem, ...sayProblem(problem, 'en') } };

const asWords = ({ file, measures, problem }: Result): string =>
  problem !== undefined
    ? `${file || 'marks'}: ${problemWords(problem)}`
    : measures.map((measure) => `${file}: ${measure.what}: ${toldOf(measure)}`).join('\n');

function toldOf(measure: Result['measures'][number]): string {
  const { value, uncertainty, unit } = measure;
  if (value === null) return `not measured (${measure.why === 'mark' ? measure.form : measure.why})`;
  const within = uncertainty === null ? '' : ` ± ${short(uncertainty)}`;
  return `${[value].flat().map(short).join(' ')}${within} ${unit ?? ''}`.trimEnd();
}

const short = (value: number | string): string =>
  typeof value === 'number' ? String(Number(value.toPrecision(4))) : value;

async function main(): Promise<number> {
  const { values, positionals } = parseArgs({
    options: { json: { type: 'boolean', default: false }, help: { type: 'boolean', default: false } },
    allowPositionals: true,
  });
  if (values.help) {
    console.log(usage);
    return 0;
  }
  const [path] = positionals;
  if (path === undefined || positionals.length > 1) throw new Error(usage);
  const photos = parsed(path);
  if (!Array.isArray(photos)) throw new Error(`${path}: this is no list of photos with their marks.\n\n${usage}`);
  const results: Result[] = [];
  for (const [at, photo] of photos.entries()) results.push(await measured(photo, at, dirname(path)));
  console.log(values.json ? JSON.stringify(results.map(asJson), null, 2) : results.map(asWords).join('\n'));
  return results.some(({ problem }) => problem !== undefined) ? 1 : 0;
}

function parsed(path: string): unknown {
  const text = textAt(path);
  try {
    return JSON.parse(text) as unknown;
  } catch (error) {
    throw new Error(`${path}: ${error instanceof Error ? error.message : 'no JSON'}`);
  }
}

runMain(main);
