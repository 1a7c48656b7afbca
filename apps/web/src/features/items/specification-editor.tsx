import { Button } from '@mantine/core';
import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { api, must } from '../../api/client';
import type { components } from '../../api/schema';
import { seen } from '../../api/seen';
import { useRead } from '../../api/use-api';
import { useMay } from '../../app/session';
import { without } from '../../shared/formats/without';
import { useMessages } from '../../shared/language/catalogue';
import { ChoiceField, TextField } from '../../shared/kit/fields';
import { Caution, Section } from '../../shared/kit/page';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { ReasonDialog } from '../../shared/kit/reason-dialog';
import { SupplierPicker } from '../../shared/pickers/party-pickers';
import { AllergensEditor, CompositionEditor, NutritionEditor } from './figures-editor';
import { PartEditor } from './part-editor';
import { bodyOf, figuresOf, formOf, type SpecificationForm } from './specification-form';
import { specificationMessages } from './specification-messages';

type View = components['schemas']['SpecificationView'];
const CHOCOLATE = [
  'chocolate',
  'couverture',
  'gianduja',
  'milk_chocolate',
  'milk_couverture',
  'milk_gianduja',
  'white_chocolate',
  'powdered_chocolate',
] as const;

interface Props {
  readonly itemId: string;
  readonly view: View | undefined;
  readonly asNew: boolean;
  readonly mayWrite: boolean;
  readonly onSaved: (view: View) => void;
}

const useActions = (
  { itemId, view, asNew, onSaved }: Props,
  form: SpecificationForm,
  supplierId: string,
) => {
  const queries = useQueryClient();
  const [error, setError] = useState<unknown>();
  const run = async (work: () => Promise<View>): Promise<void> => {
    setError(undefined);
    try {
      const saved = await work();
      await queries.invalidateQueries();
      onSaved(saved);
    } catch (cause) {
      setError(cause);
    }
  };
  const at = { params: { path: { itemId, id: view?.id ?? '' } } };
  return {
    error,
    save: () =>
      run(() =>
        view === undefined || asNew
          ? must(
              api.POST('/api/items/{itemId}/specifications', {
                params: { path: { itemId } },
                body: { ...bodyOf(form), supplierId },
              }),
            )
          : must(
              api.PUT('/api/items/{itemId}/specifications/{id}', {
                ...at,
                ...seen(view.version),
                body: bodyOf(form),
              }),
            ),
      ),
    approve: () =>
      run(() =>
        must(
          api.POST('/api/items/{itemId}/specifications/{id}/approve', {
            ...at,
            ...seen(view?.version ?? 1),
          }),
        ),
      ),
    withdraw: (reason: string) =>
      run(() =>
        must(
          api.POST('/api/items/{itemId}/specifications/{id}/withdraw', {
            ...at,
            ...seen(view?.version ?? 1),
            body: { reason },
          }),
        ),
      ),
  };
};

const Generic = ({
  onFigures,
}: {
  readonly onFigures: (figures: Record<string, string>) => void;
}) => {
  const t = useMessages(specificationMessages);
  const rows = useRead('/api/reference-ingredients');
  return (
    <ChoiceField
      label={t('generic')}
      value=""
      empty="–"
      hint={rows.data?.caution}
      onChange={(key) => {
        const row = rows.data?.items.find((one) => one.key === key);
        if (row !== undefined) onFigures(figuresOf(row.composition));
      }}
      choices={(rows.data?.items ?? []).map((row) => ({
        value: row.key,
        label: `${row.nameEn} / ${row.nameFr}`,
      }))}
    />
  );
};

/** What a supplier states of an ingredient: make-up, allergens, composition, nutrition. */
export const SpecificationEditor = (props: Props) => {
  const { view, asNew, mayWrite } = props;
  const t = useMessages(specificationMessages);
  const owner = useMay();
  const [form, setForm] = useState(() => formOf(view));
  const [supplierId, setSupplierId] = useState(view?.supplierId ?? '');
  const [withdrawing, setWithdrawing] = useState(false);
  const put = (part: Partial<SpecificationForm>): void => setForm((now) => ({ ...now, ...part }));
  const draft = view === undefined || asNew || view.state === 'draft';
  const disabled = !mayWrite || !draft;
  const actions = useActions(props, form, supplierId);
  const statement = (key: string, value: string): void => {
    const others = without(form.statements, key);
    put({ statements: value === '' ? others : { ...others, [key]: value } });
  };
  const stated = (key: string): string =>
    typeof form.statements[key] === 'string' ? form.statements[key] : '';
  return (
    <>
      {!draft && <p className="quiet">{t('frozenNote')}</p>}
      <div className="columns section">
        {(view === undefined || asNew) && (
          <SupplierPicker value={supplierId} onChange={setSupplierId} required />
        )}
        <TextField
          label={t('document')}
          value={form.document}
          maxLength={300}
          disabled={disabled}
          onChange={(document) => put({ document })}
        />
        <ChoiceField
          label={t('chocolateKind')}
          value={stated('chocolateKind')}
          empty="–"
          disabled={disabled}
          onChange={(value) => statement('chocolateKind', value)}
          choices={CHOCOLATE.map((one) => ({ value: one, label: one.replaceAll('_', ' ') }))}
        />
        <TextField
          label={t('sulphite')}
          value={stated('sulphiteMgPerKg')}
          disabled={disabled}
          onChange={(value) => statement('sulphiteMgPerKg', value)}
        />
      </div>
      <Section title={t('parts')}>
        <PartEditor
          part={form.ingredient}
          level={0}
          disabled={disabled}
          onChange={(ingredient) => put({ ingredient })}
        />
      </Section>
      <Section title={t('allergens')}>
        <AllergensEditor form={form} put={put} disabled={disabled} />
      </Section>
      <Section title={t('composition')}>
        {!disabled && <Generic onFigures={(figures) => put({ figures })} />}
        <CompositionEditor form={form} put={put} disabled={disabled} />
      </Section>
      <Section title={t('nutrition')}>
        <NutritionEditor form={form} put={put} disabled={disabled} />
      </Section>
      <ProblemNotice error={actions.error} />
      <div className="row">
        {!disabled && (
          <Button disabled={supplierId === ''} onClick={() => void actions.save()}>
            {t('save')}
          </Button>
        )}
        {owner && view !== undefined && !asNew && view.state === 'draft' && (
          <Button variant="default" onClick={() => void actions.approve()}>
            {t('approve')}
          </Button>
        )}
        {owner && view?.state === 'approved' && !asNew && (
          <Button variant="default" onClick={() => setWithdrawing(true)}>
            {t('withdraw')}
          </Button>
        )}
      </div>
      {withdrawing && (
        <ReasonDialog
          title={t('withdraw')}
          confirm={t('withdraw')}
          onClose={() => setWithdrawing(false)}
          onReason={actions.withdraw}
        />
      )}
      {owner && draft && <Caution>{t('approveCaution')}</Caution>}
    </>
  );
};
