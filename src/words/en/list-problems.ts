import type { RecordFault } from '../../problem';
import type { ProblemWords } from '../problem-words';

const exported = 'Nothing was changed. Choose a file that the watch list exported.';
const kept = 'The record is kept as it is: export it and report what it says.';
const update = 'Update the extension. Nothing was changed.';

const faults: Record<RecordFault, string> = {
  missing: 'is missing',
  'wrong-kind': 'is of another kind than it should be',
  'too-large': 'is too large or too long',
  'too-small': 'is too small or too short',
  'not-possible': 'holds something that is not possible there',
  more: 'holds more than it may',
};
const placed = ({ place, fault }: { place: string; fault: RecordFault }) =>
  `${place === '' ? 'the record' : `“${place}”`} ${faults[fault]}`;

/** Failures of the watch list and of files that it wrote. */
export const listProblems = {
  'watch-list-newer': ['the watch list was written by a newer version of the extension', update],
  'watch-list-closed': [
    'the browser did not open the watch list',
    'Close other windows of the extension and reload this page; check the free disk space.',
  ],
  'watch-list-failed': ['the browser did not carry out the change', 'Nothing was changed. Try again.'],
  'disk-full': ['the disk is full', 'Free some space and save again. Nothing was changed.'],
  'case-not-shown': ['this case holds something that cannot be shown', 'It is kept as it is; export still carries it.'],
  'record-newer': [
    ({ version, differs }) =>
      differs
        ? 'a newer version wrote it, and the list has another state of it'
        : `a newer version of the extension wrote it${version === null ? '' : ` (version ${version})`}`,
    ({ differs }) =>
      differs
        ? 'Update the extension and import again.'
        : 'Update the extension; until then the record is shown and not changed.',
  ],
  'record-older': ['an older version wrote it', 'Reload this page: it is then brought forward.'],
  'record-missing': ['the case is no longer in the watch list', 'It was deleted, perhaps in another window.'],
  'record-none': ['it is no record of a watch list', kept],
  'record-not-raised': [({ to }) => `it could not be brought to version ${to}`, kept],
  'record-damaged': [(fault) => `the record is damaged: ${placed(fault)}`, kept],
  'record-refused': [
    (refused) =>
      'reply' in refused
        ? 'the reply is empty, or kept already, or one too many'
        : `it cannot be saved: ${placed(refused)}`,
    (refused) =>
      'reply' in refused ? 'Nothing was changed.' : 'Nothing was changed. Shorten the note, or read the page again.',
  ],
  'record-here-unread': [({ why }, _, say) => `the list has it already, and there ${say(why)}`, kept],
  'look-missing': ['a look that the record names is missing', kept],
  'look-spoilt': ['a look of the record is cut off or spoilt', kept],
  'import-too-large': ['the file is too large to be an export', exported],
  'import-cut-off': ['the file is cut off: its end is missing', exported],
  'import-not-json': ['the file is not an export of the watch list', exported],
  'import-other-format': ['the file is not an export of the watch list', exported],
  'import-newer': ['the file was written by a newer version of the extension', exported],
} satisfies Partial<ProblemWords>;
