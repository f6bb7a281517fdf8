import type { ScreenWords } from '../../screen-words';

/** Was daran auffällt, wie die Fotos entstanden sind. */
export const photoNoteStrings: ScreenWords['photoNotes'] = {
  title: 'An den Fotos bemerkt',
  size: (photos, longer, shorter) => `${photos}: ${longer} × ${shorter} Pixel.`,
  sizesWhy:
    'Fotos eines Angebots sind verschieden groß, wenn manche beschnitten, mit einer anderen App gespeichert oder mit einem anderen Telefon aufgenommen wurden.',
  margins: (photos) => `${photos}: ein gleichmäßiger Rand um das Bild; die anderen haben keinen.`,
  marginsWhy: 'Apps und Marktplätze legen Ränder um Fotos von anderer Form.',
  evenGrounds: (photos) =>
    `${photos}: ein gleichmäßig heller Grund, wie im Katalog; andere zeigen einen Grund in gewöhnlichem Licht.`,
  evenGroundsWhy:
    'Ein Telefon oder eine App hat das Stück vielleicht freigestellt oder einen ruhigen Grund dahinter gelegt.',
  taken: (photos, day) => `${photos}: laut Datei aufgenommen am ${day}.`,
  camera: (photos, camera) => `${photos}: laut Datei aufgenommen mit ${camera}.`,
  fileWhy:
    'Die Uhr einer Kamera kann falsch gehen, und ein Foto kann älter sein als der Verkauf. Marktplätze und Chats nehmen das meist heraus: dass es fehlt, sagt nichts.',
};
