'use client';

import { createContext, use, useCallback, useEffect, useMemo, useRef, useState, type ReactNode } from 'react';
import type { AppError } from '../../lib/core/app-error';
import type { Result } from '../../lib/core/result';
import type { Session, Workspace } from '../../lib/workspace/workspace';
import { InitialsDialog, type InitialsAnswer } from '../_ui/initials-dialog';
import { usePreferences } from './language-provider';
import { openWorkspace } from './open-workspace';
import { useWorkspace } from './workspace-provider';

export type Act = (workspace: Workspace) => Promise<Result<Session, AppError>>;

/** How a change ended. `left`: the person decided to change nothing. */
export type ActEnd =
  { readonly kind: 'done' } | { readonly kind: 'left' } | { readonly kind: 'failed'; readonly error: AppError };

/** What stands in the line at the foot of the window. */
export interface Said {
  readonly text: string;
  readonly failed: boolean;
}

interface ActContextValue {
  /** Changes the clinic in this person's name; asks once whose, where nobody has said so and `by` does not either. */
  readonly act: (action: Act, by?: string) => Promise<ActEnd>;
  readonly said: Said | undefined;
  readonly say: (said: Said | undefined) => void;
}

/** Errors that name what the clinic is now, not a mishap: the page shows that in its place. */
const STATES: ReadonlySet<string> = new Set(['locked', 'empty_clinic', 'no_clinic', 'cleared', 'newer_app']);

const ActContext = createContext<ActContextValue | undefined>(undefined);

/** Every change of the clinic goes through here: signed, and said in one line. */
export const ActProvider = ({ children }: { readonly children: ReactNode }) => {
  const { run, retry } = useWorkspace();
  const { preferences, setPreferences } = usePreferences();
  const { initials } = preferences;
  const [asking, setAsking] = useState<((answer: InitialsAnswer) => void) | undefined>(undefined);
  const [said, say] = useState<Said | undefined>(undefined);
  const asked = useRef(false);

  useEffect(() => {
    void openWorkspace().then(
      (workspace) => {
        workspace.setInitials(initials);
      },
      () => undefined,
    );
  }, [initials]);

  const act = useCallback(
    async (action: Act, by = ''): Promise<ActEnd> => {
      say(undefined);
      if (initials === '' && (by !== '' || !asked.current)) {
        const answer =
          by === ''
            ? await new Promise<InitialsAnswer>((resolve) => {
                setAsking(() => resolve);
              })
            : { kind: 'sign' as const, initials: by };
        setAsking(undefined);
        if (answer.kind === 'cancel') return { kind: 'left' };
        asked.current = true;
        if (answer.kind === 'sign') {
          (await openWorkspace()).setInitials(answer.initials);
          setPreferences({ ...preferences, initials: answer.initials });
        }
      }
      const error = await run(action);
      if (error !== undefined && STATES.has(error.code)) {
        retry();
        return { kind: 'done' };
      }
      return error === undefined ? { kind: 'done' } : { kind: 'failed', error };
    },
    [initials, preferences, setPreferences, run, retry],
  );

  const value = useMemo(() => ({ act, said, say }), [act, said]);
  return (
    <ActContext value={value}>
      {children}
      {asking === undefined ? null : <InitialsDialog onAnswer={asking} />}
    </ActContext>
  );
};

export const useAct = (): ActContextValue => {
  const value = use(ActContext);
  if (value === undefined) throw new Error('ActProvider is missing');
  return value;
};
