import { useCallback, useEffect, useState } from 'react';

const PREFIX = 'ballotin.draft.';

const read = (name: string): unknown => {
  try {
    const kept = localStorage.getItem(PREFIX + name);
    return kept === null ? undefined : (JSON.parse(kept) as unknown);
  } catch {
    return undefined;
  }
};

export interface Draft<T> {
  readonly value: T;
  readonly change: (next: T | ((previous: T) => T)) => void;
  /** Forgets the draft: it was booked, or the person gave it up. */
  readonly clear: () => void;
  readonly restored: boolean;
}

/** What is being typed survives a reload, a flat battery and a walk to another screen. */
export const useDraft = <T>(name: string, empty: T): Draft<T> => {
  const [restored] = useState(() => read(name) !== undefined);
  const [value, change] = useState<T>(() => (read(name) as T | undefined) ?? empty);
  const [touched, setTouched] = useState(restored);
  useEffect(() => {
    if (touched) localStorage.setItem(PREFIX + name, JSON.stringify(value));
  }, [name, touched, value]);
  const changeTouched = useCallback((next: T | ((previous: T) => T)) => {
    setTouched(true);
    change(next);
  }, []);
  const clear = useCallback(() => {
    setTouched(false);
    localStorage.removeItem(PREFIX + name);
    change(empty);
    // `empty` is a literal of the caller: following it would clear on every render.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [name]);
  return { value, change: changeTouched, clear, restored };
};
