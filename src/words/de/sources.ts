import type { SourceWords } from '../source-words';
import { systemName } from '../system-name';

export const sources: SourceWords = {
  memory: 'aus dem Gedächtnis, nicht geprüft',
  practice: 'üblich, ohne Quelle',
  makerFile: (maker, invented) =>
    maker === null
      ? 'was die Herstellerdatei selbst sagt, mit ihren Quellen'
      : `${invented ? 'erfundene ' : ''}Herstellerdatei von ${maker}`,
  parts: {
    'code-systems': () => 'Aufbau der Codes',
    'code-system': ({ name }) => `Aufbau ${systemName(name)}`,
    plants: () => 'Werkstätten',
    plant: ({ name }) => `Werkstatt ${name}`,
    years: ({ name }) => `Jahre von ${name}`,
    model: ({ name }) => `Modell ${name}`,
    sizes: ({ names }) => `Größe von ${names.join(', ')}`,
    'new-price': ({ year }) => `kleinster Neupreis von ${year}`,
    price: ({ year }) => `Preis von ${year}`,
    sale: () => 'wie verkauft wird',
  },
  itsSource: (sources) => ` (Quelle: ${sources})`,
  listing: {
    title: 'der Titel des Angebots',
    description: 'die Beschreibung des Angebots',
    text: 'der Text des Angebots',
    data: 'die Daten des Angebots',
    reply: 'die Antwort auf deine Fragen',
    code: 'im Angebot zitiert',
    measures: 'die Maße im Angebot',
    price: 'der Preis im Angebot',
  },
  photo: 'in einem Foto gelesen',
  user: { code: 'von dir eingegeben', note: 'deine eigene Notiz' },
};
