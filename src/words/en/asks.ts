import type { AskWords } from '../asks-words';
import { namedPart, namedParts, parts } from './parts';
import { subjects } from './subjects';

export const asks: AskWords = {
  'stamp-photo': ({ where = [] }, kit) =>
    `Could you add a sharp, close photo of the stamped code, straight from above and in daylight?${where.length > 0 ? ` It should be here: ${kit.either(where.map(kit.quote))}.` : ''}`,
  'whole-stamp': () => 'Could you add a photo that shows the whole stamped code, with some room on all sides of it?',
  'made-date': ({ told }) =>
    told
      ? 'How do you know when it was made, and where was it bought?'
      : 'How do you know when it was made, and when and where was it bought?',
  origin: () => 'Where does it say which country it was made in? A photo of that label would help.',
  measures: () => 'Could you measure the width, height and depth at the base, with the tape in the photo?',
  returns: () => 'Could you tell me whether you accept returns, and within how many days?',
  'not-as-described': () => 'You write that you take no returns: is that so even if the piece is not as described?',
  purchase: ({ told }) =>
    told
      ? 'Could you add a photo of the paper from when it was bought, with your name covered?'
      : 'Do you have the receipt or another paper from when it was bought?',
  payment: () => 'I would like to pay through the marketplace. Is that all right with you?',
  'larger-photos': () => 'Could you send larger photos, above all of the stamp, the handles and the corners?',
  price: () => 'Could you confirm the price that you ask?',
  'lower-price': () => 'Is there a reason for the lower price?',
  'parts-not-shown': () => 'Could you add photos of parts that are not shown yet?',
  'parts-to-show': ({ parts: shown }, kit) =>
    `Could you add photos of any of these that are not shown yet: ${kit.list([...shown.map((part) => parts(part)), 'the stamp'])}?`,
  'first-photos': () => 'Could you add photos of the front, the back, the base, the inside and the stamp?',
  'which-one': () => 'Which of the pieces would I get, and could you add photos of exactly that one?',
  'own-photo': () => 'Could you add photos of the piece itself, one of them with today’s date on a slip of paper?',
  'gone-photos': () => 'Could you send me the photos that were in the listing before?',
  description: () => 'Could you describe its maker, age, material, size and condition in writing?',
  'why-changed': ({ subject }) => `Could you tell me why ${subjects[subject]} was changed in the listing?`,
  'changed-hands': () => 'Has the piece changed hands since it was first listed?',
  part: ({ part, told }) =>
    `Could you add a sharp photo of ${namedParts[part]}${told ? '' : ', and was it ever repaired or replaced'}?`,
  'measured-part': ({ part }) =>
    `Could you add a sharp photo of ${namedPart(part)}, taken straight from above, and was it ever repaired or replaced?`,
  'what-comes': () => 'Could you tell me what exactly comes with the sale, and whether the piece itself does?',
  'remade-by': () => 'Could you tell me who remade it, and what it was made from?',
  authorship: () => 'Could you confirm in writing who made it, and how you know?',
  trader: () => 'Do you sell as a private person or as a business?',
  seller: () => 'Have you sold similar pieces before, here or elsewhere?',
  assurance: () => 'What does that rest on: a receipt, the code, or the opinion of someone qualified?',
  condition: () => 'Could you describe every sign of use, with a photo of each?',
  leather: () => 'Which parts are leather and which are not? A photo of a raw edge would show it well.',
  aging: ({ told }) =>
    `Could you add a daylight photo of the handles, the trim and the rivets?${told ? '' : ' Was any of them ever replaced?'}`,
  model: () => 'How do you know which model it is?',
  'worn-metal': () => 'Could you add a close photo of the metal parts where they are most worn?',
};
