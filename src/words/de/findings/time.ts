import type { WordsFor } from '../../finding-words';
import { codeShown, readingsSaid } from '../codes';
import { claimed, markSaid } from '../dates';

export const time: WordsFor<'code-against-claimed-date' | 'mark-against-claimed-date' | 'mark-against-code-date'> = {
  'code-against-claimed-date': {
    title: 'Die Zeit des Codes ist die genannte Zeit',
    failureTitle: 'Die Zeit des Codes ist nicht die genannte Zeit',
    rule: 'Ein Stück entstand, wann sein Code es sagt, und nicht vorher.',
    statement: ({ shown, readings, claim, inside }, kit, kind) => {
      const said = `${kit.sentence(codeShown(shown, kit))}: ${readingsSaid(readings, kit)}`;
      if (kind !== 'agreement') return `${said}. Das Angebot sagt ${claimed(claim, kit)}.`;
      return inside
        ? `${said}; das liegt in der Zeit, die das Angebot nennt: ${claimed(claim, kit)}.`
        : `${said}; damit ist die Zeit möglich, die das Angebot nennt: ${claimed(claim, kit)}.`;
    },
    basis: ({ system, date, claim }, kit) => [
      `${system}: ${kit.span(date)}`,
      `die Worte des Angebots: ${claimed(claim, kit)}`,
    ],
    innocent:
      'Vielleicht ist das Kaufjahr genannt, die Angabe stammt von früher, oder der Code wurde beim Verkauf falsch gelesen.',
    settles: 'Der Code, wie ihn der Verkäufer liest, und woher das Jahr bekannt ist.',
  },
  'mark-against-claimed-date': {
    title: 'Die Zeichen erlauben die genannte Zeit',
    failureTitle: 'Die Zeit eines Zeichens passt nicht zur genannten Zeit',
    rule: 'Eine Patentnummer, ein Geschmacksmuster oder ein Silberstempel datiert ein Stück, wer immer es gemacht hat.',
    statement: ({ mark, claim }, kit, kind) =>
      kind === 'agreement'
        ? `${kit.sentence(markSaid(mark, kit))}; damit ist die Zeit möglich, die das Angebot nennt: ${claimed(claim, kit)}.`
        : `${kit.sentence(markSaid(mark, kit))}. Das Angebot sagt ${claimed(claim, kit)}.`,
    innocent:
      'Vielleicht wurde das Teil mit dem Zeichen (Reißverschluss, Schloss, Etikett) später ersetzt oder die Nummer falsch gelesen.',
    settles: 'Ein scharfes Foto des Zeichens und des Teils, an dem es ist.',
  },
  'mark-against-code-date': {
    title: 'Die Zeichen erlauben die Zeit des Codes',
    failureTitle: 'Die Zeit eines Zeichens passt nicht zur Zeit des Codes',
    rule: 'Der Code und die öffentlichen Zeichen eines Stücks datieren dieselbe Herstellung.',
    statement: ({ shown, readings, mark }, kit) =>
      `${kit.sentence(codeShown(shown, kit))}: ${readingsSaid(readings, kit)}; ${markSaid(mark, kit)}.`,
    innocent: 'Vielleicht wurde das Teil mit dem Zeichen später ersetzt, oder eines von beiden ist falsch gelesen.',
    settles: 'Scharfe Fotos des Stempels und des Zeichens.',
  },
};
