import type { MakerFile } from '../maker/types';
import { type BookSystem, openBook } from './book';
import { type Impossible, interpret, type Meaning } from './interpret';
import { type LaidLayout, longestCode } from './layout';
import { readingOf } from './reading';
import { searchLayout } from './search';
import { tidyCode } from './typed';
import type { Reading } from './types';

export interface ExactReading {
  reading: Reading;
  meaning: Meaning;
  laid: LaidLayout;
  path: string;
}

/** Every filling of a layout by exactly this text; the text is taken as it stands, in capitals. */
export function fillExactly(text: string, laid: LaidLayout, keep: 'valid' | 'shape'): string[] {
  if (text.length > longestCode || text.length < laid.shortest || text.length > laid.cells.length) return [];
  const steps = [...text].flatMap((character) => [
    { blank: 1, characters: [] },
    { blank: 0, characters: [[character, 1] as [string, number]] },
  ]);
  return searchLayout(steps, laid, { width: 64, keep }).map(({ path }) => path);
}

/** Reads a code under one system without doubt of any character. Separators that are not in the layout do not fit. */
export function readExactly(
  system: BookSystem,
  code: string,
  latestYear?: number,
): { exact: ExactReading[]; impossible: Impossible | null } {
  const tidy = tidyCode(code);
  const text = system.reversed ? [...tidy].reverse().join('') : tidy;
  const exact: ExactReading[] = [];
  let impossible: Impossible | null = null;
  for (const laid of system.layouts) {
    for (const path of fillExactly(text, laid, 'shape')) {
      const meanings = interpret(system, laid, path, latestYear);
      if (!Array.isArray(meanings)) impossible ??= meanings;
      else {
        const share = 1 / meanings.length;
        for (const meaning of meanings) {
          exact.push({
            reading: { ...readingOf(system, laid, path, meaning), probability: share },
            meaning,
            laid,
            path,
          });
        }
      }
    }
  }
  return { exact, impossible: exact.length > 0 ? null : impossible };
}

/** Every reading of a code under every system of a file, taking each character as it stands; empty when none fits. */
export function decodeExactly(code: string, file: MakerFile, latestYear?: number): Reading[] {
  return openBook(file).systems.flatMap((system) =>
    readExactly(system, code, latestYear).exact.map(({ reading }) => reading),
  );
}
