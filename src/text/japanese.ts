/** Kana, or a character that Japanese shares with Chinese. */
export const japanese = /[\u3040-\u30ff\u3400-\u9fff]/;

/** A house's own word for itself, and what it makes, at the end of its name: "藤村鞄店". Common practice, no source. */
export const japaneseHouses =
  /(?<![\p{Script=Katakana}\p{Script=Han}ー・])[\p{Script=Katakana}\p{Script=Han}ー・&＆]{2,20}(?:製[鞄靴革]{1,2}所?|鞄(?:店|舗|工房|工業|製作所|本舗|本店|製造所?)|皮革(?:店|工業|工房)?|革具店?|馬具店?|革店|革工房|袋物店|革工芸|製作所|商店|商会|工房|工芸|堂|舎)(?![\p{Script=Katakana}\p{Script=Han}ー])/gu;
