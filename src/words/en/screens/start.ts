/** The words of the first page, and of codes and photos without a listing. */
export const startStrings = {
  title: 'Hold a listing against its own stamp',
  about:
    'Tellstamp reads a listing’s words and photos on your machine and sets side by side what the maker’s code says, what the seller says, and what nobody has shown yet. It does not say who made a piece. There is no account, and nothing is asked of you here.',
  demo: 'Try it: a listing made up for this',
  demoAbout: 'An invented bag by an invented maker. It takes half a minute and needs no shop and no permission.',
  openDemo: 'Open the demo listing',
  demoNote:
    'Everything here is invented for the demonstration: bag, maker, seller and shop. It is read as any listing is. Nothing of it is kept.',
  code: 'Read a code',
  whose: 'Whose codes',
  nobody: 'Maker not on file, or not known',
  photo: 'Read a photo',
  photoHow: 'Drop a photo here, paste one, or choose a file. It stays on this machine.',
  choosePhoto: 'Choose a photo',
  photoForms: 'JPEG, PNG, WebP, AVIF, GIF',
  files: 'Files on makers',
  filesAbout:
    'None of a real maker comes with it. A file says how a maker dated its pieces; you get one in one of these ways.',
  bring: 'Bring in a file from someone who knows the maker',
  take: 'Take it from a page that tells how codes are built',
  workOut: 'Work it out from codes whose dates you know',
  fromListing: 'Start from a listing: the panel offers it.',
  beside: 'Beside a listing',
  besideHow:
    'Open the page of one piece and press the Tellstamp button. The panel opens. Nothing is read before you press.',
  keys: (keys: string) => `The keys ${keys} do the same. The browser’s list of extensions changes them.`,
  noKeys: 'No keys are set for it. The browser’s list of extensions sets them.',
  noButton: 'No button in sight? Open the browser’s list of extensions and pin it.',
  kept: 'What is stored, what is allowed',
  keptWhat:
    'Stored is what you keep, on this machine; nothing from private windows. Nothing is sent but requests for a listing’s own photos, and for a maker file at an address that you named.',
  allowedNone: 'No shop is allowed yet. Each is asked for when it is needed, and listed here to take back.',
  allowed: 'You allowed reading from:',
  takeBack: 'Take back',
  takeBackFrom: (host: string) => `Take back: ${host}`,
  /** Over photos that were dropped on the panel of a page without a listing. */
  given: 'Your own photo, none of this page’s',
  readThis: 'Read this photo',
  otherPhoto: 'Read a photo',
} as const;
