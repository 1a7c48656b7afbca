import { Button } from '@mantine/core';
import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { api, must } from '../../api/client';
import type { components } from '../../api/schema';
import { useRead } from '../../api/use-api';
import { useMay } from '../../app/session';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DataTable } from '../../shared/kit/data-table';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { OneOf, TextField, TickField } from '../../shared/kit/fields';
import { Loaded } from '../../shared/kit/loaded';
import { Page, State } from '../../shared/kit/page';
import { workshopMessages } from './messages';
import { WorkshopNav } from './workshop-nav';

type User = components['schemas']['UserView'];
type Role = User['role'];

const useRoles = () => {
  const t = useMessages(workshopMessages);
  return [
    { value: 'owner', label: t('roleOwner') },
    { value: 'maker', label: t('roleMaker') },
    { value: 'seller', label: t('roleSeller') },
    { value: 'auditor', label: t('roleAuditor') },
  ] as const;
};

const PersonDialog = (props: { readonly user: User | undefined; readonly onClose: () => void }) => {
  const { user, onClose } = props;
  const t = useMessages(workshopMessages);
  const roles = useRoles();
  const queries = useQueryClient();
  const [name, setName] = useState(user?.name ?? '');
  const [role, setRole] = useState<Role>(user?.role ?? 'maker');
  const [password, setPassword] = useState('');
  const [pin, setPin] = useState('');
  const [active, setActive] = useState(user?.active ?? true);
  const save = async (): Promise<void> => {
    const secrets = { ...(password === '' ? {} : { password }), ...(pin === '' ? {} : { pin }) };
    if (user === undefined) {
      await must(api.POST('/api/users', { body: { name, role, ...secrets, password } }));
    } else {
      await must(
        api.PATCH('/api/users/{id}', {
          params: { path: { id: user.id } },
          headers: { 'If-Match': `"${String(user.version)}"` },
          body: { role, active, ...secrets },
        }),
      );
    }
    await queries.invalidateQueries();
  };
  return (
    <EditDialog
      title={user === undefined ? t('addPerson') : t('changeOf', { name: user.name })}
      onClose={onClose}
      onSave={save}
    >
      {(errors) => (
        <>
          {user === undefined && (
            <TextField
              label={t('name')}
              value={name}
              onChange={setName}
              error={errors['name']}
              required
            />
          )}
          <OneOf
            label={t('role')}
            value={role}
            onChange={(next) => setRole(next as Role)}
            choices={roles}
          />
          <TextField
            label={user === undefined ? t('password') : t('newPassword')}
            type="password"
            autoComplete="new-password"
            value={password}
            onChange={setPassword}
            error={errors['password']}
          />
          <TextField
            label={t('pin')}
            type="password"
            value={pin}
            onChange={setPin}
            error={errors['pin']}
          />
          {user !== undefined && (
            <TickField label={t('active')} checked={active} onChange={setActive} />
          )}
        </>
      )}
    </EditDialog>
  );
};

const People = () => {
  const t = useMessages(workshopMessages);
  const word = useServiceWords();
  const owner = useMay();
  const users = useRead('/api/users');
  const [open, setOpen] = useState<User | 'new'>();
  return (
    <Page
      title={t('people')}
      actions={owner && <Button onClick={() => setOpen('new')}>{t('addPerson')}</Button>}
    >
      <WorkshopNav />
      <Loaded query={users}>
        {(rows) => (
          <DataTable
            caption={t('people')}
            rows={rows}
            rowKey={({ id }) => id}
            columns={[
              {
                key: 'name',
                title: t('name'),
                cell: ({ name }) => <strong>{name}</strong>,
                text: ({ name }) => name,
              },
              {
                key: 'role',
                title: t('role'),
                cell: ({ role }) => word(role),
                text: ({ role }) => role,
              },
              {
                key: 'state',
                title: t('active'),
                cell: (user) => (
                  <span className="row">
                    <State tone={user.active ? 'good' : 'plain'}>
                      {user.active ? t('active') : t('inactive')}
                    </State>
                    {user.hasPin && <State>{t('hasPin')}</State>}
                  </span>
                ),
                text: ({ active }) => String(active),
              },
              ...(owner
                ? [
                    {
                      key: 'change',
                      title: '',
                      cell: (user: User) => (
                        <Button
                          variant="default"
                          aria-label={t('changeOf', { name: user.name })}
                          onClick={() => setOpen(user)}
                        >
                          {t('change')}
                        </Button>
                      ),
                      text: () => '',
                    },
                  ]
                : []),
            ]}
          />
        )}
      </Loaded>
      {open !== undefined && (
        <PersonDialog user={open === 'new' ? undefined : open} onClose={() => setOpen(undefined)} />
      )}
    </Page>
  );
};

export default People;
