/**
 * Words that no message to a seller may hold. Source: own proposal after the Defamation Act 2013 (England and Wales),
 * sections 1 and 3: say what is seen and on what basis, ask, and accuse no one. The roots cover their endings.
 */
export const avoidedWords: Record<string, readonly string[]> = {
  en: ['fake', 'counterfeit', 'scam', 'liar', 'lying', 'stolen', 'report you', 'fraud', 'genuine', 'authentic'],
  fr: ['faux', 'fausse', 'contrefa', 'arnaque', 'menteur', 'menteuse', 'volé', 'fraude', 'authenti'],
  de: ['fälschung', 'gefälscht', 'betrug', 'betrüger', 'lügner', 'lügen', 'gestohlen', 'plagiat', 'authenti'],
  it: ['falso', 'falsa', 'contraffa', 'truffa', 'bugiard', 'rubat', 'frode', 'autentic'],
  es: ['falso', 'falsa', 'falsifica', 'estafa', 'mentiros', 'robad', 'fraude', 'auténtic'],
  nl: ['vervals', 'nepper', 'namaak', 'oplichter', 'leugenaar', 'gestolen', 'fraude', 'authentiek'],
  ja: ['偽', '詐欺', '嘘', '盗', '本物'],
};
