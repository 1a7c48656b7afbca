import { Button } from '@mantine/core';
import { useState } from 'react';
import type { List } from '../../api/use-list';
import { useMay, type Role } from '../../app/session';
import { useMessages } from '../../shared/language/catalogue';
import { DataTable } from '../../shared/kit/data-table';
import { Loaded } from '../../shared/kit/loaded';
import { Page } from '../../shared/kit/page';
import { workshopMessages } from './messages';
import type { Party, PartyForm } from './party';
import { PartyDialog } from './party-dialog';
import { WorkshopNav } from './workshop-nav';

interface Props {
  readonly title: string;
  readonly add: string;
  readonly customer: boolean;
  readonly mayChange: Role;
  readonly list: List<Party>;
  readonly onSave: (form: PartyForm, party: Party | undefined) => Promise<unknown>;
}

/** The register of suppliers or customers, and their forms. */
export const PartyRegister = ({ title, add, customer, mayChange, list, onSave }: Props) => {
  const t = useMessages(workshopMessages);
  const may = useMay(mayChange);
  const [open, setOpen] = useState<Party | 'new'>();
  const change = {
    key: 'change',
    title: '',
    cell: (row: Party) => (
      <Button
        variant="default"
        aria-label={t('changeOf', { name: row.name })}
        onClick={() => setOpen(row)}
      >
        {t('change')}
      </Button>
    ),
    text: () => '',
  };
  return (
    <Page title={title} actions={may && <Button onClick={() => setOpen('new')}>{add}</Button>}>
      <WorkshopNav />
      <Loaded query={list.query}>
        {(rows) => (
          <DataTable
            caption={title}
            rows={rows}
            onMore={list.more}
            rowKey={({ id }) => id}
            csvName={customer ? 'customers' : 'suppliers'}
            columns={[
              {
                key: 'name',
                title: t('name'),
                cell: ({ name }) => <strong>{name}</strong>,
                text: ({ name }) => name,
              },
              {
                key: 'address',
                title: t('addressShort'),
                cell: (row) => row.addressLines.join(', '),
                text: (row) => row.addressLines.join(', '),
              },
              {
                key: 'phone',
                title: t('phone'),
                cell: ({ phone }) => phone,
                text: ({ phone }) => phone ?? '',
              },
              {
                key: 'email',
                title: t('email'),
                cell: ({ email }) => email,
                text: ({ email }) => email ?? '',
              },
              ...(may ? [change] : []),
            ]}
          />
        )}
      </Loaded>
      {open !== undefined && (
        <PartyDialog
          title={open === 'new' ? add : t('changeOf', { name: open.name })}
          party={open === 'new' ? undefined : open}
          customer={customer}
          onClose={() => setOpen(undefined)}
          onSave={(form) => onSave(form, open === 'new' ? undefined : open)}
        />
      )}
    </Page>
  );
};
