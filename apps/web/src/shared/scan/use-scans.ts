import { useEffect, useRef } from 'react';
import { scanned, takeScans } from './scan-desk';
import { inBurst, next, quiet, type WedgeState } from './wedge';

const isTextField = (target: EventTarget | null): boolean =>
  target instanceof HTMLTextAreaElement ||
  target instanceof HTMLSelectElement ||
  (target instanceof HTMLInputElement && !['checkbox', 'radio', 'button'].includes(target.type));

/** Listens for a scanner that types anywhere but in a field, where the field itself takes it. */
export const useWedge = (): void => {
  useEffect(() => {
    let state: WedgeState = quiet;
    const listen = (event: KeyboardEvent): void => {
      if (isTextField(event.target)) {
        state = quiet;
        return;
      }
      const after = next(state, { key: event.key, ctrl: event.ctrlKey, atMs: event.timeStamp });
      // Keys of a burst must not press the button that happens to have the focus.
      if (after.scanned !== undefined || inBurst(after.state)) event.preventDefault();
      state = after.state;
      if (after.scanned !== undefined) scanned(after.scanned);
    };
    window.addEventListener('keydown', listen, true);
    return () => window.removeEventListener('keydown', listen, true);
  }, []);
};

/** While the screen is open, scans come to it. */
export const useScans = (take: (text: string) => void, active = true): void => {
  const latest = useRef(take);
  useEffect(() => {
    latest.current = take;
  });
  useEffect(() => (active ? takeScans((text) => latest.current(text)) : undefined), [active]);
};
