import { IconPrinter } from '@tabler/icons-react';

/** A paper opens as its PDF in a tab of its own, where the browser prints it. */
export const PaperLink = (props: { readonly href: string; readonly children: string }) => (
  <a className="button-link" href={props.href} target="_blank" rel="noreferrer">
    <IconPrinter size={20} aria-hidden /> {props.children}
  </a>
);
