import { greyOf, type PixelImage, release } from '../../photo';
import type { Box, PrintLine, PrintReader, PrintSymbol, PrintWord } from '../engines';
import { hocrChoices } from './hocr';

/** Where the engine's files are; the same reader runs in Node and in the extension's worker. */
export interface TesseractFiles {
  /** Folder or address of `eng.traineddata.gz`, or of the same file unpacked, without its ending. */
  langPath: string;
  unpacked?: boolean;
  /** Only in a browser: the packaged worker and core, never an address of somebody else. */
  workerPath?: string;
  corePath?: string;
}

export interface OpenPrintReader extends PrintReader {
  close(): Promise<void>;
}

/** Pages are looked at as scattered text (tesseract's page mode 11), a crop as one line (7). */
const pageModes = { page: '11', line: '7' } as const;

/**
 * Starts tesseract.js. Rejects when its files cannot be loaded. Its word list stays on: this engine (LSTM) takes none of
 * `load_system_dawg` and its like over to its dictionary, so only a language file without the list turns it off. Own
 * measurement of that: words on labels trusted and right 51 of 75 for 57, crops with print 32 of 51 for 39, codes 19 of 180 for 23.
 */
export async function openTesseract(files: TesseractFiles): Promise<OpenPrintReader> {
  const tesseract = await import('tesseract.js');
  const { createWorker, OEM } = 'createWorker' in tesseract ? tesseract : (tesseract as { default: never }).default;
  const inBrowser = files.workerPath === undefined ? {} : { workerPath: files.workerPath, workerBlobURL: false };
  const core = files.corePath === undefined ? {} : { corePath: files.corePath };
  const worker = await createWorker('eng', OEM.LSTM_ONLY, {
    langPath: files.langPath,
    gzip: files.unpacked !== true,
    cacheMethod: 'none',
    ...inBrowser,
    ...core,
  });
  // The engine has read it into its own memory; the file would stay beside it, 5 MB.
  await worker.FS('unlink', ['eng.traineddata']);
  await worker.setParameters({ lstm_choice_mode: '2', user_defined_dpi: '150', debug_file: '/dev/null' });
  return {
    async read(image, layout) {
      // The engine adapts to what it saw before; without this a photo's reading depends on the photos before it.
      await worker.setParameters({ tessedit_pageseg_mode: pageModes[layout] as never, classify_enable_learning: '0' });
      const answer = await worker.recognize(greyMap(image) as never, {}, { text: false, blocks: true, hocr: true });
      return linesOf(answer.data.blocks ?? [], hocrChoices(answer.data.hocr ?? ''));
    },
    async close() {
      await worker.terminate();
    },
  };
}

/** Grey pixels as a portable grey map (PGM, `P5`), which the engine reads without any decoder. */
function greyMap(image: PixelImage): Uint8Array {
  const head = Array.from(`P5\n${image.width} ${image.height}\n255\n`, (character) => character.charCodeAt(0));
  const grey = greyOf(image).data;
  const bytes = new Uint8Array(head.length + grey.length);
  bytes.set(head);
  for (let at = 0; at < grey.length; at++) bytes[head.length + at] = Math.min(255, Math.max(0, Math.round(grey[at]!)));
  release(grey);
  return bytes;
}

interface EngineSymbol {
  text: string;
  confidence: number;
  bbox: Box;
}
interface EngineWord extends EngineSymbol {
  symbols: EngineSymbol[];
}
interface EngineBlock {
  paragraphs: { lines: { text: string; confidence: number; bbox: Box; words: EngineWord[] }[] }[];
}

function linesOf(blocks: readonly EngineBlock[], choices: ReturnType<typeof hocrChoices>): PrintLine[] {
  const lines: PrintLine[] = [];
  let word = 0;
  for (const line of blocks.flatMap((block) => block.paragraphs.flatMap((paragraph) => paragraph.lines))) {
    const words: PrintWord[] = line.words.map((found) => {
      const ofWord = choices[word++] ?? [];
      return {
        text: found.text,
        confidence: found.confidence / 100,
        symbols: found.symbols.map((symbol, at) => symbolOf(symbol, ofWord[at] ?? [])),
      };
    });
    lines.push({ text: line.text.trim(), confidence: line.confidence / 100, box: line.bbox, words });
  }
  return lines;
}

/** A character with its choices; when the two outputs disagree on the character, the plain one counts. */
function symbolOf(symbol: EngineSymbol, found: readonly { text: string; confidence: number }[]): PrintSymbol {
  const choices = found[0]?.text === symbol.text ? found : [{ text: symbol.text, confidence: symbol.confidence }];
  const total = Math.max(
    100,
    choices.reduce((sum, choice) => sum + choice.confidence, 0),
  );
  return { choices: choices.map(({ text, confidence }) => ({ text, share: confidence / total })), box: symbol.bbox };
}
