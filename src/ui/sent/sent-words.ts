import type { SentPhoto } from '../../case';
import { kit, strings } from '../../words';

/** Where a photo came from, and when. */
export const sentWords = ({ from, on }: SentPhoto): string => strings.sent.came[from](kit.day(on));
