import type { Imported } from '../../../watch/types';
import { count } from './count';

/** The words of the watch list. */
export const watchStrings = {
  title: 'Watch list',
  empty: 'Nothing saved yet. Open a listing, click the Tellstamp button, and save it from the panel.',
  counted: (number: number) => count(number, 'case', 'cases'),
  statuses: {
    watching: 'watching',
    asked: 'asked the seller',
    answered: 'seller answered',
    bought: 'bought',
    passed: 'passed',
  },
  status: 'Status',
  /** Behind a name that many rows share, for who reads by ear. */
  of: (title: string) => `of ${title}`,
  note: 'Note',
  saveNote: 'Save note',
  noteSaved: 'Note saved.',
  bothNotesSaved: 'Note saved. Another window had changed it meanwhile: its text is kept below.',
  hasNote: 'note',
  hasOtherNotes: (number: number) => count(number, 'other note', 'other notes'),
  dated: {
    title: 'Do you know otherwise when it was made?',
    about:
      'From a receipt, the seller’s answer, or the piece in your hand. With its code it is an example of how the maker wrote dates.',
    date: 'Made',
    country: 'Country',
    by: 'Known from',
    ways: { receipt: 'a receipt', answer: 'the seller’s answer', own: 'the piece itself', elsewhere: 'somewhere else' },
    keep: 'Keep this date',
    noDate: 'There is no date.',
    takeBack: 'Take it back',
    says: (date: string, from: string) => `Made: ${date}, known from ${from}.`,
    give: (code: string, maker: string) => `Give ${code} to the file on ${maker} as an example`,
    noExample: 'Without a code and a maker it is no example for a file.',
  },
  otherNotes: 'Other notes',
  otherNoteFrom: {
    import: (day: string) => `From a file, imported ${day}`,
    window: (day: string) => `From another window, ${day}`,
    bin: (day: string) => `From a deleted case of the same listing, ${day}`,
  },
  otherStatus: (status: string) => `Status there: ${status}`,
  takeNote: 'Put it under my note',
  takeStatus: 'Take this status',
  dropNote: 'Remove it',
  earlierLooks: 'Earlier looks',
  foundOtherwise: (day: string) => `On ${day} something else was found than today`,
  foundThen: 'What was found then',
  foundNow: 'What is found now',
  nothingElse: 'Nothing else.',
  judgedBy: (version: string | null) =>
    version === null ? 'Judged then by an earlier version.' : `Judged then by version ${version}.`,
  makerFile: {
    same: (maker: string) => `The maker file of ${maker} is the same as then.`,
    changed: (maker: string) => `The maker file of ${maker} has changed since.`,
    gone: (maker: string) => `The maker file of ${maker} is no longer there.`,
    unknown: (maker: string) => `Which maker file of ${maker} was used was not written down.`,
  },
  back: 'Back to the list',
  close: 'Close',
  page: 'Go to the listing',
  remove: 'Delete',
  removed: (title: string) => `Deleted: ${title}`,
  undo: 'Undo',
  bin: 'Deleted, kept for 30 days',
  restore: 'Put back',
  exportAll: 'Export as a file',
  severalFiles: ({ files, photos }: { files: number; photos: number }) =>
    `${count(photos, 'photo that is kept whole does', 'photos that are kept whole do')} not fit into one file, so the list takes ${files}. Save them all: imported in any order, they bring back everything.`,
  saveFile: (file: number, of: number) => `Save file ${file} of ${of}`,
  allFilesSaved: 'Done',
  importFile: 'Import a file',
  imported: ({ added, joined, bothNotes, same, stayDeleted, newer, leftOut, file, filled }: Imported): string[] => [
    `${added} added, ${same} the same as here.`,
    ...(joined.length > 0
      ? [
          `${count(joined.length, 'case', 'cases')} you have already, now with what the file has more: ${named(joined)}.`,
        ]
      : []),
    ...(bothNotes.length > 0 ? [`Your note stayed, and the other one stands beside it: ${named(bothNotes)}.`] : []),
    ...(stayDeleted > 0
      ? [`${count(stayDeleted, 'case', 'cases')} you have deleted since: still in the bin below.`]
      : []),
    ...(newer > 0 ? [`${count(newer, 'record', 'records')} of a newer version, kept unchanged.`] : []),
    ...(filled > 0 ? [`${count(filled, 'picture', 'pictures')} that cases here were without came along.`] : []),
    ...(file !== null ? [`This was file ${file.number} of ${file.of} of one export: import the others too.`] : []),
    ...(leftOut > 0
      ? [
          `The file had no room for ${count(leftOut, 'photo', 'photos')} in full: of ${leftOut === 1 ? 'it' : 'them'} the small picture came along.`,
        ]
      : []),
  ],
  refused: (number: number) => `${count(number, 'record', 'records')} refused:`,
  /** `where`: the record's number in the file, and its title. */
  refusedRecord: (where: string, what: string) => `record ${where}: ${what}`,
  untitled: 'A record without a title',
  newer: 'Saved by a newer version. It is shown as it is and not changed; export still carries it.',
  damaged: 'This record cannot be read. It is kept as it is; export still carries it.',
  lost: ({ kind, before }: { kind: 'gone' | 'older'; before: number | null }): string => {
    const held = before === null ? '' : ` It held ${count(before, 'record', 'records')} when it was last changed.`;
    return kind === 'gone'
      ? `The browser has removed the watch list that was here.${held} Import your last export.`
      : `The watch list is an older copy of itself, or a part of it is missing.${held} Import your last export.`;
  },
  understood: 'I know: go on with this list',
  saved: (day: string) => `saved ${day}`,
  filter: 'Show',
  find: 'Find',
  countedOf: (number: number, of: number) => `${number} of ${count(of, 'case', 'cases')}`,
  all: 'all',
} as const;

/** Some titles by name, the rest by number. */
function named(titles: string[]): string {
  const most = 5;
  const rest = titles.length - most;
  return rest > 0 ? `${titles.slice(0, most).join(', ')} and ${rest} more` : titles.join(', ');
}
