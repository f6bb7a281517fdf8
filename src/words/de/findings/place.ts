import type { WordsFor } from '../../finding-words';
import { codeShown } from '../codes';
import { datedSaid, placedMarkSaid } from '../dates';

export const place: WordsFor<
  | 'mark-against-origin'
  | 'mark-against-plant'
  | 'origin-claims-agree'
  | 'origin-country-existed'
  | 'plant-against-origin'
> = {
  'plant-against-origin': {
    title: 'Das Land der Werkstatt ist das genannte Land',
    failureTitle: 'Das Land der Werkstatt ist nicht das genannte Land',
    rule: 'Die Buchstaben der Werkstatt im Code stehen für das Land, in dem das Stück hergestellt wurde.',
    statement({ shown, plant, places, claimed }, kit, kind) {
      const named = `${plant ? `Werkstatt ${plant}, ` : ''}${kit.list(places.map(kit.place))}`;
      const said = `${kit.sentence(codeShown(shown, kit))}: ${named}`;
      return kind === 'agreement'
        ? `${said}, wie im Angebot steht: ${kit.quote(claimed)}.`
        : `${said}. Im Angebot steht ${kit.quote(claimed)}.`;
    },
    innocent: 'Vielleicht ist das Land des Hauses oder des Geschäfts genannt, nicht das der Werkstatt.',
    settles: 'Ein Foto der Länderangabe am Stück selbst.',
  },
  'mark-against-plant': {
    title: 'Die Länderangabe am Stück nennt das Land der Werkstatt',
    failureTitle: 'Die Länderangabe am Stück nennt ein anderes Land als das der Werkstatt',
    rule: 'Die Länderangabe und die Buchstaben der Werkstatt an einem Stück nennen dasselbe Land.',
    statement({ shown, places, mark }, kit, kind) {
      const said = `${kit.sentence(codeShown(shown, kit))}: ${kit.list(places.map(kit.place))}`;
      return `${said}, ${kind === 'agreement' ? 'und' : 'aber'} ${placedMarkSaid(mark, kit)}.`;
    },
    innocent:
      'Vielleicht gehört die Angabe zu einem Teil, und manche Hersteller schneiden und nähen in verschiedenen Ländern.',
    settles: 'Ein Foto, das die Länderangabe und den Stempel zusammen zeigt.',
  },
  'mark-against-origin': {
    title: 'Die Länderangabe am Stück nennt das genannte Land',
    failureTitle: 'Die Länderangabe am Stück nennt ein anderes Land',
    rule: 'Ein Etikett, ein Stempel oder eine Adresse an einem Stück nennt, wo es oder ein Teil davon hergestellt wurde.',
    statement: ({ mark, claimed }, kit, kind) =>
      `${kit.sentence(placedMarkSaid(mark, kit))}${kind === 'agreement' ? ', wie im Angebot steht: ' : '. Im Angebot steht '}${kit.quote(claimed)}.`,
    innocent: 'Vielleicht gehört die Angabe zu einem Teil (Reißverschluss, Futter) oder zum Büro des Hauses.',
    settles: 'Ein Foto des ganzen Etiketts.',
  },
  'origin-claims-agree': {
    title: 'Das Angebot nennt ein Land der Herstellung',
    failureTitle: 'Das Angebot nennt mehr als ein Land der Herstellung',
    rule: 'Ein Stück wird in einem Land hergestellt.',
    statement: ({ first, other }, kit) =>
      `Im Angebot steht ${kit.quote(first.words)} (${kit.place(first.place)}) und auch ${kit.quote(other.words)} (${kit.place(other.place)}).`,
    innocent: 'Eines davon ist vielleicht das Land des Hauses, des Leders oder des Geschäfts.',
    settles: 'Ein Foto der Länderangabe am Stück selbst.',
  },
  'origin-country-existed': {
    title: 'Das genannte Land bestand zu der Zeit',
    failureTitle: 'Das genannte Land bestand zu der Zeit nicht',
    rule: 'Ein Stück wird in einem Land seiner Zeit hergestellt.',
    statement({ claimed, place, existed, dated }, kit, kind) {
      const said = `Im Angebot steht ${kit.quote(claimed)}`;
      const country = `${kit.place(place)} bestand ${kit.during(existed)}, und ${datedSaid(dated, kit)}`;
      return kind === 'agreement' ? `${said}: ${country}.` : `${said}, aber ${country}.`;
    },
    innocent:
      'Alte Etiketten wurden aufgebraucht, und aus Gewohnheit wird ein Land beim alten oder beim neuen Namen genannt.',
    settles: 'Ein Foto der Länderangabe am Stück selbst.',
  },
};
