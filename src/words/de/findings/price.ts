import type { CheckData } from '../../../check';
import type { WordsFor } from '../../finding-words';
import { saying } from '../saying';

type Prices = 'price-cut-plausible' | 'prices-agree' | 'used-price-plausible' | 'new-price-plausible' | 'sale-channel';
const rates = 'Wechselkurse aus dem Gedächtnis, nicht geprüft';
const denied: Record<CheckData['sale-channel']['channel'], string> = {
  discount: 'gibt nie Nachlass',
  outlet: 'hat keine Outlets',
  'sample-sale': 'hält keine Musterverkäufe ab',
  seconds: 'verkauft keine zweite Wahl',
};

const newOf = (maker: string, { model }: { model?: string | undefined }) =>
  model === undefined ? `des kleinsten Neupreises von ${maker}` : `des Neupreises von ${model}`;

export const price: WordsFor<Prices> = {
  'price-cut-plausible': {
    title: 'Der Nachlass ist von üblicher Größe',
    failureTitle: 'Der Preis soll um mehr als üblich gesenkt sein',
    rule: 'Ein früherer Preis weit über dem verlangten ist oft erdacht.',
    statement: ({ was, sale, cut }, kit) =>
      `Der Preis wurde von ${kit.price(was)} auf ${kit.price(sale)} gesenkt, um ${kit.percent(cut)}.`,
    innocent: 'Der höhere Preis ist vielleicht der Neupreis im Laden.',
    settles: 'Woher der höhere Preis kommt.',
  },
  'prices-agree': {
    title: 'Die Seite nennt einen Preis',
    failureTitle: 'Die Seite zeigt einen Preis und trägt einen anderen in ihren Daten',
    rule: 'Der gezeigte Preis ist der in den Daten der Seite.',
    statement: ({ shown, data, origin }, kit) =>
      `Die Seite zeigt ${kit.price(shown)}, ihre Daten (${origin}) sagen ${kit.price(data)}.`,
    innocent: 'Die Daten der Seite sind vielleicht veraltet oder auf eine andere Währung eingestellt.',
    settles: 'Der Preis, der verlangt wird.',
  },
  'used-price-plausible': {
    title: 'Der Preis passt zu einem gebrauchten Stück dieses Herstellers',
    failureTitle: 'Der Preis ist selbst für ein gebrauchtes Stück dieses Herstellers sehr niedrig',
    rule: 'Auch gebraucht kostet ein Stück selten weniger als ein Fünfzehntel des kleinsten Neupreises.',
    statement: ({ price: asked, maker, floor, like }, kit) =>
      like
        ? `${kit.price(asked)} ist weniger als ein Drittel dessen, was die Datei von ${maker} mindestens für ${floor.model ?? 'ein Stück'} in diesem Zustand nennt (${kit.amount(floor)} im Jahr ${floor.year}).`
        : `${kit.price(asked)} ist weniger als ein Fünfzehntel ${newOf(maker, floor)} (${kit.amount(floor)} im Jahr ${floor.year}), und das Angebot nennt keinen Schaden.`,
    basis: ({ price: asked, floor, like }) => [
      like
        ? 'Selten kostet ein Stück weniger als ein Drittel dessen, was solche Stücke in demselben Zustand kosten.'
        : 'Auch gebraucht kostet ein Stück selten weniger als ein Fünfzehntel des kleinsten Neupreises.',
      ...(asked.currency === floor.currency ? [] : [rates]),
    ],
    innocent: 'Vielleicht ist das Stück beschädigt, ein kleines Zubehör, oder der Hersteller ist nicht bekannt.',
    settles: 'Fotos aller Teile, und warum der Preis niedrig ist.',
  },
  'new-price-plausible': {
    title: 'Der Preis passt zu einem neuen Stück',
    failureTitle: 'Der Preis passt kaum zu einem neuen Stück dieses Herstellers',
    rule: 'Ein neues oder unbenutztes Stück kostet selten weniger als ein Drittel des kleinsten Neupreises.',
    statement: ({ said, price: asked, maker, floor }, kit) =>
      `${saying(said, kit)} für ${kit.price(asked)}; ${floor.model === undefined ? `das kleinste neue Stück von ${maker}` : `${floor.model} neu`} kostete ${kit.amount(floor)} im Jahr ${floor.year}.`,
    basis: ({ price: asked, floor, share }, kit) => [
      `${kit.price(asked)} ist höchstens ${kit.percent(share)} von ${kit.amount(floor)}`,
      ...(asked.currency === floor.currency ? [] : [rates]),
    ],
    innocent: 'Vielleicht ist es ein Geschenk, das weg soll, oder nicht so neu wie gedacht.',
    settles: 'Der Kaufbeleg, und Fotos von Ecken, Henkeln und Innenseite.',
  },
  'sale-channel': {
    title: 'Der Hersteller verkauft auf dem genannten Weg',
    failureTitle: 'Das Stück soll aus einem Verkauf stammen, den es bei diesem Hersteller nicht gibt',
    rule: 'Ein Haus, das nie Nachlass gibt, verkauft weder im Outlet noch im Musterverkauf noch als zweite Wahl.',
    statement: ({ words, maker, channel }, kit) =>
      `Im Angebot steht ${kit.quote(words)}, aber ${maker} ${denied[channel]}.`,
    innocent:
      'Vielleicht ist der Ausverkauf eines Ladens gemeint, oder es ist weitergegeben, was beim Kauf gesagt wurde.',
    settles: 'Der Beleg des ersten Kaufs.',
  },
};
