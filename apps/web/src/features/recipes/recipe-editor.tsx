import { Button } from '@mantine/core';
import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { api, must } from '../../api/client';
import { fieldErrors, ProblemError } from '../../api/problem';
import type { components } from '../../api/schema';
import { byId, seen } from '../../api/seen';
import { useDraft } from '../../shared/offline/use-draft';
import { useMessages } from '../../shared/language/catalogue';
import { Loaded } from '../../shared/kit/loaded';
import { Section } from '../../shared/kit/page';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { BoxSlots } from '../../shared/pictures/box-slots';
import { Analysis } from './analysis';
import { FactsEditor } from './facts-editor';
import { LineEditor } from './line-editor';
import { recipeMessages } from './messages';
import { LossesEditor, StepsEditor } from './steps-editor';
import { useAnalysis } from './use-analysis';
import { bodyOf, isAnalysable } from './version-body';
import { VersionSheet } from './version-sheet';
import { formOf, type VersionForm } from './version-form';

type Version = components['schemas']['RecipeVersionView'];
type Item = components['schemas']['ItemView'];

interface Props {
  readonly item: Item;
  /** The version on screen; none for the first. */
  readonly version: Version | undefined;
  /** Writes a new version that starts from the one on screen. */
  readonly asNew: boolean;
  readonly mayWrite: boolean;
  readonly onSaved: (version: Version) => void;
}

const useSave = (
  { item, version, asNew, onSaved }: Props,
  form: VersionForm,
  clear: () => void,
) => {
  const queries = useQueryClient();
  const [state, setState] = useState<{ working: boolean; error?: unknown; saved?: boolean }>({
    working: false,
  });
  const save = async (): Promise<void> => {
    setState({ working: true });
    try {
      const body = bodyOf(form);
      const saved =
        version === undefined || asNew
          ? await must(
              api.POST('/api/items/{itemId}/recipes', {
                params: { path: { itemId: item.id } },
                body,
              }),
            )
          : await must(
              api.PUT('/api/recipes/{id}', { ...byId(version.id), ...seen(version.version), body }),
            );
      clear();
      await queries.invalidateQueries();
      setState({ working: false, saved: true });
      onSaved(saved);
    } catch (error) {
      setState({ working: false, error });
    }
  };
  return { ...state, save };
};

/** A recipe version with its live analysis beside it. */
export const RecipeEditor = (props: Props) => {
  const { item, version, asNew, mayWrite } = props;
  const t = useMessages(recipeMessages);
  const name = `recipe.${item.id}.${asNew ? 'new' : (version?.id ?? 'first')}.${String(version?.version ?? 0)}`;
  const { value: form, change, clear } = useDraft(name, formOf(version));
  const put = (part: Partial<VersionForm>): void => change((now) => ({ ...now, ...part }));
  const disabled = !mayWrite || (version?.frozen === true && !asNew);
  const saving = useSave(props, form, clear);
  const analysis = useAnalysis(item.id, form);
  const errors = saving.error instanceof ProblemError ? fieldErrors(saving.error.problem) : {};
  const kind = item.kind === 'piece' || item.kind === 'box' ? item.kind : 'filling';
  return (
    <div className="editor">
      <div>
        {disabled && version !== undefined ? (
          <VersionSheet version={version} />
        ) : (
          <>
            <Section title={t('lines')}>
              <LineEditor
                kind={kind}
                lines={form.lines}
                errors={errors}
                disabled={disabled}
                onChange={(lines) => put({ lines })}
              />
            </Section>
            <Section title={t('yield')}>
              <FactsEditor kind={kind} form={form} put={put} errors={errors} disabled={disabled} />
            </Section>
            <Section title={t('losses')}>
              <LossesEditor form={form} put={put} disabled={disabled} />
            </Section>
            <Section title={t('steps')}>
              <StepsEditor form={form} put={put} disabled={disabled} />
            </Section>
          </>
        )}
        <ProblemNotice error={saving.error} />
        {saving.saved === true && <p role="status">{t('saved')}</p>}
        {!disabled && (
          <Button
            size="lg"
            loading={saving.working}
            disabled={!isAnalysable(form)}
            onClick={() => void saving.save()}
          >
            {t('save')}
          </Button>
        )}
      </div>
      <aside aria-label={t('analysis')}>
        <Section title={t('analysis')}>
          {kind === 'box' && (
            <BoxSlots
              slots={form.lines
                .filter(({ role, itemId }) => role === 'slot' && itemId !== '')
                .map((line) => ({
                  key: line.key,
                  name: line.itemName,
                  count: Number(line.quantity) || 0,
                }))}
            />
          )}
          {isAnalysable(form) ? (
            <Loaded query={analysis}>{(data) => <Analysis analysis={data} />}</Loaded>
          ) : (
            <p className="quiet">{t('analysisWaits')}</p>
          )}
        </Section>
      </aside>
    </div>
  );
};
