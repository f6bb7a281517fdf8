import type { WordsFor } from '../../finding-words';

type Text = 'description-given' | 'authorship-plain' | 'maker-stated';

export const text: WordsFor<Text> = {
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
  'authorship-plain': {
    title: 'Das Angebot sagt klar, wer das Stück hergestellt hat',
    failureTitle: 'Das Angebot lässt offen, wer das Stück hergestellt hat',
    rule: '„Im Stil von“ oder „inspiriert von“ heißt, dass jemand anderes es hergestellt hat.',
    statement: ({ words }, kit) => `Das Angebot lässt offen, wer es hergestellt hat: ${kit.quote(words)}.`,
    innocent: 'Vielleicht ist der Schnitt oder die Zeit gemeint, oder es ist nur Vorsicht.',
    settles: 'Wer es hergestellt hat, schriftlich.',
  },
  'maker-stated': {
    title: 'Das Angebot nennt einen Hersteller',
    failureTitle: 'Das Angebot nennt keinen Hersteller oder mehrere',
    rule: 'Ein Stück hat einen Hersteller, und eine Beschreibung, auf die man sich berufen kann, nennt ihn.',
    statement: ({ makers }, kit) =>
      makers.length === 0
        ? 'Das Angebot nennt keinen Hersteller.'
        : `Das Angebot nennt mehrere Hersteller: ${kit.list(makers.map(kit.quote))}.`,
    innocent: 'Andere Hersteller sind vielleicht genannt, damit das Angebot gefunden wird, oder zum Vergleich.',
    settles: 'Wer es hergestellt hat, schriftlich.',
  },
};
