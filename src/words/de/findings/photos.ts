import type { WordsFor } from '../../finding-words';
import { parts as partNames } from '../parts';
import { saying } from '../saying';

type Photos =
  | 'photo-large-enough'
  | 'photo-reused'
  | 'photo-screenshot'
  | 'photo-stock-like'
  | 'photo-watermark'
  | 'photos-offered'
  | 'parts-shown'
  | 'stamp-close-up'
  | 'stamp-legible'
  | 'stamp-evenness'
  | 'not-this-piece'
  | 'one-of-many'
  | 'unused-against-photo';

const faults = {
  depth: 'die Tiefe ändert sich von einem Ende zum anderen',
  pitch: 'die Zeichen stehen ungleich weit auseinander',
} as const;

const aged = {
  'open-leather': (by: string) => `Leder, das offen lag, ist um ${by} Stufen dunkler als dort, wo es bedeckt war`,
  rivet: (by: string) => `der Rand einer Niete ist um ${by} Stufen grüner als seine Umgebung`,
  touched: (by: string) => `Metall, das Hände berühren, weicht um ${by} Stufen von der Farbe des unberührten ab`,
} as const;

export const photos: WordsFor<Photos> = {
  'photo-large-enough': {
    title: 'Die Fotos sind groß genug für Einzelheiten',
    failureTitle: 'Alle Fotos sind zu klein für Einzelheiten',
    rule: 'Einzelheiten wie Stiche und Prägungen brauchen Fotos von einer gewissen Größe.',
    statement: ({ longestPx }) => `Das größte Foto ist ${longestPx} Pixel lang.`,
    innocent: 'Manche Marktplätze verkleinern, was hochgeladen wird.',
    settles: 'Größere Fotos, auch per Nachricht.',
  },
  'photo-reused': {
    title: 'Jedes Foto ist ein anderes',
    failureTitle: 'Dasselbe Foto ist mehrmals zu sehen',
    rule: 'Ein zweimal gezeigtes Foto zeigt beim zweiten Mal nichts Neues.',
    statement: ({ photos: same }, kit) => `${kit.sentence(kit.list(same.map(kit.photo)))} zeigen dasselbe Bild.`,
    innocent: 'Marktplätze und Verkäufer laden ein Foto aus Versehen doppelt hoch.',
    settles: 'Ein anderes Foto an seiner Stelle.',
  },
  'photo-screenshot': {
    title: 'Kein Foto ist das Bild eines Bildschirms',
    failureTitle: 'Ein Foto sieht wie das Bild eines Bildschirms aus',
    rule: 'Ein Bildschirmfoto zeigt, was eine andere Seite zeigte, nicht das Stück in den Händen des Verkäufers.',
    statement: ({ photo, sign }, kit) =>
      `${kit.sentence(kit.photo(photo))} hat die Form eines Telefonbildschirms und zeigt ${kit.quote(sign)}.`,
    innocent: 'Vielleicht soll die Seite eines Ladens die Größe oder den Preis zeigen.',
    settles: 'Dieselbe Ansicht als Foto des Stücks selbst.',
  },
  'photo-stock-like': {
    title: 'Kein Foto hat den ebenen weißen Grund eines Katalogbilds',
    failureTitle: 'Ein Foto sieht wie ein Katalogbild aus',
    rule: 'Katalogbilder haben einen völlig ebenen weißen Grund; eine Kamera zu Hause lässt dort Schatten und Korn.',
    statement: ({ photos: even }, kit) =>
      `${kit.sentence(kit.list(even.map(kit.photo)))} ${even.length === 1 ? 'hat' : 'haben'} einen ebenen weißen Grund ohne das Korn einer Kamera.`,
    innocent: 'Ein zu Hause auf weißem Papier fotografiertes und vom Telefon freigestelltes Stück sieht ebenso aus.',
    settles: 'Ein Foto des Stücks, wo es liegt, mit dem heutigen Datum auf einem Zettel.',
  },
  'photo-watermark': {
    title: 'Kein Foto trägt die Adresse einer anderen Seite',
    failureTitle: 'Ein Foto trägt die Adresse einer anderen Seite',
    rule: 'Ein Foto mit der Adresse einer anderen Seite war zuerst dort zu sehen.',
    statement: ({ photo, host }, kit) =>
      `${kit.sentence(kit.photo(photo))} trägt die Adresse ${kit.quote(host)}, die nicht zu diesem Marktplatz gehört.`,
    innocent: 'Vielleicht wird auch dort verkauft, oder die Adresse steht auf dem Etikett des Herstellers.',
    settles: 'Ein Foto des Stücks ohne die Adresse.',
  },
  'photos-offered': {
    title: 'Das Angebot hat Fotos',
    failureTitle: 'Das Angebot hat kein Foto',
    rule: 'Auf Bilder des Stücks selbst achten.',
    statement: () => 'Die Seite zeigt kein Foto des Stücks.',
    innocent: 'Vielleicht laden die Fotos erst nach einem Klick, oder die Seite war nicht ganz lesbar.',
    settles: 'Fotos des Stücks selbst.',
  },
  'parts-shown': {
    title: 'Es gibt so viele Fotos wie Teile, die zu sehen sein sollten',
    failureTitle: 'Es gibt weniger Fotos als Teile, die zu sehen sein sollten',
    rule: 'Ein Foto zeigt einen Teil gut; auf Bilder des Stücks selbst achten.',
    statement: ({ photos: shown, parts, of }, kit) =>
      of
        ? `Von keinem Foto ist gesagt, dass es das zeigt: ${kit.either(parts.map((part) => partNames(part)))}.`
        : `${kit.count(shown, { one: '# Foto', other: '# Fotos' })} für ${parts.length + 1} Teile: ${kit.list([...parts.map((part) => partNames(part)), 'der Stempel'])}.`,
    innocent: 'Ein Foto kann mehrere Teile zeigen, und manche Marktplätze erlauben nur wenige.',
    settles: 'Fotos der genannten Teile.',
  },
  'stamp-close-up': {
    title: 'Ein Foto zeigt den Stempel',
    failureTitle: 'Kein Foto zeigt den Stempel aus der Nähe',
    rule: 'Der Stempel datiert ein Stück; man sollte ihn sehen und nicht nur davon hören.',
    statement: ({ photos: shown }, kit) =>
      kit.count(shown, {
        one: 'Das eine Foto zeigt den Stempel nicht.',
        other: 'Keines der # Fotos zeigt den Stempel.',
      }),
    innocent: 'Viele wissen nicht, dass der Stempel wichtig ist.',
    settles: 'Ein scharfes, nahes Foto des Stempels.',
  },
  'stamp-legible': {
    title: 'Der Stempel im Foto war lesbar',
    failureTitle: 'Ein Stempel ist zu sehen, aber nicht sicher und ganz zu lesen',
    rule: 'Ein Code gilt nur als gelesen, wenn seine Zeichen sicher genug sind und er ganz im Foto steht.',
    statement: ({ photo, guess, open, other }, kit) =>
      open === 'may-go-on'
        ? `Der Stempel in ${kit.photo(photo)} kann außerhalb des Fotos oder über den erfassten Teil hinaus weitergehen, oder ein Wort daneben wurde mitgelesen. Zu sehen ist ${kit.code(guess)}.`
        : open === 'upside-down'
          ? `Der Stempel in ${kit.photo(photo)} liest sich von der einen Seite als ${kit.code(guess)}, von der anderen als ${kit.code(other ?? '')}, und nichts sagt, welche oben ist.`
          : guess === ''
            ? `Der Stempel in ${kit.photo(photo)} ist zu undeutlich zum Lesen.`
            : `Der Stempel in ${kit.photo(photo)} ist zu undeutlich zum Lesen. Am ehesten ${kit.code(guess)}, aber nicht sicher genug.`,
    innocent: 'Blinde Prägungen nutzen sich ab, flaches Licht verbirgt sie, und Nahaufnahmen geraten leicht zu eng.',
    settles: 'Ein schärferes Foto des ganzen Stempels, oder seine Zeichen von Hand eingegeben.',
  },
  'stamp-evenness': {
    title: 'Der Stempel ist gleichmäßig tief und weit',
    failureTitle: 'Der Stempel wirkt ungleich tief oder weit',
    rule: 'Zeichen eines Prägestocks werden zusammen geschlagen, in gleichem Abstand; einzeln von Hand geschlagene nicht.',
    statement: ({ photo, faults: seen }, kit) =>
      `Der Stempel in ${kit.photo(photo)} wirkt ungleichmäßig: ${kit.list(seen.map((fault) => faults[fault]))}. Ein Foto allein sagt nicht, ob das am Licht, an der Abnutzung oder am Schlagen liegt.`,
    innocent:
      'Viele Stempel sind von Hand geschlagen, und abgenutztes oder gewölbtes Leder und seitliches Licht lassen auch gleichmäßige ungleich wirken.',
    settles: 'Zwei Fotos des Stempels mit Licht von verschiedenen Seiten.',
  },
  'not-this-piece': {
    title: 'Die Fotos zeigen das Stück selbst',
    failureTitle: 'Die Fotos sollen nicht das Stück selbst zeigen',
    rule: 'Es kommt auf Bilder des Stücks an, das verkauft wird.',
    statement: ({ words }, kit) => `Im Angebot steht ${kit.list(words.map(kit.quote))}.`,
    innocent: 'Vielleicht ist nur das erste Foto durch ein schöneres Bild ersetzt.',
    settles: 'Fotos des Stücks selbst, mit dem heutigen Datum auf einem Zettel.',
  },
  'one-of-many': {
    title: 'Es ist klar, welches Stück verkauft wird',
    failureTitle: 'Mehrere gleicher Art stehen zum Verkauf, und die Fotos zeigen vielleicht ein anderes',
    rule: 'Ein gebrauchtes Stück kauft man nach seinen eigenen Fotos.',
    statement: ({ words }, kit) => `Im Angebot steht ${kit.list(words.map(kit.quote))}.`,
    innocent: 'Die Zahl kann eine Einstellung der Seite sein, oder die Stücke gleichen sich.',
    settles: 'Welches davon geschickt wird, und Fotos von diesem.',
  },
  'unused-against-photo': {
    title: 'Was neu oder unbenutzt heißt, zeigt auf den Fotos kein Alter',
    failureTitle: 'Das Stück heißt neu oder unbenutzt, und ein Foto zeigt Alter oder Gebrauch',
    rule: 'Unbehandeltes Leder dunkelt nach, Nieten laufen an und Metallauflagen nutzen sich ab, wo Licht und Hände hinkommen; was neu oder unbenutzt ist, weicht dort kaum ab.',
    statement: ({ said, photo, mark, place, by, within }, kit) =>
      `${saying(said, kit)}, aber auf Foto ${photo} hast du an Markierung ${mark} gemessen: ${aged[place](`${kit.number(by, 1)} ± ${kit.number(within, 1)}`)}.`,
    innocent:
      'Vielleicht fällt das Licht verschieden auf die beiden Stellen. Auch Reinigung, Pflege, ein Schaufenster oder Jahre im Lager verändern Leder und Metall, und ein Teil kann ersetzt worden sein.',
    settles: 'Ein Foto beider Stellen bei gleichmäßigem Tageslicht, und wie das Stück aufbewahrt wurde.',
  },
};
