import { listOf } from '../text';

/** A part is another than the maker's: "the zip was replaced". Forms that tell of what was done, not of what may be. */
export const replacedWords = listOf(
  'replaced, renewed, redone, relined, re-lined, rezipped, restitched, replated, re-plated, exchanged, swapped out',
  'replacement, not original, non original, nicht original, nicht mehr original, ersetzt, erneuert, ausgetauscht',
  'ausgewechselt, neu gefüttert, neu vernäht, neu eingesetzt, remplacé, remplacée, remplacés, remplacées, changé',
  'changée, changés, changées, refait, refaite, refaits, refaites, non originale, sostituito, sostituita',
  'sostituiti, sostituite, cambiato, cambiata, cambiati, cambiate, rifatto, rifatta, rifatti, rifatte, rinnovato',
  'rinnovata, reemplazado, reemplazada, reemplazados, reemplazadas, sustituido, sustituida, sustituidos',
  'sustituidas, cambiado, cambiada, cambiados, cambiadas, renovado, renovada, rehecho, rehecha, vervangen',
  'vernieuwd, niet origineel, 交換済み, 交換済, 交換しました, 交換しています, 交換してあります, 交換されて, 交換した',
  '張り替え済み, 張替え済み, 張替済み, 張り替えました, 取り替えました, 新品に交換',
);

/** Something was mended; which part is told or not. */
export const restoredWords = listOf(
  'restored, refurbished, repaired, restauriert, aufgearbeitet, repariert, restauré, restaurée, restaurés',
  'restaurées, réparé, réparée, réparés, réparées, restaurato, restaurata, restaurati, restaurate, riparato',
  'riparata, riparati, riparate, restaurado, restaurada, restaurados, restauradas, reparado, reparada, reparados',
  'reparadas, gerestaureerd, gerepareerd, 修理済み, 修理済, 修理しました, 修復済み, 修復しました, リペア済み',
);

/** "A new zip": only right before the part, because much else of a piece may be called new. */
export const newBefore = listOf(
  'new, brand new, neue, neuer, neues, neuen, neuem, nouveau, nouvelle, nouveaux, nouvelles, nuovo, nuova, nuovi',
  'nuove, nuevo, nueva, nuevos, nuevas, nieuwe, nieuw, 新しい',
);
