import { Button } from '@mantine/core';
import { useState } from 'react';
import { useRead } from '../../api/use-api';
import { useMay } from '../../app/session';
import { useParam } from '../../app/use-address';
import { useMessages } from '../../shared/language/catalogue';
import { Loaded } from '../../shared/kit/loaded';
import { Caution, Page, Section } from '../../shared/kit/page';
import { Declaration } from './declaration';
import { LabelRuns } from './label-runs';
import { LabelSettingsDialog } from './label-settings';
import { emptyForm, wishesOf, type Taken } from './label-wishes';
import { labelMessages } from './messages';
import { Preview } from './preview';
import { Printing } from './printing';
import { QuantityChecks } from './quantity-checks';

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

const isSame = (one: Taken, other: Taken): boolean =>
  one.code === other.code && one.subject === other.subject;

/** The label of a lot: what is declared, what was checked, and the PDF that prints. */
const LabelPage = () => {
  const code = useParam('code');
  const t = useMessages(labelMessages);
  const [form, setForm] = useState(emptyForm);
  const [taken, setTaken] = useState<readonly Taken[]>([]);
  const lot = useRead('/api/lots/{code}', { params: { path: { code } } });
  const declaration = useRead('/api/lots/{code}/declaration', {
    params: {
      path: { code },
      query: {
        ...(form.market === '' ? {} : { market: form.market }),
        ...(form.languages.length === 0 ? {} : { languages: form.languages.join(',') }),
      },
    },
  });
  const take = (decision: Taken): void =>
    setTaken((before) => [...before.filter((entry) => !isSame(entry, decision)), decision]);
  return (
    <Page title={t('title', { item: lot.data?.itemName ?? code })} lead={t('lead', { code })}>
      <Caution>{t('caution')}</Caution>
      <div className="halves">
        <div>
          <Section
            title={t('ingredients')}
            actions={lot.data !== undefined && <SetUp itemId={lot.data.itemId} />}
          >
            <Loaded query={declaration}>{(data) => <Declaration declaration={data} />}</Loaded>
          </Section>
          {declaration.data !== undefined && (
            <Printing
              declaration={declaration.data}
              form={form}
              onForm={setForm}
              taken={taken}
              onTake={take}
            />
          )}
        </div>
        <div>
          <Preview code={code} wishes={wishesOf(form, taken)} />
          <LabelRuns code={code} />
        </div>
      </div>
      {lot.data !== undefined && <QuantityChecks lot={lot.data} />}
    </Page>
  );
};

export default LabelPage;
