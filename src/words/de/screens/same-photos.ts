import type { ScreenWords } from '../../screen-words';

/** Ein Foto des Falls, das auch in anderen aufbewahrten Fällen steht. */
export const samePhotosStrings: ScreenWords['samePhotos'] = {
  title: 'Dasselbe Foto in anderen aufbewahrten Fällen',
  own: (photo) => `Hier: Foto ${photo}`,
  ownEarlier: (photo, day) => `Hier: Foto ${photo}, gelesen am ${day}, seither fort`,
  other: (photo, day) => `Dort: Foto ${photo}, gelesen am ${day}`,
  mirrored: 'Das eine ist das Spiegelbild des anderen.',
  cut: 'Das eine zeigt weniger als das andere.',
  why: 'Wer verkauft, stellt ein Stück vielleicht neu oder auf mehreren Seiten ein, ein Laden zeigt vielleicht ein Foto für mehrere gleiche Stücke, und wer kauft, verkauft vielleicht mit den Fotos von vorher weiter.',
};
