import { type Case, partsToTag, proposalsOf, tagPart, tagsOf } from '../../case';
import { knownParts } from '../../maker';
import { kit, strings } from '../../words';
import type { ByHand } from './by-hand';

interface Props {
  kase: Case;
  photoId: string;
  byHand: ByHand;
}

const words = strings.partTags;

/** Says that a photo shows a part, or takes that back. */
export function toggleTag(kase: Case, photoId: string, part: string, byHand: ByHand): void {
  const tag = tagsOf(kase, photoId).find((one) => one.part === part);
  if (tag) {
    byHand.undo(tag.id);
    return;
  }
  const made = tagPart(kase, photoId, part);
  if (made) byHand.correct(made);
}

const typedInto = new Set(['INPUT', 'SELECT', 'TEXTAREA']);

/** What a key says of a photo; false for a key that says nothing, or is typed into a field. */
export function tagByKey(event: KeyboardEvent, kase: Case, photoId: string, byHand: ByHand): boolean {
  const { target, key } = event;
  if (event.ctrlKey || event.metaKey || event.altKey) return false;
  if (target instanceof HTMLElement && typedInto.has(target.tagName)) return false;
  const part = partsToTag(kase).find((one) => one.key === key)?.part;
  if (part === undefined) return false;
  event.preventDefault();
  toggleTag(kase, photoId, part, byHand);
  return true;
}

/** Which parts a photo shows: a key each, a press each, or any other part from a list. */
export function PartTags({ kase, photoId, byHand }: Props) {
  const tags = tagsOf(kase, photoId);
  const offered = partsToTag(kase);
  const more = tags
    .filter(({ part }) => !offered.some((one) => one.part === part))
    .map(({ part }) => ({ key: '', part }));
  const rest = knownParts.filter((part) => ![...offered, ...more].some((one) => one.part === part));
  const seen = proposalsOf(
    kase,
    kase.photos.find((one) => one.photoId === photoId),
  );
  return (
    <fieldset class="part-tags">
      <legend>{words.title}</legend>
      {seen.length > 0 && <p class="muted hint">{words.proposes(kit.list(seen.map((one) => words.proposals[one])))}</p>}
      <div class="row">
        {[...offered, ...more].map(({ key, part }) => (
          <button
            key={part}
            type="button"
            class="small"
            data-part-tag={part}
            aria-pressed={tags.some((tag) => tag.part === part)}
            aria-keyshortcuts={key || undefined}
            onClick={() => toggleTag(kase, photoId, part, byHand)}
          >
            {key && <span class="tag-key">{key}</span>} {words.name(part)}
          </button>
        ))}
        <label class="field">
          <span>{words.other}</span>
          <select
            value=""
            onChange={({ currentTarget }) => {
              if (currentTarget.value !== '') toggleTag(kase, photoId, currentTarget.value, byHand);
              currentTarget.value = '';
            }}
          >
            <option value="">{words.choose}</option>
            {rest.map((part) => (
              <option key={part} value={part}>
                {words.name(part)}
              </option>
            ))}
          </select>
        </label>
      </div>
      <p class="muted hint">{words.keys}</p>
    </fieldset>
  );
}
