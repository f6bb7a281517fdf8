import type { faultSorts as english } from '../en/file-problems';
import type { ProblemWords } from '../problem-words';

const place = 'Verbessere diese Stelle der Herstellerdatei.';
const later = 'Versuche es später noch einmal. Deine eigene Datei bleibt, wie sie ist.';
const otherAddress = 'Prüfe die Adresse. Deine eigene Datei bleibt, wie sie ist.';

/** Failures of the addresses that maker files come from. */
export const fileProblems = {
  'file-address': ['das ist keine Webadresse', 'Schreibe sie ganz, beginnend mit https://.'],
  'file-not-secure': [
    'die Adresse ist keine verschlüsselte',
    'Schreibe https statt http, oder bitte um eine solche Adresse.',
  ],
  'file-with-password': [
    'die Adresse enthält einen Namen oder ein Kennwort',
    'Lass es weg, oder sichere die Datei selbst und lies sie ein.',
  ],
  'file-not-allowed': [
    'diese Adresse zu fragen wurde nicht erlaubt',
    'Drücke den Knopf und erlaube es, oder sichere die Datei selbst und lies sie ein.',
  ],
  'file-led-on': [
    'die Adresse führt an eine andere, und die wurde nicht gefragt',
    'Öffne sie in einem Tab, und gib die Adresse an, bei der sie endet.',
  ],
  'file-too-large': ['unter der Adresse liegen mehr als 5 MB: Das ist keine Herstellerdatei', otherAddress],
  'file-cut': ['die Antwort brach vor ihrem Ende ab', later],
  'file-late': ['die Datei kam nicht in 30 Sekunden an', later],
  'file-offline': [
    'dieser Rechner ist nicht verbunden',
    'Verbinde ihn und frage noch einmal. Deine eigene Datei bleibt, wie sie ist.',
  ],
  'file-unreachable': ['der Server hat nicht geantwortet', later],
  'file-missing': ['unter der Adresse liegt keine Datei', otherAddress],
  'file-refused': [
    'der Server gibt die Datei niemandem, den er nicht kennt',
    'Sichere die Datei selbst und lies sie ein.',
  ],
  'file-answer': [({ status }) => `der Server gab die Datei nicht heraus (Antwort ${status})`, later],
  'file-not-text': ['was unter der Adresse liegt, ist kein Text', otherAddress],
  'file-is-page': [
    'die Adresse zeigt eine Seite, keine Datei',
    'Gib die Adresse der Datei selbst an: Auf vielen Websites steht sie hinter „raw“ oder „Herunterladen“.',
  ],
  'file-other-maker': [
    ({ now, before }) => `die Datei unter der Adresse ist jetzt die von ${now}, nicht mehr die von ${before}`,
    'Frage, wer sie führt. Deine eigene Datei bleibt, wie sie ist.',
  ],
} satisfies Partial<ProblemWords>;

/** Sorts of faults of maker files, and what to do about them. */
export const faultSorts: Record<keyof typeof english, readonly [what: string, remedy: string]> = {
  'maker-file-double-model': [
    'zwei Modelle der Datei haben denselben Namen',
    'Trage die anderen Jahre und Größen beim ersten als Reihen ein.',
  ],
  'maker-file-newer': [
    'die Datei hat ein neueres Format',
    'Nimm ein neueres Tellstamp, oder bitte um die Datei in diesem Format.',
  ],
  'maker-file-part': ['ein Teil ist nicht bekannt', 'Berichtige es, oder nimm es in die Teile der Datei auf.'],
  'maker-file-range': ['von zwei Zahlen fehlt eine oder steht verkehrt', 'Gib zuerst die kleinste, dann die größte.'],
  'maker-file-system-unknown': ['einen Aufbau gibt es in der Datei nicht', 'Nenne einen ihrer Kurznamen.'],
  'maker-file-double-id': ['zwei Systeme der Datei haben denselben Namen', 'Gib jedem System seinen eigenen Namen.'],
  'maker-file-example': [
    'ein Beispiel liest sich anders, als es sagt',
    'Verbessere das Beispiel, den Aufbau, die Werkstätten oder die Zeit: eines davon stimmt nicht.',
  ],
  'maker-file-layout': ['ein Aufbau ist nicht möglich', 'Verbessere die Stellen dieses Aufbaus.'],
  'maker-file-not-json': [
    'die Datei lässt sich nicht lesen',
    'Prüfe, ob die Datei vollständig ist und eine Herstellerdatei.',
  ],
  'maker-file-period': [
    'eine Zeit ist nicht richtig geschrieben',
    'Gib zuerst den ersten Tag und dann den letzten oder null.',
  ],
  'maker-file-place': ['ein Land ist nicht bekannt', place],
  'maker-file-slot': ['eine Stelle eines Aufbaus ist nicht bekannt', place],
  'maker-file-too-large': ['die Datei ist zu groß', 'Teile die Datei nach Herstellern oder behalte weniger Beispiele.'],
  'maker-file-value': ['ein Wert ist hier nicht möglich', place],
  'maker-file-custom': ['ein Wert ist hier nicht möglich', place],
  'maker-file-invalid-format': ['ein Wert ist nicht richtig geschrieben', place],
  'maker-file-invalid-type': ['ein Wert fehlt oder ist von anderer Art', place],
  'maker-file-invalid-value': ['ein Wert ist hier nicht möglich', place],
  'maker-file-too-big': ['ein Wert ist zu groß oder zu lang', place],
  'maker-file-too-small': ['ein Wert ist zu klein oder zu kurz', place],
  'more-problems': ['weitere Felder stimmen nicht', 'Verbessere zuerst die genannten.'],
  'maker-file-unrecognized-keys': ['ein Feld gehört nicht hierher', 'Nimm es heraus oder verbessere seinen Namen.'],
};
