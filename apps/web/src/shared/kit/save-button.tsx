import { Button } from '@mantine/core';
import { useState } from 'react';
import { sentWith } from '../../api/watched';
import { useFormats } from '../formats/use-formats';
import { useMessages } from '../language/catalogue';
import { saveBlob } from './csv';
import { fetchBlob, type Fetched } from './download';
import { type Progress, useStoppable, Working } from './long-work';
import { kitMessages } from './messages';
import { ProblemNotice } from './problem-notice';

/** Fetches a file; what has come of it is how far it is, once something has. */
export const useFetched = () => {
  const t = useMessages(kitMessages);
  const formats = useFormats();
  const work = useStoppable();
  const [fetched, setFetched] = useState<Fetched>();
  const start = (path: string, then: (file: Blob) => void): Promise<void> =>
    work.run(async (watched) => {
      setFetched(undefined);
      then(await fetchBlob(path, sentWith(watched), setFetched));
    });
  const kilobytes = (bytes: number): string => formats.number(String(Math.round(bytes / 1024)));
  const progress: Progress | undefined = fetched && {
    done: fetched.doneBytes,
    total: fetched.totalBytes,
    inWords: t('kilobytes', { count: kilobytes(fetched.doneBytes) }),
  };
  return { ...work, progress, start };
};

interface Props {
  readonly label: string;
  readonly path: string;
  readonly fileName: string;
}

/** Saves something that takes a while to make: it shows how far it is and can be stopped. */
export const SaveButton = ({ label, path, fileName }: Props) => {
  const { working, id, progress, error, start, cancel } = useFetched();
  if (working) return <Working label={label} id={id} progress={progress} onCancel={cancel} />;
  return (
    <div>
      <Button
        variant="default"
        onClick={() => void start(path, (file) => saveBlob(fileName, file))}
      >
        {label}
      </Button>
      <ProblemNotice error={error} />
    </div>
  );
};
