import type { CheckData } from '../../../check';
import type { WordsFor } from '../../finding-words';
import type { Kit } from '../../kit';

type Seller =
  | 'payment-inside'
  | 'returns-against-trader'
  | 'return-terms'
  | 'trader-stated'
  | 'seller-record'
  | 'pressure-words';

type Told = CheckData['seller-record']['told'][number];
const told = (one: Told, kit: Kit): string => {
  if (one.of === 'since') return `Mitglied seit ${kit.span(one.since)}`;
  if (one.of === 'sales') return kit.count(one.count, { one: '# Verkauf', other: '# Verkäufe' });
  const from = one.count === null ? '' : ` aus ${kit.count(one.count, { one: '# Urteil', other: '# Urteilen' })}`;
  return `Bewertung ${kit.quote(one.words)}${from}`;
};

export const seller: WordsFor<Seller> = {
  'payment-inside': {
    title: 'Bezahlt wird über den Marktplatz',
    failureTitle: 'Das Angebot bittet um Zahlung außerhalb des Marktplatzes',
    rule: 'Wer außerhalb des Zahlungssystems des Marktplatzes bezahlt, verliert dessen Schutz.',
    statement: ({ words }, kit) =>
      `Das Angebot bittet um Zahlung außerhalb des Marktplatzes: ${kit.list(words.map(kit.quote))}.`,
    innocent: 'Vielleicht soll nur die Gebühr gespart werden.',
    settles: 'Zahlung über den Marktplatz, oder kein Kauf.',
  },
  'returns-against-trader': {
    title: 'Die Rückgabe ist so geregelt, wie es zur Art des Verkäufers passt',
    failureTitle: 'Ein gewerbliches Angebot schließt die Rückgabe aus',
    rule: 'In der EU und im Vereinigten Königreich können Verbraucher einen gewerblichen Fernkauf binnen 14 Tagen widerrufen, gleich was im Angebot steht.',
    statement: ({ words }, kit) =>
      words === null
        ? 'Verkauft wird gewerblich, und nach den Daten der Seite wird nichts zurückgenommen.'
        : `Verkauft wird gewerblich, und im Angebot steht ${kit.quote(words)}.`,
    innocent: 'Vielleicht liegt der Sitz außerhalb der EU und des Vereinigten Königreichs, oder es gilt eine Ausnahme.',
    settles: 'Wo der Sitz ist, und die Bedingungen schriftlich.',
  },
  'return-terms': {
    title: 'Rückgabe ist möglich',
    failureTitle: 'Keine Angabe zur Rückgabe, oder keine Rückgabe',
    rule: 'Vor dem Bezahlen die Regeln für Rückgabe und Erstattung ansehen.',
    statement: ({ accepted, days, words }, kit) => {
      if (accepted === null) return 'Das Angebot sagt nichts zur Rückgabe.';
      const said = words === null ? '' : `: ${kit.quote(words)}`;
      if (!accepted) return `Das Angebot schließt die Rückgabe aus${said}.`;
      const within = days === null ? '' : ` binnen ${kit.count(days, { one: '# Tag', other: '# Tagen' })}`;
      return `Rückgabe ist${within} möglich${said}.`;
    },
    innocent: 'Vielleicht regelt der Marktplatz das für alle, und privat wird oft nichts zurückgenommen.',
    settles: 'Die Bedingungen der Rückgabe schriftlich, vor dem Bezahlen.',
  },
  'trader-stated': {
    title: 'Die Seite sagt, ob gewerblich verkauft wird',
    failureTitle: 'Die Seite sagt nicht, ob gewerblich verkauft wird',
    rule: 'In der EU und im Vereinigten Königreich lässt sich ein gewerblicher Fernkauf binnen 14 Tagen widerrufen, ein privater nicht.',
    statement: () => 'Die Seite sagt nicht, ob privat oder gewerblich verkauft wird.',
    innocent: 'Außerhalb der EU und des Vereinigten Königreichs muss eine Seite das nicht sagen.',
    settles: 'Ob privat oder gewerblich verkauft wird.',
  },
  'seller-record': {
    title: 'Das Konto hat eine Vorgeschichte',
    failureTitle: 'Zum Konto steht wenig, nichts oder eine schwache Bewertung da',
    rule: 'Seit wann, wie viel und wie gut bewertet jemand hier verkauft, ist alles, was eine Seite darüber zeigt.',
    statement: ({ told: all, least }, kit, kind) => {
      const said = kit.list(all.map((one) => told(one, kit)));
      if (said === '') return 'Die Seite zeigt zum Konto nichts: keine Bewertung, keine Verkäufe, keinen Beitritt.';
      if (least !== null)
        return `Zum Konto steht da: ${said}. Das sind unter ${kit.percent(least)} der besten Bewertung dort.`;
      return kind === 'agreement' ? `Zum Konto steht da: ${said}.` : `Zum Konto steht nur wenig da: ${said}.`;
    },
    innocent: 'Wer ehrlich verkauft, fängt auch einmal ohne Vorgeschichte an.',
    explained: ({ least }) =>
      least === null ? null : 'Bewertungen sinken auch wegen langsamer Post oder wegen Waren anderer Art.',
    settles: 'Mehr über das Konto, und eine Zahlung, die sich zurückholen lässt.',
  },
  'pressure-words': {
    title: 'Der Text lässt Zeit und Raum für Fragen',
    failureTitle: 'Der Text drängt zur Eile oder wünscht keine Fragen',
    rule: 'Eile lässt keine Zeit für die Fragen, die einen Zweifel klären würden.',
    statement: ({ words }, kit) => `Im Angebot steht ${kit.list(words.map(kit.quote))}.`,
    innocent: 'Vielleicht steht ein Umzug an, oder es kamen zu viele müßige Nachrichten.',
    settles: 'Ob eine kurze, höfliche Frage beantwortet wird.',
  },
};
