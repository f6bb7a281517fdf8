import type { AskWords } from '../asks-words';
import { parts } from './parts';

export const asks: AskWords = {
  'as-written': ({ words }) => words,
  'stamp-photo': () => 'Could you add a sharp, close photo of the stamped code, straight from above and in daylight?',
  'made-date': () => 'How do you know when it was made, and when and where was it bought?',
  origin: () => 'Where does it say which country it was made in? A photo of that label would help.',
  measures: () => 'Could you measure the width, height and depth at the base, with the tape in the photo?',
  returns: () => 'Could you tell me whether you accept returns, and within how many days?',
  purchase: () => 'Do you have the receipt or another paper from when it was bought?',
  payment: () => 'I would like to pay through the marketplace. Is that all right with you?',
  'larger-photos': () => 'Could you send larger photos, above all of the stamp, the handles and the corners?',
  'lower-price': () => 'Is there a reason for the lower price?',
  part: ({ part }) => `Could you add a sharp photo of ${parts[part]}, and was it ever repaired or replaced?`,
};
