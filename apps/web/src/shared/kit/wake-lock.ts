import { useEffect, useState } from 'react';

/** Keeps the screen on while hands are wet; taken again when the person comes back to the page. */
export const useWakeLock = (wanted: boolean): boolean => {
  const [held, setHeld] = useState(false);
  useEffect(() => {
    if (!wanted || !('wakeLock' in navigator)) return;
    let lock: WakeLockSentinel | undefined;
    let ended = false;
    const take = async (): Promise<void> => {
      if (document.visibilityState !== 'visible') return;
      try {
        lock = await navigator.wakeLock.request('screen');
        if (ended) await lock.release();
        else setHeld(true);
      } catch {
        setHeld(false);
      }
    };
    void take();
    const again = (): void => void take();
    document.addEventListener('visibilitychange', again);
    return () => {
      ended = true;
      document.removeEventListener('visibilitychange', again);
      void lock?.release();
    };
  }, [wanted]);
  return held;
};
