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
    passed: 'let go',
  },
  status: 'Status',
  note: 'Note',
  saveNote: 'Save note',
  noteSaved: 'Note saved.',
  open: 'Open',
  close: 'Close',
  page: 'Go to the listing',
  remove: 'Delete',
  removed: (title: string) => `Deleted: ${title}`,
  undo: 'Undo',
  bin: 'Deleted, kept for 30 days',
  restore: 'Put back',
  exportAll: 'Export as a file',
  importFile: 'Import a file',
  imported: (added: number, renewed: number, kept: number) =>
    `${added} added, ${renewed} renewed, ${kept} kept as they were.`,
  refused: (number: number) => `${count(number, 'record', 'records')} refused:`,
  newer: 'Saved by a newer version. It is shown as it is and not changed; export still carries it.',
  damaged: 'This record cannot be read. It is kept as it is; export still carries it.',
  wiped:
    'The browser has removed this extension’s data: the list is empty although cases were saved. Import your last export.',
  understood: 'Start with an empty list',
  saved: (day: string) => `saved ${day}`,
  filter: 'Show',
  all: 'all',
} as const;
