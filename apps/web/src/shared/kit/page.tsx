import { useEffect, type ReactNode } from 'react';

interface PageProps {
  readonly title: string;
  /** One line under the title. */
  readonly lead?: ReactNode;
  readonly actions?: ReactNode;
  readonly children: ReactNode;
}

/** A screen: its title is the document's title and the only heading of the first level. */
export const Page = ({ title, lead, actions, children }: PageProps) => {
  useEffect(() => {
    document.title = `${title} · Ballotin`;
  }, [title]);
  return (
    <>
      <header className="page-head">
        <div>
          <h1 tabIndex={-1}>{title}</h1>
          {lead !== undefined && <div className="lead">{lead}</div>}
        </div>
        {actions !== undefined && <div className="actions">{actions}</div>}
      </header>
      {children}
    </>
  );
};

interface SectionProps {
  readonly title: string;
  readonly actions?: ReactNode;
  readonly children: ReactNode;
  readonly className?: string;
}

export const Section = ({ title, actions, children, className }: SectionProps) => (
  <section className={`section ${className ?? ''}`} aria-label={title}>
    <div className="section-head">
      <h2>{title}</h2>
      {actions !== undefined && <div className="actions">{actions}</div>}
    </div>
    {children}
  </section>
);

/** Name and value, one under the other; the value is what the eye lands on. */
export const Fact = (props: { readonly name: string; readonly children: ReactNode }) => (
  <div className="fact">
    <dt>{props.name}</dt>
    <dd>{props.children}</dd>
  </div>
);

export const Facts = (props: { readonly children: ReactNode }) => (
  <dl className="facts">{props.children}</dl>
);

export type Tone = 'plain' | 'good' | 'caution' | 'warn';

const signs: Record<Tone, string> = { plain: '·', good: '✓', caution: '!', warn: '✕' };

/** A state in words, with a sign before it so that the colour never says it alone. */
export const State = (props: { readonly tone?: Tone; readonly children: ReactNode }) => (
  <span className={`state state-${props.tone ?? 'plain'}`}>
    <span aria-hidden="true">{signs[props.tone ?? 'plain']}</span> {props.children}
  </span>
);

/** A short caution that stands beside an estimate, an allergen, a date or a scope. */
export const Caution = (props: { readonly children: ReactNode }) => (
  <p className="caution" role="note">
    <span aria-hidden="true">! </span>
    {props.children}
  </p>
);
