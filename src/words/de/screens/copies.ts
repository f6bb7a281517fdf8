import type { ScreenWords } from '../../screen-words';

/** What the screens say of photos that were read from copies: pictures of the page, or smaller versions. */
export const copiesStrings: ScreenWords['copies'] = {
  small: 'kleine Kopie',
  smallOf: (width, largest) => `kleine Kopie, ${width} von ${largest} Pixeln breit`,
  fromPage: 'Kopie von der Seite',
  part: 'Kopie des Teils, den die Seite zeigt',
  among: ({ all, small }, read) => {
    if (all === 0) return '';
    const kind = small === all ? 'kleinen ' : '';
    if (all < read) return `, ${all} davon aus ${kind}Kopien auf der Seite`;
    return all === 1 ? `, aus einer ${kind}Kopie auf der Seite` : `, alle aus ${kind}Kopien auf der Seite`;
  },
  notJudged: (count) =>
    count === 1
      ? 'aus einer Kopie auf der Seite gelesen. Größe und Schärfe sind die der Kopie: Sie werden nicht beurteilt, und ein größeres Foto wird nicht erbeten.'
      : 'aus Kopien auf der Seite gelesen. Größe und Schärfe sind die der Kopien: Sie werden nicht beurteilt, und größere Fotos werden nicht erbeten.',
  title: (count) =>
    count === 1 ? 'Ein Foto wurde aus einer kleinen Kopie gelesen' : `${count} Fotos wurden aus kleinen Kopien gelesen`,
  offer: (hosts, widths) =>
    widths === null
      ? `Die volle Größe liegt auf ${hosts}. Der Browser gibt sie nur heraus, wenn du diese Adresse erlaubst; bis dahin wird die Kopie auf der Seite gelesen.`
      : `Die volle Größe, ${widths.largest} Pixel breit, liegt auf ${hosts}. Der Browser gibt sie nur heraus, wenn du diese Adresse erlaubst; bis dahin wird die Kopie auf der Seite gelesen, ${widths.copy} Pixel breit.`,
  limits:
    'Nur diese Adresse, nur um das Angebot zu lesen. In den Einstellungen des Browsers für Erweiterungen nimmst du es zurück.',
  stay: 'Bei den Kopien bleiben',
  stayed: 'Aus kleinen Kopien gelesen.',
};
