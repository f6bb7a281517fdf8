import type { Proposal } from '../../../case';
import { parts } from '../parts';

const nameOf = (part: string) => (part === 'stamp' ? 'the stamp' : parts(part));

/** Which parts a photo shows, as the buyer says. */
export const partTagStrings = {
  title: 'What this photo shows',
  name: (part: string) => nameOf(part),
  keys: 'Press the key of a part to say that the photo shows it, and once more to take it back.',
  stripKeys: 'On a photo, a figure from 0 to 9 says what it shows; the photo itself tells which.',
  other: 'Another part',
  choose: 'Choose…',
  shows: (parts: string[]) => `shows ${parts.join(', ')}`,
  proposes: (what: string) => `Seen by itself: ${what}.`,
  proposals: {
    stamp: 'a stamp',
    'close-up': 'letters from near',
    print: 'print',
    'even-ground': 'an even ground around it',
  } satisfies Record<Proposal, string>,
} as const;
