import type { ScreenWords } from '../../screen-words';
import { parts } from '../parts';

const nameOf = (part: string) => (part === 'stamp' ? 'der Stempel' : parts(part));

/** Welche Teile ein Foto zeigt, wie der Käufer sagt. */
export const partTagStrings: ScreenWords['partTags'] = {
  title: 'Was dieses Foto zeigt',
  name: (part) => nameOf(part),
  keys: 'Drück die Taste eines Teils, um zu sagen, dass das Foto ihn zeigt, und noch einmal, um es zurückzunehmen.',
  stripKeys: 'Auf einem Foto sagt eine Ziffer von 0 bis 9, was es zeigt; welche das ist, steht bei dem Foto selbst.',
  other: 'Ein anderer Teil',
  choose: 'Wählen…',
  shows: (shown) => `zeigt: ${shown.join(', ')}`,
  proposes: (what) => `Von selbst gesehen: ${what}.`,
  proposals: {
    stamp: 'ein Stempel',
    'close-up': 'Schrift aus der Nähe',
    print: 'Gedrucktes',
    'even-ground': 'ein gleichmäßiger Grund darum herum',
  },
};
