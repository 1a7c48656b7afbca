import type { components } from '../../api/schema';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { ChoiceField, TextField, TickField } from '../../shared/kit/fields';
import { batchMessages } from '../../shared/batches/messages';
import { acceptance, type DrawForm, ROLES } from './draw-form';
import type { Line } from './drawn-lot';
import { Substitution, type useSubstitution } from './substitution';
import { substitutionMessages } from './substitution-messages';

interface Props {
  readonly lot: components['schemas']['LotView'];
  readonly lines: readonly Line[];
  /** The line that was opened: the lot can only stand in for it. */
  readonly opened: Line | undefined;
  readonly compared: ReturnType<typeof useSubstitution>;
  readonly form: DrawForm;
  readonly put: (change: Partial<DrawForm>) => void;
  readonly errors: Readonly<Record<string, string | undefined>>;
}

const InAddition = ({ form, put, errors }: Pick<Props, 'form' | 'put' | 'errors'>) => {
  const t = useMessages(batchMessages);
  const word = useServiceWords();
  return (
    <ChoiceField
      label={t('role')}
      value={form.role}
      empty="–"
      required
      onChange={(role) => put({ role })}
      error={errors['role']}
      choices={ROLES.map((one) => ({ value: one, label: word(one) }))}
    />
  );
};

/** A lot that the recipe does not name: what it stands in for, what changes, and why. */
export const ForeignLot = (props: Props) => {
  const { lot, lines, opened, form, put, errors } = props;
  const t = useMessages(substitutionMessages);
  const instead = form.insteadOf !== '';
  return (
    <>
      <p className="caution">{t('notInRecipe', { lot: lot.code, item: lot.itemName })}</p>
      {opened === undefined && (
        <ChoiceField
          label={t('insteadOf')}
          value={form.insteadOf}
          empty={t('inAddition')}
          onChange={(insteadOf) => put({ insteadOf })}
          choices={lines.map((line) => ({ value: line.itemId, label: line.itemName }))}
        />
      )}
      {!instead && <InAddition form={form} put={put} errors={errors} />}
      <Substitution query={props.compared} />
      <TickField
        label={instead ? t('accept') : t('acceptAddition')}
        checked={form.accepted === acceptance(form)}
        disabled={props.compared.data === undefined}
        onChange={(yes) => put({ accepted: yes ? acceptance(form) : '' })}
        error={errors['accepted']}
      />
      <TextField
        label={instead ? t('reason') : t('reasonAddition')}
        value={form.reason}
        required
        onChange={(reason) => put({ reason })}
        error={errors['reason']}
      />
    </>
  );
};
