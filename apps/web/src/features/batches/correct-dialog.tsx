import { newId } from '../../api/new-id';
import { Button } from '@mantine/core';
import { useState } from 'react';
import { useMessages } from '../../shared/language/catalogue';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { LongField } from '../../shared/kit/fields';
import { kitMessages } from '../../shared/kit/messages';
import { Caution } from '../../shared/kit/page';
import { RightDraws, RightLosses, toggled, WasWrong } from './correct-fields';
import {
  type CorrectForm,
  correctionBody,
  isEmpty,
  nothingCorrected,
  rightOutput,
} from './correct-form';
import { correctMessages } from './correct-messages';
import { RightOutputs, WrongOutputs } from './correct-outputs';
import { foreignIn, LotsToAccept, noForeignLots } from './correct-substitutes';
import { useBatchBooking, type Batch } from './use-batch-booking';

/** Puts a finished batch right in one go, as it has to balance again as a whole. */
export const CorrectDialog = (props: { readonly batch: Batch; readonly onClose: () => void }) => {
  const { batch } = props;
  const t = useMessages(correctMessages);
  const kit = useMessages(kitMessages);
  const book = useBatchBooking(batch);
  const [form, setForm] = useState(nothingCorrected);
  const [foreign, setForeign] = useState(noForeignLots);
  const [asked, setAsked] = useState(false);
  const put = (change: Partial<CorrectForm>): void => setForm((now) => ({ ...now, ...change }));
  const noReason = form.reason.trim().length < 3;
  return (
    <EditDialog
      title={t('title', { batch: batch.code })}
      confirm={t('correct')}
      size="xl"
      onClose={props.onClose}
      ready={() => {
        setAsked(true);
        return !isEmpty(form) && !noReason;
      }}
      onSave={() =>
        book(
          '/api/batches/{id}/corrections',
          correctionBody(form, foreign),
          t('label', { batch: batch.code }),
        ).catch((cause: unknown) => {
          const [lotCode, changes] = foreignIn(cause) ?? [];
          if (lotCode !== undefined && changes !== undefined) {
            setForeign((now) => ({
              changes: { ...now.changes, [lotCode]: changes },
              accepted: toggled(now.accepted, lotCode, false),
            }));
          }
          throw cause;
        })
      }
    >
      {(errors) => {
        const part = { batch, form, put, errors };
        return (
          <>
            <p>{t('lead')}</p>
            <WasWrong {...part} />
            <WrongOutputs {...part} />
            <h3>{t('right')}</h3>
            <RightDraws {...part} />
            <LotsToAccept
              foreign={foreign}
              onAccept={(lotCode, yes) =>
                setForeign((now) => ({ ...now, accepted: toggled(now.accepted, lotCode, yes) }))
              }
            />
            <RightLosses {...part} />
            <RightOutputs {...part} />
            <div className="row">
              <Button
                variant="default"
                onClick={() => {
                  const draw = { key: newId(), lotCode: '', quantity: '', role: '' };
                  put({ draws: [...form.draws, draw] });
                }}
              >
                {t('addDraw')}
              </Button>
              <Button
                variant="default"
                onClick={() => {
                  const loss = { key: newId(), kind: 'other' as const, mass: '' };
                  put({ losses: [...form.losses, loss] });
                }}
              >
                {t('addLoss')}
              </Button>
              {form.outputsBack.length > 0 && (
                <Button
                  variant="default"
                  onClick={() => put({ outputs: [...form.outputs, rightOutput(null)] })}
                >
                  {t('addOutput')}
                </Button>
              )}
            </div>
            {asked && isEmpty(form) && (
              <p role="alert" className="field-error">
                {t('nothing')}
              </p>
            )}
            <LongField
              label={kit('reason')}
              value={form.reason}
              required
              onChange={(reason) => put({ reason })}
              error={errors['reason'] ?? (asked && noReason ? kit('reasonNeeded') : undefined)}
            />
            <Caution>{t('ownCaution')}</Caution>
          </>
        );
      }}
    </EditDialog>
  );
};
