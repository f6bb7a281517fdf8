import type { WordsFor } from '../../finding-words';
import { subjects } from '../subjects';

export const changes: WordsFor<'price-changed' | 'photos-changed' | 'seller-changed' | 'claims-changed'> = {
  'price-changed': {
    title: 'Der Preis ist nicht stark gefallen',
    failureTitle: 'Der Preis ist seit dem letzten Blick stark gefallen',
    rule: 'Fällt ein Preis in kurzer Zeit um viel, lohnt es sich, den Grund zu kennen.',
    statement: ({ before, now, readAt, fall }, kit) =>
      `Der Preis fiel von ${kit.price(before)} am ${kit.day(readAt)} auf ${kit.price(now)}, um ${kit.percent(fall)}.`,
    innocent: 'Vielleicht will man vor einem Umzug verkaufen, oder es war zu viel verlangt.',
    settles: 'Warum der Preis gesenkt wurde.',
  },
  'photos-changed': {
    title: 'Kein Foto wurde entfernt',
    failureTitle: 'Seit dem letzten Blick wurden Fotos entfernt',
    rule: 'Ein Foto, das gezeigt wurde und fehlt, zeigte vielleicht etwas Wichtiges.',
    statement: ({ gone, of, left, readAt }, kit) =>
      `Von ${of} Fotos, die am ${kit.day(readAt)} zu sehen waren, ${kit.count(gone, { one: 'fehlt eines', other: 'fehlen #' })}; ${left} sind geblieben.`,
    innocent: 'Vielleicht wurden schlechte Fotos durch bessere ersetzt.',
    settles: 'Die Fotos, die fehlen.',
  },
  'seller-changed': {
    title: 'Es verkauft noch dieselbe Person',
    failureTitle: 'Das Angebot hat einen anderen Verkäufer als beim letzten Blick',
    rule: 'Ein Angebot bleibt bei dem, der verkauft.',
    statement: ({ before, now, readAt }, kit) =>
      `Am ${kit.day(readAt)} verkaufte ${kit.quote(before)}, jetzt ${kit.quote(now)}.`,
    innocent: 'Vielleicht wurde nur der Name des Kontos geändert, oder das Stück wurde weiterverkauft.',
    settles: 'Ob das Stück den Besitz gewechselt hat.',
  },
  'claims-changed': {
    title: 'Was das Angebot sagt, hat sich nicht geändert',
    failureTitle: 'Was das Angebot sagt, hat sich seit dem letzten Blick geändert',
    rule: 'Ein Stück ändert zwischen zwei Blicken weder Alter noch Hersteller noch Land.',
    statement: ({ subject, before, now, readAt }, kit) =>
      `Am ${kit.day(readAt)} hieß es im Angebot ${kit.quote(before)}, jetzt ${kit.quote(now)} (${subjects[subject]}).`,
    innocent: 'Vielleicht wurde ein Irrtum berichtigt, womöglich nach einer Frage.',
    settles: 'Was zu der Änderung führte.',
  },
};
