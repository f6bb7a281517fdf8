import type { ScreenWords } from '../../screen-words';
import { filePart } from '../parts';

const dates = (number: number) => (number === 1 ? 'eine andere Zeit' : `${number} andere Zeiten`);
const names = { read: 'der Code', seen: 'die Zeichen', said: 'das Angebot' } as const;
/** Who agrees with itself. */
const alone = { read: 'die Codes', seen: 'die Zeichen', said: 'die Angaben des Angebots' } as const;

const agree = ({ by, on }: { by: readonly (keyof typeof names)[]; on: string }): string => {
  const all = by.length === 1 ? by.map((one) => alone[one]) : by.map((one) => names[one]);
  const last = all.at(-1) ?? '';
  return `${all.length > 1 ? `${all.slice(0, -1).join(', ')} und ${last}` : last} sprechen für ${on}`;
};

/** The words of the time axis. */
export const axisStrings: ScreenWords['axis'] = {
  title: 'Wann es hergestellt wurde',
  chart: (first, last, agreed) =>
    `Zeitachse von ${first} bis ${last} mit einem Balken für jede Aussage zur Zeit. ${agreed} Alles steht auch in der Tabelle darunter.`,
  /** In a tie every side is named: to leave one out would take a side. */
  agreed(sides, more) {
    const all = [...sides.map(agree), ...(more === 0 ? [] : [`ebenso viel spricht für ${dates(more)}`])];
    const words = all.length > 1 ? `${all.slice(0, -1).join(', ')}, und ${all.at(-1)}` : (all[0] ?? '');
    return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
  },
  noneAgree: 'Keine zwei Angaben, die einander ausschließen könnten, sprechen für dieselbe Zeit.',
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
  standing: {
    agrees: 'passt zu den meisten',
    'one-side': 'auf einer der gleich starken Seiten',
    apart: 'passt nicht zu allen anderen',
    alone: 'spricht gegen nichts anderes',
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
  about: (part: string) => (part === 'model' ? 'Modell' : filePart(part)),
  beyond: { before: 'früher als diese Achse', after: 'später als diese Achse' },
};
