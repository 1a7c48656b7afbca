import { useState } from 'react';
import type { components } from '../../api/schema';
import { useRead } from '../../api/use-api';
import { useMessages } from '../../shared/language/catalogue';
import { ChoiceField, OneOf } from '../../shared/kit/fields';
import { temperingMessages } from '../../shared/readings/tempering-messages';
import { type TemperingStep, TemperingVerdict } from '../../shared/readings/tempering-verdict';
import type { Batch } from './use-batch-booking';

type Curve = components['schemas']['TemperingView'];
type Due = components['schemas']['DueReadingView'];

/** The step whose window is the check point's own limits: then it is known what is measured. */
const stepOfCheck = (curve: Curve | undefined, due: Due | undefined): TemperingStep | '' =>
  curve?.checks.find(
    ({ low, high }) =>
      due?.measure === 'temp_c' &&
      Number(low) === Number(due.low ?? Number.NaN) &&
      Number(high) === Number(due.high ?? Number.NaN),
  )?.step ?? '';

/** The chocolates of a batch that have a curve, and what a temperature taken now is of. */
export const useTempering = (batch: Batch, due: Due | undefined) => {
  const t = useMessages(temperingMessages);
  const curves = useRead('/api/tempering/curves').data ?? [];
  const used = new Set([...batch.lines, ...batch.draws].map(({ itemId }) => itemId));
  const ours = curves.filter(({ itemId }) => used.has(itemId));
  const [itemId, setItemId] = useState('');
  const curve = ours.find((one) => one.itemId === itemId) ?? ours[0];
  const [chosen, setStep] = useState<TemperingStep | ''>();
  const step = chosen ?? stepOfCheck(curve, due);
  const asStep =
    curve === undefined || step === ''
      ? undefined
      : t('asStep', { step: t(step), item: curve.itemName });
  return { ours, curve, step, setItemId, setStep, asStep };
};

/** Says of a temperature what it means for the chocolate, before it is booked. */
export const TemperingReading = (props: {
  readonly tempering: ReturnType<typeof useTempering>;
  readonly tempC: string;
}) => {
  const { ours, curve, step, setItemId, setStep } = props.tempering;
  const t = useMessages(temperingMessages);
  if (curve === undefined) return null;
  return (
    <>
      <OneOf
        label={t('whatFor')}
        value={step}
        onChange={(next) => setStep(next as TemperingStep | '')}
        choices={[
          ...curve.checks.map((check) => ({
            value: check.step,
            label: t('asStep', { step: t(check.step), item: curve.itemName }),
          })),
          { value: '', label: t('otherThing') },
        ]}
      />
      {step !== '' && ours.length > 1 && (
        <ChoiceField
          label={t('which')}
          value={curve.itemId}
          onChange={setItemId}
          choices={ours.map((one) => ({ value: one.itemId, label: one.itemName }))}
        />
      )}
      {step !== '' && <TemperingVerdict itemId={curve.itemId} step={step} tempC={props.tempC} />}
    </>
  );
};
