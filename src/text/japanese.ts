/** Kana, or a character that Japanese shares with Chinese. */
export const japanese = /[\u3040-\u30ff\u3400-\u9fff]/;
