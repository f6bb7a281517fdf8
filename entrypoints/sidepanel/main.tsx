import '../../src/reader/page/plain-validation';
import { FollowingPanel } from '../../src/ui/panel/FollowingPanel';
import { Panel } from '../../src/ui/panel/Panel';
import { renderSpoken } from '../../src/ui/render-spoken';

/** Chrome's panel belongs to the tab in its address; one without follows the tab in front. */
const named = new URLSearchParams(location.search).get('tab');
const isOfOneTab = named !== null && /^\d+$/.test(named);

await renderSpoken(() => (isOfOneTab ? <Panel tabId={Number(named)} /> : <FollowingPanel />), document.body);
