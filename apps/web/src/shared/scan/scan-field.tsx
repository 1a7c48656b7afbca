import { IconScan } from '@tabler/icons-react';
import { lazy, Suspense, useCallback, useEffect, useRef, useState } from 'react';
import { useMessages } from '../language/catalogue';
import { scanMessages } from './messages';
import { openThing } from './scan-desk';

const Camera = lazy(() => import('./camera'));

interface Props {
  readonly id: string;
  readonly label?: string;
  /** Takes the text; without it the text opens the thing that it names. */
  readonly onText?: (text: string) => void;
  /** Reached with the key `/` from anywhere outside a field. */
  readonly shortcut?: boolean;
}

const useSlash = (field: React.RefObject<HTMLInputElement | null>, active: boolean): void => {
  useEffect(() => {
    if (!active) return;
    const listen = (event: KeyboardEvent): void => {
      const typing =
        event.target instanceof HTMLElement && event.target.matches('input, textarea, select');
      if (event.key !== '/' || typing || event.ctrlKey || event.metaKey) return;
      event.preventDefault();
      field.current?.focus();
      field.current?.select();
    };
    window.addEventListener('keydown', listen);
    return () => window.removeEventListener('keydown', listen);
  }, [active, field]);
};

/** One field that takes anything with a code: scanned, typed, or read by the camera. */
export const ScanField = ({ id, label, onText = openThing, shortcut = false }: Props) => {
  const t = useMessages(scanMessages);
  const [text, setText] = useState('');
  const [camera, setCamera] = useState(false);
  const field = useRef<HTMLInputElement>(null);
  useSlash(field, shortcut);
  const read = useCallback(
    (found: string) => {
      setCamera(false);
      onText(found);
    },
    [onText],
  );
  return (
    <form
      className="scan"
      role={shortcut ? 'search' : undefined}
      onSubmit={(event) => {
        event.preventDefault();
        if (text.trim() !== '') onText(text);
        setText('');
      }}
    >
      <label htmlFor={id} className="scan-label">
        {label ?? t('label')}
      </label>
      <input
        id={id}
        ref={field}
        value={text}
        onChange={(event) => setText(event.target.value)}
        placeholder={label ?? t('label')}
        title={shortcut ? t('hint') : undefined}
        autoComplete="off"
        autoCapitalize="off"
        spellCheck={false}
        enterKeyHint="go"
      />
      <button
        type="button"
        className="scan-camera"
        aria-label={t('camera')}
        onClick={() => setCamera(true)}
      >
        <IconScan aria-hidden size={22} />
      </button>
      <Suspense fallback={null}>
        {camera && <Camera onRead={read} onClose={() => setCamera(false)} />}
      </Suspense>
    </form>
  );
};
