import { Button } from '@mantine/core';
import { useState } from 'react';
import { useRead } from '../../api/use-api';
import { useList } from '../../api/use-list';
import { useMay } from '../../app/session';
import { useMessages } from '../../shared/language/catalogue';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { ChoiceField, TextField } from '../../shared/kit/fields';
import { Section } from '../../shared/kit/page';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { Tray } from '../../shared/pictures/tray';
import { batchMessages } from '../../shared/batches/messages';
import { correctMessages } from './correct-messages';
import { useBatchBooking, type Batch } from './use-batch-booking';
import { WithdrawDialog, type Wrong } from './withdraw-dialog';

const useDesignOf = (tag: string) => {
  const mould = useRead(
    '/api/moulds/{tag}',
    { params: { path: { tag } } },
    { enabled: tag.length > 2 },
  );
  const designs = useList('/api/mould-designs');
  return { mould, design: designs.rows.find((design) => design.id === mould.data?.designId) };
};

/** A tray is filled: which one, how many cavities, and a tap on each reject. */
export const TrayDialog = (props: {
  readonly batch: Batch;
  readonly tag: string;
  readonly onClose: () => void;
}) => {
  const { batch, onClose } = props;
  const t = useMessages(batchMessages);
  const book = useBatchBooking(batch);
  const free = useList('/api/moulds', { state: 'sound', limit: 500 }).rows.filter(
    ({ inBatchCode }) => inBatchCode === null,
  );
  const [tag, setTag] = useState(props.tag);
  const [filledText, setFilledText] = useState('');
  const [rejects, setRejects] = useState<readonly number[]>([]);
  const { mould, design } = useDesignOf(tag);
  const filled = filledText === '' ? (design?.cavities ?? 0) : Number(filledText);
  return (
    <EditDialog
      title={t('addTray')}
      size="xl"
      onClose={onClose}
      onSave={() =>
        book(
          '/api/batches/{id}/mould-uses',
          {
            mouldTag: tag,
            cavitiesFilled: filled,
            rejectCavities: rejects.filter((cavity) => cavity <= filled),
          },
          t('trayLabel', { tag, batch: batch.code }),
        )
      }
    >
      {(errors) => (
        <>
          <div className="columns columns-end">
            <ChoiceField
              label={t('tray')}
              value={free.some((one) => one.tag === tag) ? tag : ''}
              empty="–"
              onChange={setTag}
              choices={free.map((one) => ({
                value: one.tag,
                label: `${one.tag} · ${one.designName}`,
              }))}
            />
            <TextField
              label={t('trayTag')}
              value={tag}
              maxLength={40}
              onChange={setTag}
              error={errors['mouldTag']}
            />
            <TextField
              label={t('filled')}
              value={filledText === '' ? String(filled) : filledText}
              onChange={(text) => setFilledText(text.replace(/\D/g, ''))}
              error={errors['cavitiesFilled']}
            />
          </div>
          {mould.isError && <ProblemNotice error={mould.error} />}
          {design !== undefined && (
            <Tray
              rows={design.rows}
              columns={design.columns}
              filled={filled}
              rejects={rejects}
              onChange={setRejects}
            />
          )}
        </>
      )}
    </EditDialog>
  );
};

/** The trays of a cast batch with their rejects. */
export const BatchTrays = (props: {
  readonly batch: Batch;
  readonly onAdd: (() => void) | undefined;
}) => {
  const { batch, onAdd } = props;
  const t = useMessages(batchMessages);
  const c = useMessages(correctMessages);
  const mayWithdraw = useMay('maker');
  const [wrong, setWrong] = useState<Wrong>();
  const designs = useList('/api/mould-designs').rows;
  return (
    <Section
      title={t('traysTitle')}
      actions={
        onAdd !== undefined && (
          <Button size="lg" onClick={onAdd}>
            {t('addTray')}
          </Button>
        )
      }
    >
      <div className="trays">
        {batch.mouldUses.map((use) => {
          const design = designs.find(({ name }) => name === use.designName);
          return (
            <figure key={use.id} className="tray-use">
              <figcaption>
                <code>{use.mouldTag}</code> {use.designName}{' '}
                {use.withdrawnBecause !== null && (
                  <em>{c('takenBack', { reason: use.withdrawnBecause })}</em>
                )}
                {use.withdrawnBecause === null && mayWithdraw && (
                  <Button
                    variant="default"
                    aria-label={c('markWrongOf', { what: use.mouldTag })}
                    onClick={() => setWrong({ kind: 'tray', id: use.id, name: use.mouldTag })}
                  >
                    {c('markWrong')}
                  </Button>
                )}
              </figcaption>
              {design === undefined ? null : (
                <Tray
                  rows={design.rows}
                  columns={design.columns}
                  filled={use.cavitiesFilled}
                  rejects={use.rejectCavities}
                />
              )}
            </figure>
          );
        })}
      </div>
      {wrong !== undefined && (
        <WithdrawDialog batch={batch} wrong={wrong} onClose={() => setWrong(undefined)} />
      )}
    </Section>
  );
};
