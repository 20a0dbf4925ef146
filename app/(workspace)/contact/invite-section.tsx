'use client';

import { useState } from 'react';
import type { DueLists } from '../../../lib/cohort/types/due-lists';
import { useMessages } from '../../_state/language-provider';
import { usePrinting } from '../../_ui/use-printing';
import { ContactSection } from './contact-section';
import { DueAnswer } from './due-answer';
import { InviteExport } from './invite-export';
import { InviteItem } from './invite-item';
import { NotSeenSection } from './not-seen-section';
import { useDue } from './use-due';

/** So many rows are read; the others wait behind one press. */
const SHOWN = 12;

const InviteList = ({ lists }: { readonly lists: DueLists }) => {
  const { due: words } = useMessages();
  const printing = usePrinting();
  const [open, setOpen] = useState(false);
  const { asOf, invite, planned } = lists;
  const n = invite.length;
  const shown = open || printing ? n : SHOWN;
  const more = (
    <button
      type="button"
      className="button no-print"
      aria-expanded={open}
      onClick={() => {
        setOpen(!open);
      }}
    >
      {open ? words.fewer : words.all({ n })}
    </button>
  );
  const foot = (
    <div className="stack">
      <div className="row">
        {n > SHOWN ? more : null}
        <InviteExport rows={invite} />
      </div>
      <p className="quiet small">{words.made}</p>
    </div>
  );
  return (
    <ContactSection
      title={words.invite}
      note={`${words.inviteFor} · ${words.shownOf({ shown: Math.min(shown, n), all: n })}`}
      empty={planned ? words.emptyInvite : words.noPlan}
      count={n}
      foot={n === 0 ? undefined : foot}
    >
      {invite.slice(0, shown).map((row) => (
        <InviteItem key={row.clientKey} row={row} asOf={asOf} />
      ))}
    </ContactSection>
  );
};

/** Whom to invite, and below it who was not seen for long: two sheets. */
export const InviteSection = () => (
  <DueAnswer query={useDue()}>
    {(lists) => (
      <>
        <InviteList lists={lists} />
        {lists.planned ? <NotSeenSection rows={lists.notSeen} /> : null}
      </>
    )}
  </DueAnswer>
);
