import type { ProblemWords } from '../problem-words';
import { report } from './report';

const byHand = 'Read the photo again, or type the code by hand.';

/** Failures of the engines that read photos, and of the program itself. */
export const programProblems = {
  'no-stamp-engine': ['no text reader could be started, so no photo was looked at', 'Type the code by hand.'],
  'stamp-engine-failed': [
    ({ said }, kit) => `the text reader failed on this photo${report(said, kit)}`,
    'Read the photo again, or type the code.',
  ],
  'nets-not-loaded': [
    ({ why, said }, kit) =>
      `${{ 'card-not-json': 'the model card is not JSON', 'card-unfit': 'the model card does not fit', 'not-started': 'the nets did not start' }[why]}${report(said, kit)}`,
    'Install the extension again. Until then stamps are read by the print reader, which reads few blind ones.',
  ],
  'reader-failed': [({ said }, kit) => `the reader failed${report(said, kit)}`, byHand],
  'reader-late': [({ seconds }) => `reading took longer than ${seconds} seconds`, byHand],
  'reader-stopped': [({ said }, kit) => `the reader was stopped${report(said, kit)}`, byHand],
  'measuring-failed': [
    ({ said }, kit) => `measuring failed${report(said, kit)}`,
    'Move the mark, or open the photo again.',
  ],
  'message-refused': [
    ({ why, said }, kit) =>
      `${
        {
          'no-handler': 'a message between parts of the extension has nobody who handles it',
          'not-from': 'a message came from a part of the extension that may not send it',
          'from-nowhere': 'a message came from no part of the extension',
          malformed: 'a message between parts of the extension was malformed',
        }[why]
      }${report(said, kit)}`,
    'Reload the extension if this stays.',
  ],
  'no-answer': ['a part of the extension did not answer', 'Click the toolbar button on the listing again.'],
  'reply-malformed': [
    ({ said }, kit) => `a part of the extension answered otherwise than agreed${report(said, kit)}`,
    'Reload the page and read it again.',
  ],
  unforeseen: [
    ({ said }, kit) => `something unforeseen happened${report(said, kit)}`,
    'Try again; if it stays, report it.',
  ],
} satisfies Partial<ProblemWords>;
