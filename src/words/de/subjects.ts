import type { ChangedSubject } from '../../check';

/** What a listing says of its piece, as a sentence names it. */
export const subjects: Record<ChangedSubject, string> = {
  made: 'die Zeit der Herstellung',
  origin: 'das Land der Herstellung',
  condition: 'der Zustand',
  code: 'der Code',
  model: 'das Modell',
  maker: 'der Hersteller',
};
