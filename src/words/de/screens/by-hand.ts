import type { ScreenWords } from '../../screen-words';

const onPhoto = (photo: number | null) =>
  photo === null ? 'auf einem Foto, das nicht mehr da ist,' : `auf Foto ${photo}`;
const upper = (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;

/** Was von Hand gesetzt, ergänzt oder weggelassen wurde. */
export const byHandStrings: ScreenWords['byHand'] = {
  title: 'Von dir gesetzt',
  undo: 'Zurücknehmen',
  undoNamed: (what) => `Zurücknehmen: ${what}`,
  code: (code) => `Du hast den Code ${code} eingegeben.`,
  codeSet: (was, code) => `Du liest ${code}, wo ${was} gelesen wurde.`,
  lineStruck: (photo, text) => `${upper(onPhoto(photo))} gilt ${text} nicht als Code.`,
  seenStruck: (photo, what) => `${upper(onPhoto(photo))} ist dies weggelassen: ${what}.`,
  seenSet: (photo, what) => `${upper(onPhoto(photo))} ist dies so gesetzt, wie du es siehst: ${what}.`,
  part: (photo) =>
    `${upper(onPhoto(photo))} wird nur in dem Ausschnitt, den du gewählt hast, nach einem Stempel gesucht.`,
  claimStruck: (words) => `Weggelassen aus dem, was das Angebot sagt: „${words}“.`,
  claimSet: (words, now) => `Was das Angebot mit „${words}“ sagt, gilt als „${now}“.`,
  maker: (maker) => `Du sagst, es ist von ${maker}.`,
  claimAdded: (words) => `Ergänzt zu dem, was das Angebot sagt: „${words}“.`,
  aside: (statement, reason) => `Du hast zurückgestellt: ${statement} Dein Grund: ${reason}`,
  piece: (piece) => `Von den angebotenen Stücken siehst du dir an: ${piece}.`,
  stampOn: (photo, piece) =>
    photo === null
      ? `Der Stempel auf einem Foto, das nicht mehr da ist, gehört zu: ${piece}.`
      : `Der Stempel auf Foto ${photo} gehört zu: ${piece}.`,
  shows: (photo, part) => `Du sagst, dass ${onPhoto(photo)} dies zu sehen ist: ${part}.`,
  onePiece: 'Du sagst, dass es ein Stück ist.',
  noCode: 'Das ist kein Code',
  leaveOut: 'Weglassen',
  leaveOutNamed: (statement) => `Weglassen: ${statement}`,
};
