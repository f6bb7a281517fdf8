/**
 * The alternatives of each character, which tesseract.js gives only in its hOCR text: words in order, each with its
 * characters, each with its choices and their confidence (0 to 100), most likely first. A word without choices gives
 * an empty list. Source: hOCR 1.2 (x_wconf, x_confs) and tesseract's `lstm_choice_mode` 2.
 */
export function hocrChoices(hocr: string): { text: string; confidence: number }[][][] {
  const words: { text: string; confidence: number }[][][] = [];
  for (const piece of hocr.split("class='ocrx_word'").slice(1)) {
    const characters: { text: string; confidence: number }[][] = [];
    for (const block of piece.split("id='lstm_choices_").slice(1)) {
      const choices: { text: string; confidence: number }[] = [];
      for (const [, confidence, text] of block.matchAll(/title='x_confs ([\d.]+)'>([^<]*)</g)) {
        choices.push({ text: unescapeText(text ?? ''), confidence: Number(confidence) });
      }
      if (choices.length > 0) characters.push(choices);
    }
    words.push(characters);
  }
  return words;
}

const named: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"' };

function unescapeText(text: string): string {
  return text.replace(/&(#(\d+)|\w+);/g, (whole, name: string, code: string | undefined) =>
    code === undefined ? (named[name] ?? whole) : String.fromCodePoint(Number(code)),
  );
}
