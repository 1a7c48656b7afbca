import { Button } from '@mantine/core';
import { useMessages } from '../language/catalogue';
import { kitMessages } from './messages';

export const MoreButton = ({ onMore }: { readonly onMore: (() => void) | undefined }) => {
  const t = useMessages(kitMessages);
  return onMore === undefined ? null : (
    <Button variant="default" onClick={onMore} className="no-print">
      {t('more')}
    </Button>
  );
};
