import { IconPrinter } from '@tabler/icons-react';
import { useEffect, useState, type MouseEvent } from 'react';
import { useLanguage, useMessages } from '../language/catalogue';
import { Working } from './long-work';
import { kitMessages } from './messages';
import { ProblemNotice } from './problem-notice';
import { useFetched } from './save-button';

interface Props {
  readonly href: string;
  readonly children: string;
  /** It goes to somebody else: it is in the workshop's language, whoever prints it. */
  readonly leaves?: boolean;
}

/** A link in the language of the screen: a browser would ask for it in its own. */
export const inScreenLanguage = (href: string, language: string): string =>
  `${href}${href.includes('?') ? '&' : '?'}language=${language}`;

const useAddress = ({ href, leaves = false }: Props): string => {
  const language = useLanguage();
  return leaves ? href : inScreenLanguage(href, language);
};

/** A paper opens as its PDF in a tab of its own, where the browser prints it. */
export const PaperLink = (props: Props) => (
  <a className="button-link" href={useAddress(props)} target="_blank" rel="noreferrer">
    <IconPrinter size={20} aria-hidden /> {props.children}
  </a>
);

/** In another window, or as a file of its own: that stays the browser's business. */
const isPlain = ({ ctrlKey, metaKey, shiftKey }: MouseEvent): boolean =>
  !ctrlKey && !metaKey && !shiftKey;

/**
 * The same for a paper that grows with the record, so that making it may take a while: it is made
 * here, where that shows and can be stopped, and opens when it is there.
 */
export const LongPaperLink = (props: Props) => {
  const t = useMessages(kitMessages);
  const address = useAddress(props);
  const { working, id, progress, error, start, cancel } = useFetched();
  const [made, setMade] = useState<{ readonly of: string; readonly at: string }>();
  useEffect(
    () => () => {
      if (made !== undefined) URL.revokeObjectURL(made.at);
    },
    [made],
  );
  const open = (file: Blob): void => {
    const at = URL.createObjectURL(file);
    // A browser that lets no script open a tab so long after the tap leaves that to the next one.
    if (window.open(at, '_blank') === null) setMade({ of: address, at });
  };
  if (working) {
    return <Working label={props.children} id={id} progress={progress} onCancel={cancel} />;
  }
  return (
    <>
      {made?.of === address ? (
        <a className="button-link" href={made.at} target="_blank">
          <IconPrinter size={20} aria-hidden /> {t('openMade', { paper: props.children })}
        </a>
      ) : (
        <a
          className="button-link"
          href={address}
          target="_blank"
          rel="noreferrer"
          onClick={(event) => {
            if (!isPlain(event)) return;
            event.preventDefault();
            void start(address, open);
          }}
        >
          <IconPrinter size={20} aria-hidden /> {props.children}
        </a>
      )}
      <ProblemNotice error={error} />
    </>
  );
};
