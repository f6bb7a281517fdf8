/** What the browser tells of a tab that changes. */
export interface TabChange {
  status?: string | undefined;
  url?: string | undefined;
  title?: string | undefined;
}

export interface PageWatchPorts {
  /** Whether the tab still shows what was read; 'gone' when no script of ours is there to answer. */
  stands(): Promise<'yes' | 'no' | 'gone'>;
  left(): void;
  arrived(): void;
  /** Calls back after a moment; the function that it returns calls it off. */
  later(call: () => void): () => void;
}

export interface PageWatch {
  heard(change: TabChange): void;
  /** The page was read: our script is there, and from now on no answer means another document. */
  read(): void;
  end(): void;
}

/**
 * Tells a page that was left from one that only says so. The browser reports the same for a reload and for a page that
 * replaces its own history entry, five times a second if it likes: so the page itself is asked whether it still shows
 * what was read. It is asked once more a moment later, because pages change their address before their content.
 */
export function watchPage(ports: PageWatchPorts): PageWatch {
  let asking: Promise<void> | null = null;
  let askAgain = false;
  let met = false;
  let away = false;
  let complete = false;
  let over = false;
  let callOff = () => {};

  const leave = () => {
    [met, away] = [false, true];
    ports.left();
    arrive();
  };
  const arrive = () => {
    if (over || !away || !complete) return;
    away = false;
    ports.arrived();
  };
  const ask = (goneCounts: boolean): void => {
    if (asking) {
      askAgain = true;
      return;
    }
    asking = ports.stands().then((answer) => {
      asking = null;
      if (over) return;
      const again = askAgain;
      askAgain = false;
      if (answer === 'no' || (answer === 'gone' && goneCounts)) leave();
      else {
        met ||= answer === 'yes';
        if (again) ask(goneCounts);
      }
    });
  };

  return {
    heard({ status, url, title }) {
      const moves = status === 'loading' || url !== undefined;
      if (moves || title !== undefined) {
        ask(moves && met);
        callOff();
        callOff = ports.later(() => ask(moves));
      }
      // Firefox tells of an address that a page gives itself, and of nothing after it.
      if (status !== undefined || url !== undefined) complete = status !== 'loading';
      if (complete) (asking ?? Promise.resolve()).then(arrive);
    },
    read() {
      met = true;
    },
    end() {
      over = true;
      callOff();
    },
  };
}
