import { newId } from '../../api/new-id';
import { Button } from '@mantine/core';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DecimalField } from '../../shared/kit/decimal-field';
import { ChoiceField, LongField, TextField } from '../../shared/kit/fields';
import { unitOfMeasure } from '../../shared/formats/measures';
import { recipeMessages } from './messages';
import type { CheckForm, StepForm, VersionForm } from './version-form';

const MEASURES = ['temp_c', 'water_activity', 'ph', 'brix', 'humidity_percent', 'mass_g'] as const;
const LOSSES = ['steam', 'held_back', 'scrapings', 'rejects', 'samples', 'other'] as const;

interface Props {
  readonly form: VersionForm;
  readonly put: (part: Partial<VersionForm>) => void;
  readonly disabled: boolean;
}

const Check = (props: {
  readonly check: CheckForm;
  readonly onChange: (check: CheckForm) => void;
  readonly onRemove: () => void;
  readonly disabled: boolean;
}) => {
  const { check, onChange, disabled } = props;
  const t = useMessages(recipeMessages);
  const word = useServiceWords();
  const unit = unitOfMeasure(check.measure);
  return (
    <div className="columns columns-end">
      <ChoiceField
        label={t('measure')}
        value={check.measure}
        disabled={disabled}
        onChange={(measure) => onChange({ measure, low: check.low, high: check.high })}
        choices={MEASURES.map((one) => ({ value: one, label: word(one) }))}
      />
      <DecimalField
        label={t('low')}
        unit={unit}
        value={check.low}
        disabled={disabled}
        onChange={(low) => onChange({ ...check, low })}
      />
      <DecimalField
        label={t('high')}
        unit={unit}
        value={check.high}
        disabled={disabled}
        onChange={(high) => onChange({ ...check, high })}
      />
      {!disabled && (
        <Button variant="default" onClick={props.onRemove}>
          {t('remove')}
        </Button>
      )}
    </div>
  );
};

const Step = (props: {
  readonly step: StepForm;
  readonly onChange: (step: StepForm) => void;
  readonly onRemove: () => void;
  readonly disabled: boolean;
}) => {
  const { step, onChange, disabled } = props;
  const t = useMessages(recipeMessages);
  const put = (part: Partial<StepForm>): void => onChange({ ...step, ...part });
  return (
    <li className="sheet stack">
      <TextField
        label={t('stepTitle')}
        value={step.title}
        maxLength={120}
        disabled={disabled}
        onChange={(title) => put({ title })}
      />
      <LongField
        label={t('stepText')}
        value={step.text}
        disabled={disabled}
        onChange={(text) => put({ text })}
      />
      {step.checks.map((check, at) => (
        <Check
          key={String(at)}
          check={check}
          disabled={disabled}
          onChange={(next) =>
            put({ checks: step.checks.map((one, position) => (position === at ? next : one)) })
          }
          onRemove={() => put({ checks: step.checks.filter((_, position) => position !== at) })}
        />
      ))}
      <DecimalField
        label={t('restHours')}
        unit="h"
        value={step.restHours}
        disabled={disabled}
        onChange={(restHours) => put({ restHours })}
      />
      {!disabled && (
        <div className="row">
          <Button
            variant="default"
            onClick={() =>
              put({ checks: [...step.checks, { measure: 'temp_c', low: '', high: '' }] })
            }
          >
            {t('addCheck')}
          </Button>
          <Button variant="default" onClick={props.onRemove}>
            {t('remove')}
          </Button>
        </div>
      )}
    </li>
  );
};

export const StepsEditor = ({ form, put, disabled }: Props) => {
  const t = useMessages(recipeMessages);
  const empty: StepForm = {
    key: newId(),
    title: '',
    text: '',
    restHours: '',
    checks: [],
  };
  return (
    <>
      <ol className="plain-list stack">
        {form.steps.map((step) => (
          <Step
            key={step.key}
            step={step}
            disabled={disabled}
            onChange={(next) =>
              put({ steps: form.steps.map((one) => (one.key === step.key ? next : one)) })
            }
            onRemove={() => put({ steps: form.steps.filter((one) => one.key !== step.key) })}
          />
        ))}
      </ol>
      {!disabled && (
        <Button variant="default" onClick={() => put({ steps: [...form.steps, empty] })}>
          {t('addStep')}
        </Button>
      )}
    </>
  );
};

export const LossesEditor = ({ form, put, disabled }: Props) => {
  const t = useMessages(recipeMessages);
  const word = useServiceWords();
  const change = (at: number, part: Partial<VersionForm['losses'][number]>): void =>
    put({
      losses: form.losses.map((one, position) => (position === at ? { ...one, ...part } : one)),
    });
  return (
    <>
      {form.losses.map((loss, at) => (
        <div key={String(at)} className="columns columns-end line">
          <TextField
            label={t('step')}
            value={loss.step}
            maxLength={80}
            disabled={disabled}
            onChange={(step) => change(at, { step })}
          />
          <ChoiceField
            label={t('lossKind')}
            value={loss.kind}
            disabled={disabled}
            onChange={(kind) => change(at, { kind: kind as typeof loss.kind })}
            choices={LOSSES.map((one) => ({ value: one, label: word(one) }))}
          />
          <DecimalField
            label={t('percent')}
            unit="%"
            value={loss.percent}
            disabled={disabled}
            onChange={(percent) => change(at, { percent })}
          />
          {!disabled && (
            <Button
              variant="default"
              onClick={() => put({ losses: form.losses.filter((_, position) => position !== at) })}
            >
              {t('remove')}
            </Button>
          )}
        </div>
      ))}
      {!disabled && (
        <Button
          variant="default"
          onClick={() =>
            put({ losses: [...form.losses, { step: '', kind: 'steam', percent: '' }] })
          }
        >
          {t('addLoss')}
        </Button>
      )}
    </>
  );
};
