import type { Disturbance, NotShown, ProblemData } from '../../problem';
import type { ProblemWords } from '../problem-words';
import { report } from './report';

const again = 'Lies die Seite noch einmal, oder gib den Code von Hand ein.';
const openAndAgain = 'Öffne das Foto auf der Seite und lies noch einmal, oder gib den Code von Hand ein.';
const otherPhoto =
  'Lade oder sichere das Foto noch einmal, oder lass es dir als JPEG oder PNG schicken; oder gib den Code von Hand ein.';
const still = 'Lass die Seite vorn und ruhig stehen und lies noch einmal.';
const front = 'Hole den Tab mit dem Foto im Bild nach vorn und lies noch einmal.';
const asJpeg =
  'Bitte um das Foto als JPEG: Telefone senden Fotos so, wenn sie auf größte Verträglichkeit gestellt sind, und ein Bildbetrachter sichert sie so. Oder mach eine Aufnahme des Stempels, so groß der Schirm ihn zeigt, und gib diese dazu.';
const disturbed: Record<Disturbance, string> = {
  'in-background': 'der Tab ist im Hintergrund',
  'other-tab': 'kam ein anderer Tab nach vorn',
  'other-window': 'kam der Tab in ein anderes Fenster',
  'other-page': 'ging die Seite zu einer anderen über',
  resized: 'änderte das Fenster seine Größe',
  moved: 'wurde die Seite gerollt oder änderte sich um das Foto',
  'taken-off': 'verschwand das Foto von der Seite',
  gone: 'war das Foto nicht mehr zu sehen',
  'no-answer': 'antwortete die Seite nicht',
  'other-shape': 'bekam das Bild eine andere Form als das Fenster',
};
const notShown: Record<NotShown, string> = {
  'not-there': 'die Seite zeigt das Foto nicht',
  'too-small': 'die Seite zeigt das Foto zu klein',
  faded: 'die Seite zeigt das Foto verblasst',
  filtered: 'die Seite zeigt das Foto durch einen Filter verändert',
  turned: 'die Seite zeigt das Foto gedreht oder gespiegelt',
};
const formats: Record<ProblemData['photo-foreign-format']['format'], string> = {
  HEIC: 'eine HEIC-Datei, wie viele Telefone ihre Fotos aufheben',
  CR3: 'die Rohdatei einer Kamera (CR3)',
  PDF: 'in einem PDF',
  TIFF: 'die Rohdatei einer Kamera oder eine TIFF-Datei seltener Form',
  'JPEG XL': 'eine JPEG-XL-Datei',
  'JPEG 2000': 'eine JPEG-2000-Datei',
};

/** Failures of photos: of the way to them, and of their files. */
export const photoProblems = {
  'address-refused': ['die Adresse des Fotos ist privat oder keine Webadresse', again],
  'capture-disturbed': [
    ({ why }) =>
      why === 'in-background' ? disturbed[why] : `das Bild davon wurde verworfen: währenddessen ${disturbed[why]}`,
    still,
  ],
  'capture-failed': [
    ({ why }) =>
      why === 'late' ? 'die Seite zeigte das Foto nicht rechtzeitig' : 'der Browser gab kein Bild des Tabs',
    front,
  ],
  'host-not-granted': [({ host }) => `von ${host} zu lesen wurde nicht erlaubt`, again],
  'over-budget': [
    ({ most }) => `nur die ersten ${most} Fotos werden gelesen`,
    'Gib den Code von Hand ein, wenn der Stempel auf einem späteren Foto steht.',
  ],
  'photo-covered': [
    'über dem Foto liegt auf der Seite etwas anderes',
    'Schließe, was darüber liegt, und lies noch einmal, erlaube seine Adresse, oder gib den Code von Hand ein.',
  ],
  'photo-damaged': ['das Foto ist beschädigt oder abgeschnitten', otherPhoto],
  'photo-empty': ['das Foto enthält keine Daten', otherPhoto],
  'photo-file-gone': ['das Foto ist nicht mehr da', 'Wähle die Datei noch einmal.'],
  'photo-foreign-format': [({ format }) => `das Foto ist ${formats[format]}; das wird hier nicht gelesen`, asJpeg],
  'photo-is-drawing': [
    'die Seite gibt das Bild als Zeichnung (SVG) und nicht als Foto',
    'Zeigt sie den Stempel, gib den Code von Hand ein, oder bitte um das Foto als JPEG oder PNG.',
  ],
  'photo-late': [
    ({ seconds, all }) =>
      seconds === null
        ? 'die Seite brachte das Foto nicht rechtzeitig'
        : `das Foto kam nicht ${all ? `in den ${seconds} Sekunden für alle Fotos` : `in ${seconds} Sekunden`} an`,
    openAndAgain,
  ],
  'photo-missing': [({ status }) => `der Server hat das Foto nicht herausgegeben (Antwort ${status})`, openAndAgain],
  'photo-no-size': [({ width, height }) => `das Foto nennt als Größe ${width} × ${height} Pixel`, otherPhoto],
  'photo-not-fetched': ['das Foto wurde nicht geholt', 'Lies das Angebot noch einmal, oder gib das Foto als Datei.'],
  'photo-not-image': ['die Datei ist kein Foto', otherPhoto],
  'photo-not-shown': [({ why }) => notShown[why], openAndAgain],
  'photo-reading-failed': [
    ({ said }, kit) => `das Foto zu lesen ist misslungen${report(said, kit)}`,
    'Gib den Code von Hand ein.',
  ],
  'photo-redirected': ['die Adresse des Fotos führt an eine andere, die nicht zu sehen ist', openAndAgain],
  'photo-too-large': [
    (photo) =>
      'megabytes' in photo
        ? `die Datei ist größer als ${photo.megabytes} MB`
        : `das Foto hat ${photo.width} × ${photo.height} Pixel; gelesen werden höchstens ${photo.most[0]} Millionen und ${photo.most[1]} an einer Seite`,
    'Bitte um eine kleinere Fassung des Fotos oder um ein Bild des Stempels allein; oder gib den Code von Hand ein.',
  ],
  'photo-svg': [
    'das Bild ist eine Zeichnung (SVG) und kein Foto',
    'Zeigt sie den Stempel, gib den Code von Hand ein, oder bitte um das Foto als JPEG oder PNG.',
  ],
  'photo-too-small': [
    ({ width, height }) => `das Foto hat ${width} × ${height} Pixel und ist zu klein für einen Stempel`,
    'Bitte um ein größeres Foto.',
  ],
  'photo-truncated': ['die Datei endet, bevor sie ihre Größe nennt', otherPhoto],
  'photo-unknown': ['die Seite wurde nicht gelesen oder hat sich seitdem geändert', again],
  'photo-unreachable': ['die Seite darf es nicht holen, oder der Server hat nicht geantwortet', openAndAgain],
  'photo-without-address': [
    ({ photos }, kit) =>
      kit.count(photos, {
        one: '# Foto macht die Seite selbst; es hat keine Adresse',
        other: '# Fotos macht die Seite selbst; sie haben keine Adresse',
      }),
    'Blättere auf der Seite durch die Fotos und lies noch einmal, oder gib den Code von Hand ein.',
  ],
  'photos-not-read': [
    ({ unread, of, reasons }, _, say) => `${unread} von ${of} Fotos nicht gelesen: ${reasons.map(say).join('; ')}`,
    again,
  ],
} satisfies Partial<ProblemWords>;
