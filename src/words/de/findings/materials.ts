import type { WordsFor } from '../../finding-words';

export const materials: WordsFor<'leather-words-agree' | 'metal-words-agree'> = {
  'leather-words-agree': {
    title: 'Die Wörter für das Leder passen zusammen',
    failureTitle: 'Im Angebot stehen Leder und ein lederähnliches Material',
    rule: 'Eine Oberfläche ist aus Leder oder aus einem Material, das so aussieht, nicht beides.',
    statement: ({ leather, other }, kit) => `Im Angebot steht ${kit.quote(leather)} und auch ${kit.quote(other)}.`,
    innocent: 'Außenseite und Futter oder Riemen sind vielleicht aus verschiedenen Materialien.',
    settles: 'Welcher Teil aus welchem Material ist, mit einem Foto einer offenen Kante.',
  },
  'metal-words-agree': {
    title: 'Die Wörter für das Metall passen zusammen',
    failureTitle: 'Im Angebot stehen für denselben Teil zwei Metalle, die sich ausschließen',
    rule: 'Massives Gold oder Silber ist weder plattiert noch nur in diesem Ton, und kein massives Metall ist eine Zinklegierung. Massives Messing kann plattiert sein.',
    statement: ({ solid, other, part }, kit) =>
      `Im Angebot steht ${kit.quote(solid)} und auch ${kit.quote(other)}, beides vom selben Teil (${part === null ? 'Metall' : kit.quote(part)}).`,
    innocent: 'Vielleicht sind verschiedene Schnallen, Nieten oder Reißverschlüsse gemeint.',
    settles: 'Ein nahes Foto des Metalls an einer abgenutzten Stelle.',
  },
};
