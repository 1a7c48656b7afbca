import { Button } from '@mantine/core';
import { useState, type ReactNode } from 'react';
import { Dialog } from './dialog';
import { fieldErrors, ProblemError } from '../../api/problem';
import { useMessages } from '../language/catalogue';
import { kitMessages } from './messages';
import { ProblemNotice } from './problem-notice';
import { useFocusBack } from './use-focus-back';

type Errors = Readonly<Record<string, string>>;

interface Props {
  readonly title: string;
  readonly confirm?: string;
  readonly size?: 'md' | 'lg' | 'xl';
  readonly onClose: () => void;
  /** Says at its own fields what is still missing; nothing is sent until it answers yes. */
  readonly ready?: () => boolean;
  /** Resolves when it is kept; what it throws is shown at the fields and in the dialog. */
  readonly onSave: () => Promise<unknown>;
  readonly children: (errors: Errors) => ReactNode;
}

/** A form in a dialog: saves, closes, or says at the field what is not right. */
export const EditDialog = (props: Props) => {
  const { title, confirm, size = 'md', onClose, onSave, children } = props;
  useFocusBack();
  const t = useMessages(kitMessages);
  const [error, setError] = useState<unknown>();
  const [working, setWorking] = useState(false);
  const errors = error instanceof ProblemError ? fieldErrors(error.problem) : {};
  const save = async (): Promise<void> => {
    if (props.ready?.() === false) return;
    setWorking(true);
    setError(undefined);
    try {
      await onSave();
      onClose();
    } catch (cause) {
      setError(cause);
      setWorking(false);
    }
  };
  return (
    <Dialog onClose={onClose} title={title} size={size}>
      <form
        className="stack"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          void save();
        }}
      >
        {children(errors)}
        <ProblemNotice error={error} />
        <div className="row">
          <Button type="submit" loading={working}>
            {confirm ?? t('save')}
          </Button>
          <Button variant="default" onClick={onClose}>
            {t('cancel')}
          </Button>
        </div>
      </form>
    </Dialog>
  );
};
