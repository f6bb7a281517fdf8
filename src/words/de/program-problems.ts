import type { ProblemWords } from '../problem-words';
import { report } from './report';

const byHand = 'Lies das Foto noch einmal, oder gib den Code von Hand ein.';

/** Failures of the engines that read photos, and of the program itself. */
export const programProblems = {
  'message-refused': [
    ({ why, said }, kit) =>
      `${
        {
          'no-handler': 'eine Nachricht zwischen Teilen der Erweiterung nimmt niemand an',
          'not-from': 'eine Nachricht kam von einem Teil der Erweiterung, der sie nicht senden darf',
          'from-nowhere': 'eine Nachricht kam von keinem Teil der Erweiterung',
          malformed: 'eine Nachricht zwischen Teilen der Erweiterung war fehlerhaft',
        }[why]
      }${report(said, kit)}`,
    'Lade die Erweiterung neu, wenn es so bleibt.',
  ],
  'nets-not-loaded': [
    ({ why, said }, kit) =>
      `${{ 'card-not-json': 'die Karte der Leser für Stempel ist kein JSON', 'card-unfit': 'die Karte der Leser für Stempel passt nicht', 'not-started': 'die Leser für Stempel ließen sich nicht starten' }[why]}${report(said, kit)}`,
    'Installiere die Erweiterung noch einmal. Bis dahin liest der Leser für Gedrucktes, und der erkennt nur wenige Prägungen.',
  ],
  'no-answer': [
    'ein Teil der Erweiterung hat nicht geantwortet',
    'Klicke auf der Seite des Angebots noch einmal auf den Knopf der Erweiterung.',
  ],
  'no-stamp-engine': [
    'kein Leser für Schrift ließ sich starten, also wurde kein Foto angesehen',
    'Gib den Code von Hand ein.',
  ],
  'measuring-failed': [
    ({ said }, kit) => `das Messen ist gescheitert${report(said, kit)}`,
    'Verschiebe die Markierung, oder öffne das Foto noch einmal.',
  ],
  'reader-failed': [({ said }, kit) => `der Leser ist gescheitert${report(said, kit)}`, byHand],
  'reader-late': [({ seconds }) => `das Lesen dauerte länger als ${seconds} Sekunden`, byHand],
  'reader-stopped': [({ said }, kit) => `der Leser ist stehen geblieben${report(said, kit)}`, byHand],
  'reply-malformed': [
    ({ said }, kit) => `ein Teil der Erweiterung hat anders geantwortet als vereinbart${report(said, kit)}`,
    'Lade die Seite neu und lies sie noch einmal.',
  ],
  'stamp-engine-failed': [
    ({ said }, kit) => `ein Leser für Schrift ist an diesem Foto gescheitert${report(said, kit)}`,
    'Lies das Foto noch einmal, oder gib den Code von Hand ein.',
  ],
  unforeseen: [
    ({ said }, kit) => `etwas Unerwartetes ist geschehen${report(said, kit)}`,
    'Versuche es noch einmal; bleibt es dabei, melde es.',
  ],
} satisfies Partial<ProblemWords>;
