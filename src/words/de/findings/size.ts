import type { WordsFor } from '../../finding-words';

export const size: WordsFor<'measures-stated'> = {
  'measures-stated': {
    title: 'Maße sind angegeben',
    failureTitle: 'Es sind keine Maße angegeben',
    rule: 'Breite, Höhe und Tiefe unterscheiden ein Modell und eine Größe von der anderen.',
    statement: () => 'Das Angebot nennt weder Breite noch Höhe noch Tiefe.',
    innocent: 'Vielleicht wird erwartet, dass man das Modell kennt.',
    settles: 'Breite, Höhe und Tiefe mit dem Maßband im Foto.',
  },
};
