import { useState } from 'preact/hooks';
import { type Draft, draftOf, inspectDraft, type MakerFile, makerProblem, openText, plainName } from '../../../maker';
import type { Problem } from '../../../problem';
import { originOf, withFound } from '../../../reader/file/look';
import { type FileAt, mostFileBytes } from '../../../reader/file/read-file';
import type { BroughtText } from '../../../store/brought';
import { type FileOrigin, writeOrigin } from '../../../store/file-origins';
import type { OwnMakerFile } from '../../../store/maker-files';
import { strings } from '../../../words';

/** A file that was brought in and is on a maker of whom there is one already. */
interface Waiting {
  ownId: string;
  theirs: MakerFile;
  /** Where it is from, when it came from an address. */
  origin: FileOrigin | null;
}

/** Most problems of one file that are told at once. */
const mostTold = 5;
const makerOf = ({ draft }: OwnMakerFile) => plainName(typeof draft.value.maker === 'string' ? draft.value.maker : '');

interface Room {
  files: readonly OwnMakerFile[];
  origins: ReadonlyMap<string, FileOrigin>;
  /** Keeps a new file, and gives its number. */
  begin: (draft: Draft) => string;
  show: (id: string) => void;
}

/** The texts of files, as far as they may be maker files. */
export const textsOf = (files: Iterable<File>): Promise<BroughtText[]> =>
  Promise.all(
    [...files].map(async (file) => ({ name: file.name, text: file.size > mostFileBytes ? null : await file.text() })),
  );

/** Maker files that are brought in: chosen, dropped, pasted, or fetched from an address. */
export function useBrought({ files, origins, begin, show }: Room) {
  const [problems, setProblems] = useState<Problem[]>([]);
  // One after the other: several files that are dropped at once may each belong to a file that is here.
  const [waiting, setWaiting] = useState<Waiting[]>([]);

  const openAs = (draft: Draft, origin: FileOrigin | null) => {
    const theirs = inspectDraft(draft).file;
    const own = theirs && files.find((one) => makerOf(one) === plainName(theirs.maker));
    if (own && theirs && inspectDraft(own.draft).file) {
      setWaiting((present) => [...present, { ownId: own.id, theirs, origin }]);
      return;
    }
    const id = begin(draft);
    if (origin) writeOrigin(id, origin);
  };
  const openAll = (texts: readonly BroughtText[]) => {
    const faults: Problem[] = [];
    for (const { name, text } of texts) {
      const { draft, problems: found } = text === null ? { draft: null, problems: [tooLarge] } : openText(text);
      faults.push(
        ...found
          .slice(0, mostTold)
          .map((problem) => ({ ...problem, where: `${name}, ${strings.makers.place(problem.where)}` })),
      );
      if (draft) openAs(draft, null);
    }
    setProblems(faults);
  };
  return {
    problems,
    next: waiting[0],
    /** How many are waiting: another number is another question. */
    left: waiting.length,
    done: () => setWaiting((present) => present.slice(1)),
    takeTexts: openAll,
    takeFiles: async (chosen: Iterable<File>) => openAll(await textsOf(chosen)),
    takeText: (text: string) => openAll([{ name: strings.travel.pasted, text }]),
    /** A file that was fetched and looked at. From an address that is known, it is what was found there. */
    takeFetched(fetched: FileAt, daily: boolean) {
      setProblems([]);
      const known = [...origins].find(
        ([id, { address }]) => address === fetched.address && files.some((one) => one.id === id),
      );
      if (!known) return openAs(draftOf(fetched.file), originOf(fetched, daily));
      const [id, origin] = known;
      writeOrigin(id, withFound(origin, fetched));
      show(id);
    },
  };
}

const tooLarge = makerProblem('maker-file-too-large', 'the file', { kind: 'more-characters', most: mostFileBytes });
