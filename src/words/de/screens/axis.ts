import type { ScreenWords } from '../../screen-words';
import { bareParts } from '../parts';

const dates = (number: number) => (number === 1 ? 'eine andere Zeit' : `${number} andere Zeiten`);

/** In a tie every side is named: to leave one out would take a side. */
function equalSides(sides: readonly string[], more: number): string[] {
  const named = sides.map((side) => `ebenso viele für ${side}`);
  const all = more === 0 ? named : [...named, `ebenso viele für ${dates(more)}`];
  return all.map((words, at) => (at === all.length - 1 ? `und ${words}` : words));
}

/** The words of the time axis. */
export const axisStrings: ScreenWords['axis'] = {
  title: 'Wann es hergestellt wurde',
  chart: (first, last, agreed) =>
    `Zeitachse von ${first} bis ${last} mit einem Balken für jede Aussage zur Zeit. ${agreed} Alles steht auch in der Tabelle darunter.`,
  agreed: (facts, sides, more) =>
    `${[`${facts} Angaben sprechen gemeinsam für ${sides[0]}`, ...equalSides(sides.slice(1), more)].join(', ')}.`,
  noneAgree: 'Keine zwei Angaben stimmen in der Zeit überein.',
  hard: 'fest',
  soft: 'lose',
  softMeans: 'lose: eine Gewohnheit, eine ungefähre Zeit oder nicht geprüft',
  stretch: 'wo die meisten Angaben zusammentreffen',
  moreRows: (number) =>
    number === 1 ? 'Eine weitere Aussage in der Tabelle.' : `${number} weitere Aussagen in der Tabelle.`,
  table: 'Dasselbe als Tabelle',
  statement: 'Aussage',
  dates: 'Zeit',
  stands: 'Steht',
  source: 'Quelle',
  agrees: {
    all: 'passt zu den meisten',
    'one-side': 'auf einer der gleich starken Seiten',
    none: 'passt nicht zu den anderen',
  },
  kinds: {
    claim: 'Angebot',
    country: 'Das Land bestand',
    reading: 'Code',
    quoted: 'Code wie zitiert',
    system: 'Aufbau des Codes',
    plant: 'Werkstatt',
    mark: 'Zeichen',
    construction: 'Machart',
  },
  about: { ...bareParts, model: 'Modell' },
  beyond: { before: 'früher als diese Achse', after: 'später als diese Achse' },
};
