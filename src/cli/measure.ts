import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import * as z from 'zod';
import { inPixelsOf, type Mark, type Measure, markSchema, measureMarks, scaledWhere } from '../photo';
import type { Problem } from '../problem';
import { problemWords } from './check-report';
import { openPhotoFile } from './photo-file';
import { runMain } from './run-main';

const usage = `usage: npm run -s measure -- [--json] MARKS.json

MARKS.json: [{"file": PHOTO, "marks": [{"what": WHAT, "points": [[x, y], …]}]}], pixels of the upright photo; a point may also be {"x": …, "y": …}.
  repeat-x, repeat-y  four corners of a panel, clockwise from its top left; px, the panel being as wide as its top and bottom on the average
  mirror-off          four corners: how far the nearest upright mirror axis lies off the middle; share of the repeat, right positive
  motif-off           four corners, then the middle of one motif (or its four corners): how far the nearest motif lies off the middle
  back                four corners of the front, then four of the back: "turned" or "upright"
  seam-off            four corners of a panel, then two points of the seam that cuts it: the step along the seam
  count, pitch, evenness, slant   two points, the first and last hole of a row of stitches; stitch, px, share of the pitch, degree
  lab                 a patch (its middle, two corners of a box, or a polygon); it needs a white; L, a, b, the uncertainty in de2000
  difference          two patches, the first half of the points and the second
  white               measures nothing: a white card or object, for the lab and difference of its photo
"within" beside "points": pixels by which a hand's point may be off; 1.5% of the photo's longer side unless said.
It prints [{"file", "measures": [{"what", "value", "uncertainty", "unit", "where", "why"}]}]; a value of null was not measured, and "why" says what was missing;
the uncertainty is the half-width that holds in 95 of 100 cases.`;

const inputSchema = z.array(z.strictObject({ file: z.string().min(1), marks: z.array(markSchema) }));

interface Result {
  file: string;
  measures: Measure[];
  problem?: Problem;
}

async function measured(file: string, marks: readonly Mark[]): Promise<Result> {
  const opened = await openPhotoFile(file);
  if (!opened.ok) return { file, measures: [], problem: opened.problem };
  const { image, scale } = opened.value;
  const scaled = marks.map((mark) => ({
    ...mark,
    points: mark.points.map(({ x, y }) => ({ x: x / scale, y: y / scale })),
    ...(mark.within !== undefined && { within: mark.within / scale }),
  }));
  const measures = measureMarks(image, scaled).map((measure) => ({
    ...inPixelsOf(scale, measure),
    where: measure.where && scaledWhere(measure.where, scale, scale),
  }));
  return { file, measures };
}

const asWords = ({ file, measures, problem }: Result): string =>
  problem !== undefined
    ? `${file}: ${problemWords(problem)}`
    : measures
        .map(({ what, value, uncertainty, unit, why }) =>
          value === null
            ? `${file}: ${what}: not measured (${why})`
            : `${file}: ${what}: ${[value].flat().map(short).join(' ')}${uncertainty === null ? '' : ` ± ${short(uncertainty)}`} ${unit ?? ''}`,
        )
        .join('\n');

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
  const read = inputSchema.safeParse(parsed(path));
  if (!read.success) throw new Error(`${path}: ${z.prettifyError(read.error)}\n\n${usage}`);
  const results: Result[] = [];
  for (const { file, marks } of read.data) results.push(await measured(file, marks));
  console.log(values.json ? JSON.stringify(results, null, 2) : results.map(asWords).join('\n'));
  return results.some(({ problem }) => problem !== undefined) ? 1 : 0;
}

function parsed(path: string): unknown {
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch {
    throw new Error(`${path}: the file cannot be read`);
  }
  try {
    return JSON.parse(text) as unknown;
  } catch (error) {
    throw new Error(`${path}: ${error instanceof Error ? error.message : 'no JSON'}`);
  }
}

runMain(main);
