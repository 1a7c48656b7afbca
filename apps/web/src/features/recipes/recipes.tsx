import { Button } from '@mantine/core';
import { Link, useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { useMay } from '../../app/session';
import { useMessages } from '../../shared/language/catalogue';
import { Loaded } from '../../shared/kit/loaded';
import { Page, Section } from '../../shared/kit/page';
import { useItems } from '../../shared/pickers/item-picker';
import { ItemDialog } from '../../shared/items/item-dialog';
import { recipeMessages } from './messages';
import { waterMessages } from './water-messages';

const KINDS = ['filling', 'piece', 'box'] as const;

const Recipes = () => {
  const t = useMessages(recipeMessages);
  const water = useMessages(waterMessages);
  const may = useMay('maker');
  const navigate = useNavigate();
  const list = useItems();
  const [open, setOpen] = useState(false);
  return (
    <Page
      title={t('title')}
      lead={t('lead')}
      actions={
        <>
          <Link to="/recipes/water-activity" className="button-link">
            {water('title')}
          </Link>
          {may && <Button onClick={() => setOpen(true)}>{t('add')}</Button>}
        </>
      }
    >
      <Loaded query={list.query}>
        {(rows) => (
          <div className="columns">
            {KINDS.map((kind) => {
              const items = rows.filter((item) => item.kind === kind && item.active);
              return (
                <Section key={kind} title={t(kind)}>
                  {items.length === 0 && <p className="quiet">{t('none')}</p>}
                  <ul className="plain-list">
                    {items.map((item) => (
                      <li key={item.id} className="index-line">
                        <Link to="/recipes/$id" params={{ id: item.id }}>
                          {item.name}
                        </Link>
                      </li>
                    ))}
                  </ul>
                </Section>
              );
            })}
          </div>
        )}
      </Loaded>
      {open && (
        <ItemDialog
          item={undefined}
          kinds={KINDS}
          onClose={() => setOpen(false)}
          onSaved={(item) => void navigate({ to: '/recipes/$id', params: { id: item.id } })}
        />
      )}
    </Page>
  );
};

export default Recipes;
