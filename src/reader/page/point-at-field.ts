import type { PickField } from '../../listing/pick-types';
import type { OutputOf } from '../../message/protocol';
import { sendToPage } from '../../message/send';
import type { Result } from '../../problem';
import { injectPageScript } from './read-page';

/** Lets the buyer point at a field in a tab: the script for it comes into the page now, and replaces an earlier copy of itself. */
export async function pointAtField(
  tabId: number,
  field: PickField,
  invite: string,
): Promise<Result<OutputOf<'field.pick'>>> {
  const injected = await injectPageScript(tabId, 'pointing');
  return injected.ok ? sendToPage(tabId, 'field.pick', { field, invite }) : injected;
}
