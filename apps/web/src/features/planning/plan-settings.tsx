import { Button } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { api, must } from '../../api/client';
import { fieldErrors, ProblemError } from '../../api/problem';
import type { components } from '../../api/schema';
import { seen } from '../../api/seen';
import { useChange, useRead } from '../../api/use-api';
import { useMay } from '../../app/session';
import { useMessages } from '../../shared/language/catalogue';
import { Loaded } from '../../shared/kit/loaded';
import { Page } from '../../shared/kit/page';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { OutNav } from '../../shared/rooms/out-nav';
import { bodyOf, formOf, type SettingsForm } from './settings-form';
import { CounterPart, Seasons, SpecialDays } from './settings-lists';
import { planSettingsMessages } from './settings-messages';
import { ToolsPart, WeekPart } from './settings-work';

type View = components['schemas']['PlanningSettingsView'];

const useSave = () =>
  useChange(({ form, version }: { readonly form: SettingsForm; readonly version: number }) =>
    must(api.PUT('/api/plan/settings', { ...seen(version), body: bodyOf(form) })),
  );

const Form = (props: { readonly view: View; readonly save: ReturnType<typeof useSave> }) => {
  const { view, save } = props;
  const t = useMessages(planSettingsMessages);
  const may = useMay('maker');
  const [form, setForm] = useState(() => formOf(view));
  const errors = save.error instanceof ProblemError ? fieldErrors(save.error.problem) : {};
  const put = (part: Partial<SettingsForm>): void => setForm((now) => ({ ...now, ...part }));
  const part = { form, put, errors, disabled: !may };
  return (
    <form
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        save.mutate({ form, version: view.version });
      }}
    >
      <div className="halves">
        <WeekPart {...part} />
        <div>
          <ToolsPart {...part} />
          <CounterPart {...part} />
        </div>
      </div>
      <Seasons {...part} />
      <SpecialDays {...part} />
      <div className="form-foot">
        <ProblemNotice error={save.error} />
        {may ? (
          <Button type="submit" loading={save.isPending}>
            {t('save')}
          </Button>
        ) : (
          <p className="quiet">{t('readOnly')}</p>
        )}
      </div>
    </form>
  );
};

/** What a plan may count on: days, hours, moulds, counter and seasons. */
const PlanSettings = () => {
  const t = useMessages(planSettingsMessages);
  const settings = useRead('/api/plan/settings');
  // Kept here: the form is made anew from what was saved, and would forget that it was.
  const save = useSave();
  return (
    <Page title={t('title')} lead={t('lead')}>
      <OutNav />
      <p role="status">
        {save.isSuccess && (
          <>
            {t('saved')} <Link to="/out/plan">{t('toPlan')}</Link>
          </>
        )}
      </p>
      <Loaded query={settings}>
        {(view) => <Form key={view.version} view={view} save={save} />}
      </Loaded>
    </Page>
  );
};

export default PlanSettings;
