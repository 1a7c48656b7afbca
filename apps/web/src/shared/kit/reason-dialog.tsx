import { Button } from '@mantine/core';
import { useState, type ReactNode } from 'react';
import { Dialog } from './dialog';
import { useMessages } from '../language/catalogue';
import { LongField } from './fields';
import { kitMessages } from './messages';
import { ProblemNotice } from './problem-notice';
import { useFocusBack } from './use-focus-back';

interface Props {
  readonly title: string;
  readonly confirm: string;
  readonly children?: ReactNode;
  readonly onClose: () => void;
  /** Resolves when it is done; what it throws is shown in the dialog. */
  readonly onReason: (reason: string) => Promise<unknown>;
}

/** Asks why before something that stays on record. */
export const ReasonDialog = ({ title, confirm, children, onClose, onReason }: Props) => {
  useFocusBack();
  const t = useMessages(kitMessages);
  const [reason, setReason] = useState('');
  const [missing, setMissing] = useState(false);
  const [working, setWorking] = useState(false);
  const [error, setError] = useState<unknown>();
  const go = async (): Promise<void> => {
    if (reason.trim().length < 3) {
      setMissing(true);
      return;
    }
    setWorking(true);
    try {
      await onReason(reason.trim());
      onClose();
    } catch (cause) {
      setError(cause);
      setWorking(false);
    }
  };
  return (
    <Dialog onClose={onClose} title={title}>
      <form
        className="stack"
        onSubmit={(event) => {
          event.preventDefault();
          void go();
        }}
      >
        {children}
        <LongField
          label={t('reason')}
          value={reason}
          onChange={setReason}
          required
          error={missing ? t('reasonNeeded') : undefined}
        />
        <ProblemNotice error={error} />
        <div className="row">
          <Button type="submit" loading={working}>
            {confirm}
          </Button>
          <Button variant="default" onClick={onClose}>
            {t('cancel')}
          </Button>
        </div>
      </form>
    </Dialog>
  );
};
