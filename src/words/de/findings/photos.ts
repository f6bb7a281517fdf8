import type { WordsFor } from '../../finding-words';

export const photos: WordsFor<'photo-large-enough'> = {
  'photo-large-enough': {
    title: 'Die Fotos sind groß genug für Einzelheiten',
    failureTitle: 'Alle Fotos sind zu klein für Einzelheiten',
    statement: ({ longestPx }, kit) => `Das größte Foto ist ${kit.number(longestPx)} Pixel lang.`,
    rule: 'Einzelheiten wie Stiche und Prägungen brauchen Fotos von einer gewissen Größe.',
    innocent: 'Manche Marktplätze verkleinern, was hochgeladen wird.',
    settles: 'Größere Fotos, auch per Nachricht.',
  },
};
