import { IconPrinter } from '@tabler/icons-react';
import { useLanguage } from '../language/catalogue';

interface Props {
  readonly href: string;
  readonly children: string;
  /** It goes to somebody else: it is in the workshop's language, whoever prints it. */
  readonly leaves?: boolean;
}

/** A link in the language of the screen: a browser would ask for it in its own. */
export const inScreenLanguage = (href: string, language: string): string =>
  `${href}${href.includes('?') ? '&' : '?'}language=${language}`;

/** A paper opens as its PDF in a tab of its own, where the browser prints it. */
export const PaperLink = ({ href, children, leaves = false }: Props) => {
  const language = useLanguage();
  return (
    <a
      className="button-link"
      href={leaves ? href : inScreenLanguage(href, language)}
      target="_blank"
      rel="noreferrer"
    >
      <IconPrinter size={20} aria-hidden /> {children}
    </a>
  );
};
