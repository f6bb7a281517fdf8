import type { MakerFile } from '../maker/types';
import { periodSpans, reachOfAbout, type Span, spansMeet } from '../span';
import { bare } from '../stamp';
import type { Beside } from './beside-types';
import type { DecodeOptions } from './decode';
import { plainSigns, tidyCode } from './typed';
import type { Decoding } from './types';

type Mark = MakerFile['marks'][number];

/** Shortest code that is looked for beside a mark: of less nearly every text is one and a mark. */
const leastCode = 3;

const plainCode = (text: string): string => bare(plainSigns(text));

/** Whether a mark of some years only can stand on a piece of these; of which models it is tells nothing where none is named. */
const isOfTime = ({ used }: Mark, span: Span | null): boolean =>
  used === undefined || span === null || periodSpans(used).some((one) => spansMeet(reachOfAbout(one), span));

const besideOf = ({ kind, means }: Mark, text: string, maker: string): Beside => ({ text, kind, means, maker });

interface Split {
  rest: string;
  marks: { mark: Mark; text: string }[];
}

/** The text without one of the marks, before or behind it, in each way that there is. */
const without = ({ rest, marks }: Split, known: readonly Mark[]): Split[] =>
  known.flatMap((mark) =>
    mark.texts.flatMap((written) => {
      const text = tidyCode(written);
      const behind = rest.endsWith(text) ? rest.slice(0, -text.length).replace(/[^A-Z0-9)\]}]{1,4}$/, '') : null;
      const before = rest.startsWith(text) ? rest.slice(text.length).replace(/^[^A-Z0-9([{]{1,4}/, '') : null;
      return [before, behind].flatMap((left) =>
        left !== null && plainCode(left).length >= leastCode ? [{ rest: left, marks: [...marks, { mark, text }] }] : [],
      );
    }),
  );

const filesOf = ({ makers, maker }: Pick<DecodeOptions, 'makers' | 'maker'>): readonly MakerFile[] =>
  maker === null ? makers : makers.filter((file) => [maker].flat().includes(file.maker));

/**
 * A code that fits no system as it stands, read without the marks that its maker's file knows beside codes: only where
 * what is left is just as it stands a code of that file, and in one way. `decodeRest` reads it under that file.
 */
export function withoutMarks(
  decoding: Decoding,
  options: Pick<DecodeOptions, 'makers' | 'maker'>,
  decodeRest: (rest: string, file: MakerFile) => Decoding,
): Decoding {
  if (!decoding.accepted || decoding.readings.some(({ system }) => system.maker !== null)) return decoding;
  for (const file of filesOf(options)) {
    const once = without({ rest: tidyCode(decoding.code), marks: [] }, file.marks);
    // One on each side at most, and two only where one does not explain it.
    for (const splits of [once, once.flatMap((split) => without(split, file.marks))]) {
      const found = splits.flatMap(({ rest, marks }) => {
        const read = decodeRest(rest, file);
        const [reading] = read.readings;
        if (reading?.system.maker !== file.maker || plainCode(reading.text) !== plainCode(rest)) return [];
        if (!marks.every(({ mark }) => isOfTime(mark, reading.span))) return [];
        return [{ read, beside: marks.map(({ mark, text }) => besideOf(mark, text, file.maker)) }];
      });
      const [first] = found;
      if (!first) continue;
      if (new Set(found.map(({ read }) => plainCode(read.code))).size > 1) return decoding;
      const { id, from, open } = decoding;
      return { ...first.read, id, from, accepted: true, ...(open ? { open } : {}), beside: first.beside };
    }
  }
  return decoding;
}

/** A code read by a maker's file, with the marks of that file that stand in other lines beside it. */
export function withMarksBeside(
  decoding: Decoding,
  lines: readonly string[],
  options: Pick<DecodeOptions, 'makers' | 'maker'>,
): Decoding {
  const [reading] = decoding.readings;
  if (!decoding.accepted || !reading) return decoding;
  const file = filesOf(options).find(({ maker }) => maker === reading.system.maker);
  const known = (file?.marks ?? []).filter((mark) => isOfTime(mark, reading.span));
  const found = lines.flatMap((line) =>
    known
      .filter(({ texts }) => texts.some((text) => plainCode(text) !== '' && plainCode(text) === plainCode(line)))
      .slice(0, 1)
      .map((mark) => besideOf(mark, tidyCode(line), reading.system.maker!)),
  );
  return found.length === 0 ? decoding : { ...decoding, beside: [...(decoding.beside ?? []), ...found] };
}
