'use client';

import type { DueLists } from '../../../lib/cohort/types/due-lists';
import { useMessages } from '../../_state/language-provider';
import { FilterLink } from '../../_ui/filter-link';
import { ContactSection } from '../contact/contact-section';
import { InviteItem } from '../contact/invite-item';

interface InviteShortProps {
  readonly lists: DueLists;
  /** How many rows stand here. */
  readonly shown: number;
}

/** The third short list of the week. */
export const InviteShort = ({ lists, shown }: InviteShortProps) => {
  const { due: words } = useMessages();
  const { invite, planned, asOf } = lists;
  const n = invite.length;
  return (
    <ContactSection
      title={words.invite}
      note={`${words.inviteFor} · ${words.shownOf({ shown: Math.min(n, shown), all: n })}`}
      empty={planned ? words.emptyInvite : words.noPlan}
      count={n}
      foot={n > shown ? <FilterLink href="/contact/">{words.all({ n })}</FilterLink> : undefined}
    >
      {invite.slice(0, shown).map((row) => (
        <InviteItem key={row.clientKey} row={row} asOf={asOf} />
      ))}
    </ContactSection>
  );
};
