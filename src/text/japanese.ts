/** Kana, or a character that Japanese shares with Chinese. */
export const japanese = /[\u3040-\u30ff\u3400-\u9fff]/;

/** A house's own word for itself, and what it makes, at the end of its name: "藤村鞄店". Common practice, no source. */
export const japaneseHouses =
  /(?<![\p{Script=Katakana}\p{Script=Han}ー・])[\p{Script=Katakana}\p{Script=Han}ー・&＆]{2,20}(?:製鞄所?|鞄店|鞄舗|鞄工房|皮革店?|革具店|革店|革工房|袋物店|革工芸|製作所|商店|商会|工房|工芸|堂|舎)(?![\p{Script=Katakana}\p{Script=Han}ー])/gu;
