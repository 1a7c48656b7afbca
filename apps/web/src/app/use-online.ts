import { useSyncExternalStore } from 'react';

/** Whether the browser believes that there is a network. */
export const useOnline = (): boolean =>
  useSyncExternalStore(
    (changed) => {
      window.addEventListener('online', changed);
      window.addEventListener('offline', changed);
      return () => {
        window.removeEventListener('online', changed);
        window.removeEventListener('offline', changed);
      };
    },
    () => navigator.onLine,
  );
