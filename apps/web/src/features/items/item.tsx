import { Button } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useRead } from '../../api/use-api';
import { useMay } from '../../app/session';
import { useParam } from '../../app/use-address';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { Loaded } from '../../shared/kit/loaded';
import { Page, Section, State } from '../../shared/kit/page';
import { ItemDialog } from '../../shared/items/item-dialog';
import { itemMessages } from '../../shared/items/messages';
import { TraceLink } from '../../shared/starts/trace-link';
import { SpecificationEditor } from './specification-editor';
import { specificationMessages } from './specification-messages';
import { Tempering } from './tempering';

const tones = { draft: 'caution', approved: 'good', withdrawn: 'plain' } as const;

const Specifications = ({ itemId }: { readonly itemId: string }) => {
  const t = useMessages(specificationMessages);
  const word = useServiceWords();
  const mayWrite = useMay('maker');
  const list = useRead('/api/items/{itemId}/specifications', { params: { path: { itemId } } });
  const [chosen, setChosen] = useState<string>();
  const rows = list.data ?? [];
  const view = rows.find(({ id }) => id === chosen);
  const asNew = chosen === 'new' || chosen?.startsWith('from:') === true;
  const from = asNew ? rows.find(({ id }) => `from:${id}` === chosen) : view;
  return (
    <Section
      title={t('title')}
      actions={
        mayWrite && (
          <Button variant="default" onClick={() => setChosen('new')}>
            {t('add')}
          </Button>
        )
      }
    >
      <Loaded query={list}>
        {() => (
          <>
            {rows.length === 0 && <p className="caution">{t('none')}</p>}
            <ul className="plain-list section">
              {rows.map((row) => (
                <li key={row.id} className="row line">
                  <button
                    type="button"
                    className="link"
                    aria-pressed={chosen === row.id}
                    onClick={() => setChosen(row.id)}
                  >
                    {row.supplierName}, {t('number')} {row.number}
                  </button>
                  <State tone={tones[row.state]}>{word(row.state)}</State>
                  <span className="quiet">{row.document}</span>
                  {row.state !== 'draft' && <TraceLink kind="specification" id={row.id} />}
                  {mayWrite && (
                    <Button variant="default" onClick={() => setChosen(`from:${row.id}`)}>
                      {t('nextVersion')}
                    </Button>
                  )}
                </li>
              ))}
            </ul>
            {(from !== undefined || chosen === 'new') && (
              <SpecificationEditor
                key={`${chosen ?? ''}-${String(from?.version ?? 0)}`}
                itemId={itemId}
                view={from}
                asNew={asNew}
                mayWrite={mayWrite}
                onSaved={(saved) => setChosen(saved.id)}
              />
            )}
          </>
        )}
      </Loaded>
    </Section>
  );
};

/** An ingredient or a packaging: its facts, and what its suppliers state. */
const ItemPage = () => {
  const id = useParam('id');
  const t = useMessages(itemMessages);
  const word = useServiceWords();
  const may = useMay('maker');
  const item = useRead('/api/items/{id}', { params: { path: { id } } });
  const [open, setOpen] = useState(false);
  return (
    <Loaded query={item}>
      {(data) => (
        <Page
          title={data.name}
          lead={`${word(data.kind)}${data.storageConditions === null ? '' : ` · ${data.storageConditions}`}`}
          actions={
            <>
              <Link to="/store" search={{ item: id, state: '' }} className="button-link">
                {t('lots')}
              </Link>
              {may && (
                <Button variant="default" onClick={() => setOpen(true)}>
                  {t('change')}
                </Button>
              )}
            </>
          }
        >
          {data.note !== null && <p className="text">{data.note}</p>}
          {data.kind === 'ingredient' && <Specifications itemId={id} />}
          {data.kind === 'ingredient' && <Tempering item={data} />}
          {open && <ItemDialog item={data} kinds={[data.kind]} onClose={() => setOpen(false)} />}
        </Page>
      )}
    </Loaded>
  );
};

export default ItemPage;
