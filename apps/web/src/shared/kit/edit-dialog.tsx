import { Button } from '@mantine/core';
import type { ReactNode } from 'react';
import { Dialog } from './dialog';
import { fieldErrors, ProblemError } from '../../api/problem';
import type { Watched } from '../../api/watched';
import { useMessages } from '../language/catalogue';
import { useStoppable, Working } from './long-work';
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
  /** What keeping it is called where that may take a while: `onSave` then heeds its signal. */
  readonly long?: string;
  /** Resolves when it is kept; what it throws is shown at the fields and in the dialog. */
  readonly onSave: (watched: Watched) => Promise<unknown>;
  readonly children: (errors: Errors) => ReactNode;
}

/** A form in a dialog: saves, closes, or says at the field what is not right. */
export const EditDialog = (props: Props) => {
  const { title, confirm, size = 'md', long, onClose, onSave, children } = props;
  useFocusBack();
  const t = useMessages(kitMessages);
  const { working, id, error, run, cancel } = useStoppable('goes-on');
  const errors = error instanceof ProblemError ? fieldErrors(error.problem) : {};
  const save = async (): Promise<void> => {
    if (working || props.ready?.() === false) return;
    await run(async (watched) => {
      await onSave(watched);
      if (!watched.signal.aborted) onClose();
    });
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
        {working && long !== undefined ? (
          <Working label={long} id={id} onCancel={cancel} />
        ) : (
          <div className="row">
            <Button type="submit" loading={working}>
              {confirm ?? t('save')}
            </Button>
            <Button variant="default" onClick={onClose}>
              {t('cancel')}
            </Button>
          </div>
        )}
      </form>
    </Dialog>
  );
};
