import { Button } from '@mantine/core';
import { useEffect, useRef, useState } from 'react';
import { useFormats } from '../formats/use-formats';
import { useMessages } from '../language/catalogue';
import { saveBlob } from './csv';
import { fetchBlob, type Progress } from './download';
import { kitMessages } from './messages';
import { ProblemNotice } from './problem-notice';

const kilobytes = (bytes: number): string => String(Math.round(bytes / 1024));

const useDownload = (path: string, fileName: string) => {
  const [progress, setProgress] = useState<Progress>();
  const [error, setError] = useState<unknown>();
  const stop = useRef<AbortController>(undefined);
  useEffect(() => () => stop.current?.abort(), []);
  const start = async (): Promise<void> => {
    stop.current = new AbortController();
    setError(undefined);
    setProgress({ doneBytes: 0 });
    try {
      saveBlob(fileName, await fetchBlob(path, { signal: stop.current.signal }, setProgress));
    } catch (cause) {
      if (!stop.current.signal.aborted) setError(cause);
    } finally {
      setProgress(undefined);
    }
  };
  return { progress, error, start, cancel: () => stop.current?.abort() };
};

interface Props {
  readonly label: string;
  readonly path: string;
  readonly fileName: string;
}

/** Saves something that takes a while to make: it shows how far it is and can be stopped. */
export const SaveButton = ({ label, path, fileName }: Props) => {
  const t = useMessages(kitMessages);
  const formats = useFormats();
  const { progress, error, start, cancel } = useDownload(path, fileName);
  if (progress === undefined) {
    return (
      <div>
        <Button variant="default" onClick={() => void start()}>
          {label}
        </Button>
        <ProblemNotice error={error} />
      </div>
    );
  }
  return (
    <div className="row" role="status">
      <progress
        aria-label={label}
        {...(progress.totalBytes === undefined
          ? {}
          : { value: progress.doneBytes, max: progress.totalBytes })}
      />
      <span>
        {t('working')} {formats.number(kilobytes(progress.doneBytes))} kB
      </span>
      <Button variant="default" onClick={cancel}>
        {t('cancel')}
      </Button>
    </div>
  );
};
