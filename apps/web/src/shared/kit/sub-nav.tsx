import { Link, type LinkProps } from '@tanstack/react-router';

export interface SubPage {
  readonly to: NonNullable<LinkProps['to']>;
  readonly label: string;
}

/** Rooms of one place in the building. */
export const SubNav = (props: { readonly label: string; readonly pages: readonly SubPage[] }) => (
  <nav aria-label={props.label} className="sub-nav no-print">
    <ul>
      {props.pages.map(({ to, label }) => (
        <li key={to}>
          <Link to={to} activeOptions={{ exact: true }}>
            {label}
          </Link>
        </li>
      ))}
    </ul>
  </nav>
);
