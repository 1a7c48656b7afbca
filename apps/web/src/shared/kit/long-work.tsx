import { Button } from '@mantine/core';
import { useEffect, useRef, useState } from 'react';
import { useFormats } from '../formats/use-formats';
import { useMessages } from '../language/catalogue';
import { saveBlob } from './csv';
import { fetchBlob, type Progress } from './download';
import { kitMessages } from './messages';
import { ProblemNotice } from './problem-notice';

const kilobytes = (bytes: number): string => String(Math.round(bytes / 1024));

/** Work that takes a while: a moving bar, what it is, and the way to stop it where it can be. */
export const Working = (props: {
  readonly label: string;
  readonly progress?: Progress;
  readonly onCancel?: () => void;
}) => {
  const { label, progress, onCancel } = props;
  const t = useMessages(kitMessages);
  const formats = useFormats();
  return (
    <div className="row" role="status">
      <progress
        aria-label={label}
        {...(progress?.totalBytes === undefined
          ? {}
          : { value: progress.doneBytes, max: progress.totalBytes })}
      />
      <span>
        {progress === undefined
          ? label
          : `${t('working')} ${formats.number(kilobytes(progress.doneBytes))} kB`}
      </span>
      {onCancel !== undefined && (
        <Button variant="default" onClick={onCancel}>
          {t('cancel')}
        </Button>
      )}
    </div>
  );
};

/** Runs work that can be stopped; what was stopped is no fault. */
export const useStoppable = () => {
  const stop = useRef<AbortController>(undefined);
  const [working, setWorking] = useState(false);
  const [error, setError] = useState<unknown>();
  useEffect(() => () => stop.current?.abort(), []);
  const run = async (work: (signal: AbortSignal) => Promise<unknown>): Promise<void> => {
    const mine = new AbortController();
    stop.current?.abort();
    stop.current = mine;
    setError(undefined);
    setWorking(true);
    try {
      await work(mine.signal);
    } catch (cause) {
      if (!mine.signal.aborted) setError(cause);
    } finally {
      if (stop.current === mine) setWorking(false);
    }
  };
  return { working, error, setError, run, cancel: () => stop.current?.abort() };
};

const useDownload = (path: string, fileName: string) => {
  const { run, ...work } = useStoppable();
  const [progress, setProgress] = useState<Progress>();
  const start = (): Promise<void> =>
    run(async (signal) => {
      setProgress({ doneBytes: 0 });
      saveBlob(fileName, await fetchBlob(path, { signal }, setProgress));
    });
  return { ...work, progress, start };
};

interface Props {
  readonly label: string;
  readonly path: string;
  readonly fileName: string;
}

/** Saves something that takes a while to make: it shows how far it is and can be stopped. */
export const SaveButton = ({ label, path, fileName }: Props) => {
  const { working, progress, error, start, cancel } = useDownload(path, fileName);
  if (!working || progress === undefined) {
    return (
      <div>
        <Button variant="default" onClick={() => void start()}>
          {label}
        </Button>
        <ProblemNotice error={error} />
      </div>
    );
  }
  return <Working label={label} progress={progress} onCancel={cancel} />;
};
