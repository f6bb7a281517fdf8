import { ofData } from '../../data-term';
import type { WordsFor } from '../../finding-words';
import { datedSaid } from '../dates';
import { saying } from '../saying';

type Text =
  | 'age-word-fits'
  | 'description-given'
  | 'authorship-plain'
  | 'maker-stated'
  | 'grade-words'
  | 'ready-made-assurance'
  | 'remade-by-another'
  | 'not-vouched'
  | 'packaging-only'
  | 'condition-words-agree';

export const text: WordsFor<Text> = {
  'age-word-fits': {
    title: '„Vintage“ oder „antik“ passt zur Zeit',
    failureTitle: '„Vintage“ oder „antik“ passt nicht zur Zeit',
    rule: 'Vintage heißt ein Stück ab etwa 20 Jahren, antik ab etwa 100.',
    statement: ({ words, least, dated }, kit) =>
      `Im Angebot steht ${kit.quote(words)}, also mindestens ${least} Jahre alt, aber ${datedSaid(dated, kit)}.`,
    innocent: 'Viele nennen alles „vintage“, was nicht neu ist.',
    settles: 'Wann es hergestellt wurde, und woher das bekannt ist.',
  },
  'description-given': {
    title: 'Das Angebot beschreibt das Stück',
    failureTitle: 'Das Angebot beschreibt das Stück kaum',
    rule: 'Woran sich ein Stück messen lassen muss, wenn es kommt, steht im Angebot.',
    statement: ({ characters }) =>
      characters === 0
        ? 'Das Angebot hat keine Beschreibung.'
        : `Das Angebot beschreibt das Stück in ${characters} Zeichen.`,
    innocent: 'Vielleicht sollen die Fotos sprechen.',
    settles: 'Hersteller, Alter, Material, Maße und Zustand schriftlich.',
  },
  'authorship-plain': {
    title: 'Das Angebot sagt klar, wer das Stück hergestellt hat',
    failureTitle: 'Das Angebot lässt offen, wer das Stück hergestellt hat',
    rule: '„Im Stil von“ oder „inspiriert von“ heißt, dass jemand anderes es hergestellt hat.',
    statement: ({ words }, kit) => `Das Angebot lässt offen, wer es hergestellt hat: ${kit.quote(words)}.`,
    innocent: 'Vielleicht ist der Schnitt oder die Zeit gemeint, oder es ist nur Vorsicht.',
    settles: 'Wer es hergestellt hat, schriftlich.',
  },
  'maker-stated': {
    title: 'Das Angebot nennt einen Hersteller',
    failureTitle: 'Das Angebot nennt keinen Hersteller oder mehrere',
    rule: 'Ein Stück hat einen Hersteller, und eine Beschreibung, auf die man sich berufen kann, nennt ihn.',
    statement: ({ makers }, kit) =>
      makers.length === 0
        ? 'Das Angebot nennt keinen Hersteller.'
        : `Das Angebot nennt mehrere Hersteller: ${kit.list(makers.map(kit.quote))}.`,
    innocent: 'Andere Hersteller sind vielleicht genannt, damit das Angebot gefunden wird, oder zum Vergleich.',
    settles: 'Wer es hergestellt hat, schriftlich.',
  },
  'grade-words': {
    title: 'Im Text steht kein Handelswort für eine Kopie',
    failureTitle: 'Im Text steht ein Handelswort für die Güte einer Kopie',
    rule: 'Mit Wörtern wie „Spiegelqualität“ oder „1:1“ stuft der Handel Kopien ein.',
    statement: ({ words }, kit) => `Im Angebot steht ${kit.list(words.map(kit.quote))}.`,
    innocent:
      'Das Wort gehört vielleicht zu etwas anderem (einem Spiegel, einem Maßstab) oder wird im selben Satz verneint.',
    settles: 'Was damit gemeint ist, schriftlich.',
  },
  'ready-made-assurance': {
    title: 'Keine fertige Beteuerung steht anstelle von Tatsachen',
    failureTitle: 'Eine fertige Beteuerung steht anstelle von Tatsachen',
    rule: 'Eine Beteuerung ohne eine Tatsache, die sich prüfen lässt, klärt nichts.',
    statement: ({ words }, kit) => `Im Angebot steht ${kit.list(words.map(kit.quote))}.`,
    innocent: 'Oft steht das nur da, weil Käufer und Marktplätze danach fragen.',
    settles: 'Worauf die Beteuerung beruht: ein Beleg, der Code, ein fachkundiges Urteil.',
  },
  'remade-by-another': {
    title: 'Das Stück ist so, wie sein Hersteller es gemacht hat',
    failureTitle: 'Das Stück soll aus einem älteren umgearbeitet sein',
    rule: 'Was aus einem älteren Stück umgearbeitet ist, trägt dessen Stempel und Material und ist nicht mehr das Werk des Herstellers.',
    statement: ({ words }, kit) => `Im Angebot steht ${kit.list(words.map(kit.quote))}.`,
    innocent: 'Solche Stücke werden offen verkauft, und hier wird es gesagt.',
    settles: 'Wer es woraus umgearbeitet hat; ein Stempel darauf datiert dann das ältere Stück.',
  },
  'not-vouched': {
    title: 'Es steht da, wer das Stück gemacht hat',
    failureTitle: 'Wer das Stück gemacht hat, wird nicht verbürgt',
    rule: 'Woran sich jemand beim Verkauf nicht bindet, daran lässt er sich später nicht festhalten.',
    statement: ({ words }, kit) => `Im Angebot steht ${kit.list(words.map(kit.quote))}.`,
    innocent: 'Viele private Verkäufer können es nicht wissen und sagen das ehrlich.',
    settles: 'Wie es in den Besitz kam, ein Beleg und ein fachkundiges Urteil.',
  },
  'packaging-only': {
    title: 'Verkauft wird das Stück selbst',
    failureTitle: 'Verkauft wird anscheinend nur die Verpackung',
    rule: 'Kartons und Beutel werden auch allein verkauft, unter dem Namen des Stücks, das darin war.',
    statement: ({ words }, kit) => `Im Angebot steht ${kit.list(words.map(kit.quote))}.`,
    innocent: 'Es steht offen da; ein Titel ist schnell überlesen.',
    settles: 'Was genau zum Kauf gehört.',
  },
  'condition-words-agree': {
    title: 'Die Wörter für den Zustand passen zusammen',
    failureTitle: 'Das Stück heißt neu oder unbenutzt und zugleich gebraucht',
    rule: 'Was neu oder unbenutzt ist, zeigt keine Gebrauchsspuren.',
    statement: ({ said, against }, kit) =>
      ofData(said)
        ? `${saying(said, kit)}, und im Angebot steht ${kit.quote(against)}.`
        : `${saying(said, kit)} und auch ${kit.quote(against)}.`,
    innocent: 'Vielleicht hat der Marktplatz das Feld mit „neu“ gefüllt, oder die Spuren stammen vom Lagern.',
    settles: 'Jede Gebrauchsspur, mit einem Foto.',
  },
};
