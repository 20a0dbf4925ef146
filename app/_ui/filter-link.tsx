'use client';

import Link from 'next/link';
import { useSearchParams } from 'next/navigation';
import { Suspense, type ComponentProps } from 'react';
import { withFilter } from './with-filter';

type FilterLinkProps = Omit<ComponentProps<typeof Link>, 'href'> & {
  /** A path of this app, with a query of its own where it needs one; a name given here wins over the filter's. */
  readonly href: string;
};

const CarryingLink = ({ href, ...rest }: FilterLinkProps) => {
  const filter = useSearchParams();
  return <Link href={withFilter(href, new URLSearchParams(filter))} prefetch={false} {...rest} />;
};

/** A link inside the app that carries the filter of the address; a plain one would drop it. */
export const FilterLink = (props: FilterLinkProps) => (
  <Suspense fallback={<Link prefetch={false} {...props} />}>
    <CarryingLink {...props} />
  </Suspense>
);
