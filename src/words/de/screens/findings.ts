import type { ScreenWords } from '../../screen-words';

/** What was found, and how it is told. */
export const findingsStrings: ScreenWords['findings'] = {
  title: 'Befunde',
  against: 'Was dagegen spricht',
  contradictions: 'Was nicht beides wahr sein kann',
  doubts: 'Was ungewöhnlich ist',
  gaps: 'Was noch offen ist',
  agreements: 'Was passt',
  fitsNote:
    'Nur, was auch anders hätte ausfallen können. Dass etwas passt, zeigt ein ehrliches Angebot, und eine sorgfältige Kopie zeigt es auch.',
  little: 'Was passt, aber wenig sagt',
  basis: 'Beruht auf',
  tells: 'Warum es etwas besagt',
  innocent: 'Gewöhnlicher Grund',
  settles: 'Was es klären würde',
  source: 'Quelle',
  weight: 'Wie sicher ist das?',
  aside: {
    title: 'Von dir zurückgestellt',
    note: 'Danach wird nicht gefragt und nicht mehr geurteilt. Wird es anders befunden, steht es von selbst wieder da.',
    action: 'Zurückstellen',
    actionOf: (statement) => `Zurückstellen: ${statement}`,
    why: 'Warum stellst du es zurück?',
    done: 'So zurückstellen',
    leave: 'Lassen',
    because: (reason) => `Dein Grund: ${reason}`,
    undoOf: (statement) => `Nicht mehr zurückstellen: ${statement}`,
  },
  hardness: {
    contradiction: 'Beides zugleich kann nicht stimmen.',
    doubt: 'Ungewöhnlich.',
    gap: '',
    agreement: '',
  },
  cannotTell: 'Was sich sonst nicht sagen ließ, und warum',
  failed: (check, message) =>
    `${check}: Diese Prüfung ist hier ausgefallen; über das Angebot sagt das nichts. Alle anderen gelten. (${message})`,
};
