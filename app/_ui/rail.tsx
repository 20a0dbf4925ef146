'use client';

import { usePathname } from 'next/navigation';
import type { Messages } from '../../lib/core/messages/en';
import { useMessages } from '../_state/language-provider';
import { FilterLink } from './filter-link';
import styles from './rail.module.css';

type ScreenName = keyof Messages['shell']['screens'];

interface Entry {
  readonly href: string;
  readonly screen: ScreenName;
  /** Another path that belongs to the entry. */
  readonly also?: string;
}

const reading: readonly Entry[] = [
  { href: '/', screen: 'thisWeek' },
  { href: '/contact/', screen: 'contact' },
  { href: '/programs/', screen: 'programs' },
  { href: '/vectors/', screen: 'vectors' },
  { href: '/indices/', screen: 'indices' },
  { href: '/clients/', screen: 'clients', also: '/client/' },
];

const groundwork: readonly Entry[] = [
  { href: '/repeatability/', screen: 'repeatability', also: '/comparability/' },
  { href: '/import/', screen: 'import' },
];

const household: readonly Entry[] = [
  { href: '/methods/', screen: 'methods' },
  { href: '/settings/', screen: 'settings' },
];

const Entries = ({ entries }: { readonly entries: readonly Entry[] }) => {
  const messages = useMessages();
  const path = usePathname();
  return (
    <ul className={styles.list}>
      {entries.map(({ href, screen, also }) => (
        <li key={href}>
          <FilterLink
            className={styles.entry}
            href={href}
            aria-current={path === href || path === also ? 'page' : undefined}
          >
            {messages.shell.screens[screen]}
          </FilterLink>
        </li>
      ))}
    </ul>
  );
};

/** The few entries, named by what people come for; below them what the answers stand on. */
export const Rail = () => {
  const messages = useMessages();
  return (
    <nav className={styles.rail} aria-label={messages.shell.navigation}>
      <Entries entries={reading} />
      <Entries entries={groundwork} />
      <Entries entries={household} />
    </nav>
  );
};
