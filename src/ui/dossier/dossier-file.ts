export interface FileParts {
  title: string;
  /** The language that it is written in. */
  language: string;
  /** Markup as the browser serialises it, which escapes all text and attributes. */
  body: string;
  style: string;
}

const escapeText = (text: string) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

/**
 * One HTML file that stands by itself: its styles inside, pictures as data, nothing loaded from anywhere. The policy in its
 * head forbids scripts and the net, should a reader's program meet something that was let through.
 */
export const dossierFile = ({ title, language, body, style }: FileParts): string => `<!doctype html>
<html lang="${language}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src data:; style-src 'unsafe-inline'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>${escapeText(title)}</title>
<style>
${style.replaceAll('</', '<\\/')}
</style>
</head>
<body>
<main>
${body}
</main>
</body>
</html>
`;

/** What a document on disk may hold; anything else would be a mistake of ours and does not leave the browser. */
const neverSaved = 'script, style, link, iframe, object, embed, form, button, input, textarea, select';

/** The live document as markup, with nothing that acts and no picture from the net. */
export function markupOf(document: Element): string {
  const copy = document.cloneNode(true) as Element;
  for (const element of copy.querySelectorAll(neverSaved)) element.remove();
  for (const picture of copy.querySelectorAll('img')) {
    if (!picture.getAttribute('src')?.startsWith('data:image/')) picture.remove();
  }
  return copy.outerHTML;
}

/** A title as a file name that every system takes: letters, digits and hyphens, at most 60 characters. */
export function dossierFileName(title: string, day: string): string {
  const words = title
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');
  return `dossier-${words.slice(0, 60).replace(/-$/, '') || 'case'}-${day}.html`;
}
