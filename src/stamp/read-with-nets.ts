import { type GreyImage, type PixelImage, quadSize } from '../photo';
import { characterMiddles, lineAround } from './align';
import { cropLine } from './crop';
import type { FoundLine, PrintReader, StampNets } from './engines';
import { freeTexts } from './free-text';
import { lookCloser } from './look-closer';
import { looksLikeCode } from './looks-like-code';
import { measureLine } from './measure';
import { startedPrint } from './print/when-needed';
import { readPrintedLine } from './read-printed';
import { weighRuns } from './runs';
import type { StampLine } from './types';

type FreeText = ReturnType<typeof freeTexts>[number];

/** Lines read at full size in one photo; a stamp has one to three. */
const mostLines = 6;

/**
 * Stamped lines by the nets: the finder looks at the whole photo, the recogniser only at lines worth reading. Lines
 * that are likelier words than a code also go to the print engine; where that trusts nothing (blind wording), words
 * that the recogniser is sure of stand for themselves.
 */
export async function readWithNets(
  photo: PixelImage,
  grey: GreyImage,
  photoId: string,
  nets: StampNets,
  print: PrintReader | null,
): Promise<{ lines: StampLine[]; printed: string[] }> {
  const lines: StampLine[] = [];
  const printed: string[] = [];
  const isCode = ({ stampScore, free }: Pick<StampLine, 'stampScore' | 'free'>): boolean =>
    looksLikeCode(free.text) && stampScore >= nets.acceptance.stampScore;
  const read = async ({ quad, stampScore: seenAs }: FoundLine): Promise<void> => {
    const { across, down } = quadSize(quad);
    if (across < 4 || down < 4) return;
    const lattice = await nets.readLine(photo, quad);
    const texts = weighRuns(freeTexts(lattice, 40, 40));
    const free = texts[0] ?? { text: '', probability: 0 };
    if (free.text === '' || isLoneShape(texts)) return;
    const stampScore = withWhatItSays(seenAs, texts);
    if (!isCode({ stampScore, free })) {
      const reader = await startedPrint(print);
      const words = reader === null ? '' : await readPrintedLine(grey, quad, reader);
      printed.push(words === '' && isWording(free) ? free.text : words);
    }
    const line = lineAround(quad, characterMiddles(lattice), nets.margin);
    const crop = cropLine(grey, line.quad, 48);
    lines.push({
      id: `${photoId}-line-${lines.length + 1}`,
      photoId,
      quad: line.quad,
      stampScore,
      engine: 'net',
      lattice,
      free,
      measurements: crop === null ? [] : measureLine(crop, line.quad, line.middles),
    });
  };
  for (const found of (await nets.findLines(photo)).slice(0, mostLines)) await read(found);
  if (!lines.some(isCode)) {
    for (const found of (await lookCloser(photo, nets, lines)).slice(0, mostLines)) await read(found);
  }
  return { lines, printed };
}

/**
 * Rivets, rings and slots look like one or two characters, and no code on file is shorter than three. A blurred stamp
 * may spell little as well, but then longer texts are likely too.
 */
function isLoneShape(texts: readonly FreeText[]): boolean {
  return shareOf(texts, ({ text }) => text.replace(/[^A-Z0-9]/g, '').length >= 3) < 0.2;
}

/**
 * How likely a line is a code stamp once it is read. The finder sees it small and takes many a code among words for a
 * word; a text that has the look of a code counts as much as what it saw, one that has not takes nothing away.
 */
const withWhatItSays = (seenAs: number, texts: readonly FreeText[]): number =>
  Math.max(seenAs, (seenAs + shareOf(texts, ({ text }) => looksLikeCode(text))) / 2);

const shareOf = (texts: readonly FreeText[], has: (text: FreeText) => boolean): number =>
  texts.filter(has).reduce((sum, { probability }) => sum + probability, 0);

/** Words in capitals, read with certainty: a maker's name, an origin. */
const isWording = ({ text, probability }: { text: string; probability: number }): boolean =>
  probability >= 0.8 && /[A-Z]{3}/.test(text);
