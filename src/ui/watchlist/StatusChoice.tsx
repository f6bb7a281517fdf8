import { statusSchema, type WatchStatus } from '../../watch';
import { strings } from '../../words';

/** What the buyer did about a case. The title tells apart what would be named alike in a long list. */
export const StatusChoice = ({
  status,
  title,
  onStatus,
}: {
  status: WatchStatus;
  title: string;
  onStatus: (status: WatchStatus) => void;
}) => (
  <label class="row">
    <span>
      {strings.watch.status}
      <span class="visually-hidden"> {strings.watch.of(title)}</span>
    </span>
    <select value={status} onChange={(event) => onStatus(statusSchema.parse(event.currentTarget.value))}>
      {statusSchema.options.map((one) => (
        <option key={one} value={one}>
          {strings.watch.statuses[one]}
        </option>
      ))}
    </select>
  </label>
);
