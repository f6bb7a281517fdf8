import type { WordsFor } from '../../finding-words';
import { rangeSaid, valueSaid } from '../../numbers-said';
import { datedSaid, periodsSaid } from '../dates';
import { filePart } from '../parts';

export const materials: WordsFor<
  | 'construction-against-date'
  | 'fresh-against-age'
  | 'leather-words-agree'
  | 'measured-against-file'
  | 'metal-words-agree'
> = {
  'construction-against-date': {
    title: 'Material, Futter, Nähte, Besatz und Metall sind die der Zeit',
    failureTitle: 'Material, Futter, Nähte, Besatz oder Metall sind nicht die der Zeit',
    rule: 'Ein Hersteller wechselt seine Materialien zu bekannten Zeiten; ein Stück trägt die seiner eigenen Zeit.',
    statement({ claimed, maker, part, is, used, other, dated, later }, kit, kind) {
      const said = `Im Angebot steht ${kit.quote(claimed)}`;
      const what = kind === 'agreement' || other ? `${kit.either(is)} (${filePart(part)})` : kit.either(is);
      const then = `${maker} verwendete ${periodsSaid(used, kit)} ${what}, und ${datedSaid(dated, kit)}`;
      if (later) {
        const day = later.span
          ? ` (${kit.span(later.span)}${later.invoice ? ', mit Rechnung oder Quittung' : ''})`
          : '';
        return `${said}; ${then}: Das Teil ist jünger, wie der Verkäufer mit ${kit.quote(later.words)} sagt${day}.`;
      }
      return kind === 'agreement' ? `${said}; ${then}.` : `${said}, aber ${then}.`;
    },
    innocent: 'Vielleicht wurde das Teil bei einer Reparatur ersetzt, oder das Material ist ungenau benannt.',
    settles: 'Ein scharfes Foto des Teils, und ob es je repariert wurde.',
  },
  'fresh-against-age': {
    title: 'Was mit dem Alter dunkelt und matt wird, ist es geworden',
    failureTitle: 'Teile sollen frisch sein, die mit dem Alter dunkeln oder matt werden',
    rule: 'Unbehandeltes Henkelleder und roter Besatz dunkeln mit den Jahren, und Messing wird matt.',
    statement: ({ words, years, dated }, kit) =>
      `Im Angebot steht ${kit.quote(words)}, aber ${datedSaid(dated, kit)}: etwa ${years} Jahre alt.`,
    innocent: 'Vielleicht lag das Stück im Schrank, oder das Teil wurde ersetzt.',
    settles: 'Ein Foto der Henkel, des Besatzes und der Nieten bei Tageslicht, und ob etwas davon ersetzt wurde.',
  },
  'leather-words-agree': {
    title: 'Die Wörter für das Leder passen zusammen',
    failureTitle: 'Im Angebot stehen Leder und ein lederähnliches Material',
    rule: 'Eine Oberfläche ist aus Leder oder aus einem Material, das so aussieht, nicht beides.',
    statement: ({ leather, other }, kit) => `Im Angebot steht ${kit.quote(leather)} und auch ${kit.quote(other)}.`,
    innocent: 'Außenseite und Futter oder Riemen sind vielleicht aus verschiedenen Materialien.',
    settles: 'Welcher Teil aus welchem Material ist, mit einem Foto einer offenen Kante.',
  },
  'measured-against-file': {
    title: 'Was an einem Teil gemessen ist, entspricht der Herstellerdatei',
    failureTitle: 'Was an einem Teil gemessen ist, entspricht nicht der Herstellerdatei',
    rule: 'Ein Hersteller näht einen Teil mit einer bestimmten Zahl von Stichen und verwendet bestimmte Farben; die Zahl der Datei wird mit dem verglichen, was Sie gemessen haben, im Rahmen der Unsicherheit.',
    statement({ photo, mark, maker, part, is, file }, kit) {
      const value = valueSaid(is, kit);
      const said = {
        stitches: `${value} Stiche (${filePart(part)})`,
        'stitch-pitch': `${value} mm von Stich zu Stich (${filePart(part)})`,
        colour: `Farbe ${value} (${filePart(part)})`,
      }[is.of];
      const numbers = kit.either(file.map((one) => rangeSaid(one, 'bis', kit)));
      return `${kit.sentence(kit.photo(photo))}, Markierung ${mark}: ${said}; die Herstellerdatei von ${maker} nennt ${numbers}.`;
    },
    innocent:
      'Vielleicht wurde der Teil ersetzt oder neu genäht, das Foto schräg aufgenommen, oder die von Hand gesetzten Markierungen erfassen nicht die ganze Reihe oder einen anderen Teil.',
    settles: 'Ein scharfes Foto des Teils, genau von oben, und ob er je repariert wurde.',
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
