import { useEffect, useState } from 'react';

/** When a dialog goes away the keyboard is back at what opened it, not at the top of the page. */
export const useFocusBack = (): void => {
  const [opener] = useState(() => document.activeElement);
  useEffect(
    () => () => {
      // After the dialog has let go of the keyboard.
      setTimeout(() => {
        if (opener instanceof HTMLElement && opener.isConnected) opener.focus();
      });
    },
    [opener],
  );
};
