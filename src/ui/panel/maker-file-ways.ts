import { browser } from '../../browser/api';
import { answerOf, type Case, fileFromCase } from '../../case';
import { writeOwnMaker } from '../../store/maker-files';
import { kit, strings } from '../../words';

const openPage = (hash: string) => browser.tabs.create({ url: browser.runtime.getURL(`watchlist.html${hash}`) });

/** The maker files, where one is brought in by choosing or dropping it. */
export const openMakerFiles = () => openPage('#makers');

/**
 * Begins a maker file from a listing, keeps it and opens it, so that each entry is checked. In a private window nothing
 * is kept: there the maker files open without it.
 */
export async function startFile(kase: Case, incognito: boolean): Promise<void> {
  const { stamp, said } = answerOf(kase);
  const code = 'code' in stamp ? stamp.code : '';
  const note = strings.waysOn.note(kase.listing.url, code, kit.either(said.dates.map(kit.span)));
  const draft = incognito ? null : fileFromCase(kase, note);
  if (draft === null) return void (await openMakerFiles());
  const id = crypto.randomUUID();
  await writeOwnMaker(id, draft);
  await openPage(`#makers&file=${id}`);
}
