import { Button } from '@mantine/core';
import { useEffect, useState } from 'react';
import { api, must } from '../../api/client';
import { problemCode, ProblemError } from '../../api/problem';
import type { components } from '../../api/schema';
import { useAsk } from '../../api/use-ask';
import type { Sent } from '../../api/watched';
import { useMessages } from '../../shared/language/catalogue';
import { Working } from '../../shared/kit/long-work';
import { Section } from '../../shared/kit/page';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { labelMessages } from './messages';

type Wishes = components['schemas']['LabelsDto'];

/** Long enough that nobody's typing draws a label for each key. */
const WAIT_MS = 500;

const useSettled = (wishes: Wishes): Wishes => {
  const [settled, setSettled] = useState(wishes);
  const text = JSON.stringify(wishes);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(JSON.parse(text) as Wishes), WAIT_MS);
    return () => clearTimeout(timer);
  }, [text]);
  return settled;
};

/** The address of the drawn file in this browser. */
const draw = async (code: string, wishes: Wishes, sent: Sent): Promise<string> => {
  const file = await must(
    api.POST('/api/lots/{code}/label-previews', {
      params: { path: { code } },
      body: wishes,
      ...sent,
      parseAs: 'blob',
    }) as Promise<{ data?: Blob; error?: unknown; response: Response }>,
  );
  return URL.createObjectURL(file);
};

/** The list of what was checked says already what keeps it back. */
const isKeptBack = (error: unknown): boolean =>
  error instanceof ProblemError && problemCode(error.problem) === 'label-kept-back';

/** The very PDF that printing puts on record today, drawn anew for every wish; nothing is kept. */
export const Preview = ({ code, wishes }: { readonly code: string; readonly wishes: Wishes }) => {
  const t = useMessages(labelMessages);
  const settled = useSettled(wishes);
  const preview = useAsk({
    queryKey: ['label-preview', code, settled],
    queryFn: (sent) => draw(code, settled, sent),
    enabled: settled.copies >= 1,
    retry: false,
    gcTime: 0,
  });
  const address = preview.data;
  useEffect(
    () => () => {
      if (address !== undefined) URL.revokeObjectURL(address);
    },
    [address],
  );
  return (
    <Section
      title={t('preview')}
      actions={
        address !== undefined && (
          <a className="button-link" href={address} target="_blank" rel="noreferrer">
            {t('openPreview')}
          </a>
        )
      }
    >
      {preview.isFetching ? (
        <Working label={t('drawing')} id={preview.workId} onCancel={preview.stop} />
      ) : (
        <p role="status" className="quiet">
          {preview.isError ? t('noPreview') : t('previewLead')}
        </p>
      )}
      {preview.isPending && !preview.isFetching && settled.copies >= 1 && (
        <Button variant="default" onClick={() => void preview.refetch()}>
          {t('draw')}
        </Button>
      )}
      {!isKeptBack(preview.error) && <ProblemNotice error={preview.error} />}
      {address !== undefined && !preview.isError && (
        <object
          className="pdf-frame"
          data={address}
          type="application/pdf"
          aria-label={t('previewTitle')}
        >
          <p>{t('onlyPdf')}</p>
        </object>
      )}
    </Section>
  );
};
