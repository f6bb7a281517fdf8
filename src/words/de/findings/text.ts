import type { WordsFor } from '../../finding-words';

export const text: WordsFor<'description-given'> = {
  'description-given': {
    title: 'Das Angebot beschreibt das Stück',
    failureTitle: 'Das Angebot beschreibt das Stück kaum',
    rule: 'Woran sich ein Stück messen lassen muss, wenn es kommt, steht im Angebot.',
    statement: ({ characters }) =>
      characters === 0
        ? 'Das Angebot hat keine Beschreibung.'
        : `Das Angebot beschreibt das Stück in ${characters} Zeichen.`,
    innocent: 'Vielleicht sollen die Fotos sprechen.',
    settles: 'Hersteller, Alter, Material, Maße und Zustand schriftlich.',
  },
};
