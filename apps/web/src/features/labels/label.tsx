import { Button } from '@mantine/core';
import { useState } from 'react';
import { fieldErrors, ProblemError } from '../../api/problem';
import type { components } from '../../api/schema';
import { useBooking, useRead } from '../../api/use-api';
import { useMay } from '../../app/session';
import { useParam } from '../../app/use-address';
import { useMessages } from '../../shared/language/catalogue';
import { Loaded } from '../../shared/kit/loaded';
import { Caution, Page, Section } from '../../shared/kit/page';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { Declaration } from './declaration';
import { Findings } from './findings';
import { LabelRuns } from './label-runs';
import { LabelSettingsDialog } from './label-settings';
import { labelMessages } from './messages';
import { PrintFields, type PrintForm } from './print-form';
import { emptyStock, stockOf } from './stock-form';

type View = components['schemas']['DeclarationView'];

const Printing = ({ declaration }: { readonly declaration: View }) => {
  const t = useMessages(labelMessages);
  const book = useBooking();
  const code = declaration.lotCode;
  const [form, setForm] = useState<PrintForm>({
    form: 'box_label',
    copies: '1',
    price: '',
    stock: emptyStock,
  });
  const [accepted, setAccepted] = useState<Readonly<Record<string, string>>>({});
  const [state, setState] = useState<{ working: boolean; error?: unknown }>({ working: false });
  const mayPrint = useMay('maker', 'seller');
  const print = async (): Promise<void> => {
    setState({ working: true });
    const stock = stockOf(form.stock);
    const reasons = Object.entries(accepted).filter(([, reason]) => reason.trim() !== '');
    try {
      await book({
        path: '/api/lots/{code}/label-runs',
        at: { code },
        body: {
          form: form.form,
          copies: Number(form.copies),
          ...(stock === undefined ? {} : { stock }),
          ...(form.price === '' ? {} : { price: form.price }),
          accepted: reasons.map(([finding, reason]) => ({ code: finding, reason })),
        },
        label: t('bookLabel', { code }),
        lane: `label-${code}`,
      });
      setState({ working: false });
    } catch (error) {
      setState({ working: false, error });
    }
  };
  const errors = state.error instanceof ProblemError ? fieldErrors(state.error.problem) : {};
  return (
    <>
      <Section title={t('findings')}>
        <Findings
          findings={declaration.findings}
          accepted={accepted}
          onAccept={(finding, reason) => setAccepted({ ...accepted, [finding]: reason })}
        />
      </Section>
      {mayPrint && (
        <Section title={t('print')}>
          <div className="stack">
            <PrintFields value={form} errors={errors} onChange={setForm} />
            <ProblemNotice error={state.error} />
            <div className="row">
              <Button
                size="lg"
                loading={state.working}
                disabled={Number(form.copies) < 1}
                onClick={() => void print()}
              >
                {t('print')}
              </Button>
            </div>
          </div>
        </Section>
      )}
    </>
  );
};

const SetUp = ({ itemId }: { readonly itemId: string }) => {
  const t = useMessages(labelMessages);
  const may = useMay('maker');
  const [open, setOpen] = useState(false);
  const settings = useRead('/api/items/{id}/label-settings', { params: { path: { id: itemId } } });
  if (settings.data === undefined) return null;
  return (
    <>
      {settings.data.usual && <p className="caution">{t('notSet')}</p>}
      {may && (
        <Button variant="default" onClick={() => setOpen(true)}>
          {t('setUp')}
        </Button>
      )}
      {open && (
        <LabelSettingsDialog
          itemId={itemId}
          settings={settings.data}
          onClose={() => setOpen(false)}
        />
      )}
    </>
  );
};

/** The label of a lot: what is declared, what was checked, and the PDF that prints. */
const LabelPage = () => {
  const code = useParam('code');
  const t = useMessages(labelMessages);
  const lot = useRead('/api/lots/{code}', { params: { path: { code } } });
  const declaration = useRead('/api/lots/{code}/declaration', { params: { path: { code } } });
  return (
    <Page title={t('title', { item: lot.data?.itemName ?? code })} lead={t('lead', { code })}>
      <Caution>{t('caution')}</Caution>
      <div className="halves">
        <div>
          <Section title={t('ingredients')}>
            {lot.data !== undefined && (
              <div className="row section">
                <SetUp itemId={lot.data.itemId} />
              </div>
            )}
            <Loaded query={declaration}>{(data) => <Declaration declaration={data} />}</Loaded>
          </Section>
          {declaration.data !== undefined && <Printing declaration={declaration.data} />}
        </div>
        <LabelRuns code={code} />
      </div>
    </Page>
  );
};

export default LabelPage;
