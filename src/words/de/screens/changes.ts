import type { ScreenWords } from '../../screen-words';

/** What the screens say of a listing that was saved before. */
export const changesStrings: ScreenWords['changes'] = {
  title: (day) => `Was sich seit dem gesicherten Blick vom ${day} geändert hat`,
  none: (day) => `Seit dem gesicherten Blick vom ${day} hat sich nichts geändert.`,
  price: (before, now, share) =>
    `Der Preis war ${before}; jetzt ist er ${now}${share ? `, ${share.by} ${share.less ? 'weniger' : 'mehr'}` : ''}.`,
  noPrice: (before) => `Der Preis war ${before}; jetzt wurde keiner gelesen.`,
  heading: (before, now) =>
    `Der Titel war ${before}; ${now === null ? 'jetzt wurde keiner gelesen' : `jetzt ist er ${now}`}.`,
  seller: (before, now) =>
    `Als Verkäufer war ${before} genannt; ${now === null ? 'jetzt ist niemand genannt' : `jetzt ${now}`}.`,
  description: 'Die Beschreibung wurde geändert.',
  noDescription: 'Es gab eine Beschreibung; jetzt wurde keine gelesen.',
  gone: 'Nicht mehr da:',
  added: 'Neu:',
  more: (number) => `und ${number} weitere`,
  photosGone: (gone, of) => (gone === 1 ? `1 von ${of} Fotos fehlt jetzt.` : `${gone} von ${of} Fotos fehlen jetzt.`),
  photosAdded: (numbers) =>
    numbers.length === 1 ? `Foto ${numbers[0]} ist neu.` : `Die Fotos ${numbers.join(', ')} sind neu.`,
  photosNumber: (of, now) => `Es waren ${of} Fotos; jetzt sind es ${now}.`,
  claim: (kind, gone, added) => `${kind}: war ${gone}; jetzt ${added}.`,
  claimGone: (kind, gone) => `${kind}: ${gone} steht nicht mehr da.`,
  claimAdded: (kind, added) => `${kind}: ${added} steht jetzt da und stand vorher nicht da.`,
};
