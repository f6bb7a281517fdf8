import { type Draft, exportText, inspectDraft, plainName } from '../../maker';
import { waitingChanges } from '../../reader/file/look';
import type { FileOrigin } from '../../store/file-origins';
import type { OwnMakerFile } from '../../store/maker-files';
import { strings } from '../../words';
import { saveAsFile } from '../save-as-file';
import { countsOf } from './counts';
import { termsOf } from './travel/FetchedFile';

const words = strings.makers;

export const nameOf = ({ value }: Draft) =>
  typeof value.maker === 'string' && value.maker !== '' ? value.maker : words.unnamed;

export const saveDraft = (draft: Draft) =>
  saveAsFile(exportText(draft), `${plainName(nameOf(draft)).replaceAll(' ', '-') || 'maker'}.json`);

interface Props {
  file: OwnMakerFile;
  /** Where it is from; undefined where it was written or brought in here. */
  origin: FileOrigin | undefined;
  onEdit: () => void;
  onRemove: () => void;
}

/** One of the user's own files in the list. */
export function OwnRow({ file, origin, onEdit, onRemove }: Props) {
  const { file: finished, problems } = inspectDraft(file.draft);
  const told = finished !== null && (finished.authors !== undefined || finished.licence !== undefined);
  return (
    <article class="watch-row">
      <h3>{nameOf(file.draft)}</h3>
      <p class="muted">{finished ? `${countsOf(finished)}. ${words.finished}` : words.unfinished(problems.length)}</p>
      {told && <p class="muted">{termsOf(finished)}</p>}
      {origin && (
        <p>
          {strings.travel.fromHost(new URL(origin.address).hostname)}{' '}
          {finished && strings.travel.waitingShort(waitingChanges(origin, finished).length)}{' '}
          {origin.troubles.length > 0 && strings.travel.lastFailed}
        </p>
      )}
      <div class="row">
        <button type="button" onClick={onEdit}>
          {words.edit}
        </button>
        <button type="button" onClick={() => saveDraft(file.draft)}>
          {words.exportFile}
        </button>
        <button type="button" onClick={onRemove}>
          {words.removeFile}
        </button>
      </div>
    </article>
  );
}
