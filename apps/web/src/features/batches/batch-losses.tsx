import { Button } from '@mantine/core';
import { useState } from 'react';
import type { components } from '../../api/schema';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DecimalField } from '../../shared/kit/decimal-field';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { ChoiceField, OneOf, TextField } from '../../shared/kit/fields';
import { Fact, Facts, Section } from '../../shared/kit/page';
import { batchMessages } from '../../shared/batches/messages';
import { InfusionDialog, infusedDraws } from './infusion-dialog';
import { infusionMessages } from './infusion-messages';
import { useBatchBooking, type Batch } from './use-batch-booking';

type LossKind = components['schemas']['LossDto']['kind'];
export const LOSS_KINDS: readonly LossKind[] = [
  'steam',
  'held_back',
  'scrapings',
  'rejects',
  'samples',
  'other',
];

const LossDialog = (props: { readonly batch: Batch; readonly onClose: () => void }) => {
  const { batch, onClose } = props;
  const t = useMessages(batchMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const book = useBatchBooking(batch);
  const [kind, setKind] = useState<LossKind>('steam');
  const [mass, setMass] = useState('');
  const [lotCode, setLotCode] = useState('');
  const [note, setNote] = useState('');
  return (
    <EditDialog
      title={t('addLoss')}
      onClose={onClose}
      onSave={() =>
        book(
          '/api/batches/{id}/losses',
          {
            kind,
            massGrams: mass,
            ...(lotCode === '' ? {} : { lotCode }),
            ...(note === '' ? {} : { note }),
          },
          t('lossLabel', { kind: word(kind), mass: formats.mass(mass), batch: batch.code }),
        )
      }
    >
      {(errors) => (
        <>
          <OneOf
            label={t('lossKind')}
            value={kind}
            onChange={(next) => setKind(next as LossKind)}
            choices={LOSS_KINDS.map((one) => ({ value: one, label: word(one) }))}
          />
          <DecimalField
            label={t('mass')}
            unit="g"
            weigh
            value={mass}
            onChange={setMass}
            error={errors['massGrams']}
            required
          />
          {kind === 'held_back' && (
            <ChoiceField
              label={t('lossLot')}
              value={lotCode}
              empty="–"
              onChange={setLotCode}
              error={errors['lotCode']}
              choices={batch.draws
                .filter(({ reversed }) => !reversed)
                .map((draw) => ({
                  value: draw.lotCode,
                  label: `${draw.itemName} ${draw.lotCode}`,
                }))}
            />
          )}
          <TextField label={t('note')} value={note} onChange={setNote} error={errors['note']} />
        </>
      )}
    </EditDialog>
  );
};

/** Losses and the balance of the batch: what went in, what came out, what is still open. */
export const BatchLosses = (props: { readonly batch: Batch; readonly mayBook: boolean }) => {
  const { batch, mayBook } = props;
  const t = useMessages(batchMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const infusion = useMessages(infusionMessages);
  const [open, setOpen] = useState<'loss' | 'infusion'>();
  const { balance } = batch;
  return (
    <Section
      title={t('balance')}
      actions={
        mayBook && (
          <>
            {infusedDraws(batch).length > 0 && (
              <Button variant="default" onClick={() => setOpen('infusion')}>
                {infusion('open')}
              </Button>
            )}
            <Button variant="default" onClick={() => setOpen('loss')}>
              {t('addLoss')}
            </Button>
          </>
        )
      }
    >
      <Facts>
        <Fact name={t('in')}>{formats.mass(balance.drawnGrams)}</Fact>
        <Fact name={t('lost')}>{formats.mass(balance.lostGrams)}</Fact>
        <Fact name={t('out')}>{formats.mass(balance.madeGrams)}</Fact>
        <Fact name={t('left')}>{formats.mass(balance.differenceGrams)}</Fact>
        <Fact name={t('cost')}>{formats.money(balance.drawnCost)}</Fact>
      </Facts>
      <ul className="plain-list">
        {batch.losses.map((loss) => (
          <li key={loss.id} className="row line">
            {word(loss.kind)} <strong>{formats.mass(loss.massGrams)}</strong>{' '}
            {loss.lotCode !== null && <code>{loss.lotCode}</code>} {loss.note}
            {loss.reversed && <em>({t('reversed')})</em>}
          </li>
        ))}
      </ul>
      {open === 'loss' && <LossDialog batch={batch} onClose={() => setOpen(undefined)} />}
      {open === 'infusion' && <InfusionDialog batch={batch} onClose={() => setOpen(undefined)} />}
    </Section>
  );
};
