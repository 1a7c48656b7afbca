import { Modal } from '@mantine/core';
import type { ReactNode } from 'react';
import { useMessages } from '../language/catalogue';
import { kitMessages } from './messages';

interface Props {
  readonly title: string;
  readonly size?: 'sm' | 'md' | 'lg' | 'xl';
  readonly fullScreen?: boolean;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** A dialog whose closing cross has a name, which the library's own has not. */
export const Dialog = ({ title, size = 'md', fullScreen = false, onClose, children }: Props) => {
  const t = useMessages(kitMessages);
  return (
    <Modal
      opened
      onClose={onClose}
      title={title}
      size={size}
      fullScreen={fullScreen}
      closeButtonProps={{ 'aria-label': t('close') }}
    >
      {children}
    </Modal>
  );
};
