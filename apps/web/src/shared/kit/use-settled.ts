import { useEffect, useState } from 'react';

const PAUSE_MS = 250;

/** A value that somebody is still typing, once the fingers rest. */
export const useSettled = <T>(value: T): T => {
  const [settled, setSettled] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(value), PAUSE_MS);
    return () => clearTimeout(timer);
  }, [value]);
  return settled;
};
