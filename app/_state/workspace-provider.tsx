'use client';

import { createContext, use, useCallback, useEffect, useMemo, useRef, useState, type ReactNode } from 'react';
import type { AppError } from '../../lib/core/app-error';
import type { Result } from '../../lib/core/result';
import type { Session, Workspace } from '../../lib/workspace/workspace';
import { asAppError } from './as-app-error';
import { inTurn } from './in-turn';
import { useMessages } from './language-provider';
import { openWorkspace } from './open-workspace';

export type WorkspaceState =
  | { readonly kind: 'starting' }
  | { readonly kind: 'failed'; readonly error: AppError }
  | { readonly kind: 'open'; readonly session: Session };

type Action = (workspace: Workspace) => Promise<Result<Session, AppError>>;

interface WorkspaceContextValue {
  readonly state: WorkspaceState;
  readonly retry: () => void;
  /** Runs what leads to another session and shows it; the error where it failed, undefined where it worked. */
  readonly run: (action: Action) => Promise<AppError | undefined>;
}

/** Errors after which no clinic is open any more: they take the place of what was on screen. */
const NOT_OPEN: ReadonlySet<string> = new Set([
  'locked',
  'file_missing',
  'empty_clinic',
  'no_clinic',
  'cleared',
  'newer_app',
  'engine_died',
  'engine_not_started',
]);

const WorkspaceContext = createContext<WorkspaceContextValue | undefined>(undefined);

/** Opens the clinic once the page is on screen, and holds the open session. */
export const WorkspaceProvider = ({ children }: { readonly children: ReactNode }) => {
  const messages = useMessages();
  const [state, setState] = useState<WorkspaceState>({ kind: 'starting' });

  // What was under way when the page began anew (a lock, a retry) is not shown any more: opening tells what came of it.
  const opening = useRef(0);

  const run = useCallback(
    async (action: Action): Promise<AppError | undefined> => {
      const asked = opening.current;
      const failed = (error: AppError): AppError => {
        if (NOT_OPEN.has(error.code) && asked === opening.current) setState({ kind: 'failed', error });
        return error;
      };
      try {
        const result = await inTurn(async () => action(await openWorkspace()));
        if (!result.ok) return failed(result.error);
        if (asked === opening.current) setState({ kind: 'open', session: result.value });
        return undefined;
      } catch (reason) {
        return failed(asAppError(reason, messages));
      }
    },
    [messages],
  );

  const [attempt, setAttempt] = useState(0);
  const retry = useCallback(() => {
    opening.current += 1;
    setState({ kind: 'starting' });
    setAttempt((count) => count + 1);
  }, []);
  const begun = useRef<number>(undefined);
  const starting = state.kind === 'starting';
  useEffect(() => {
    if (!starting || begun.current === attempt) return;
    begun.current = attempt;
    void Promise.resolve()
      .then(() => run((workspace) => workspace.open()))
      .then((error) => {
        if (error !== undefined) setState({ kind: 'failed', error });
      });
  }, [starting, run, attempt]);

  const value = useMemo(() => ({ state, retry, run }), [state, retry, run]);
  return <WorkspaceContext value={value}>{children}</WorkspaceContext>;
};

export const useWorkspace = (): WorkspaceContextValue => {
  const value = use(WorkspaceContext);
  if (value === undefined) throw new Error('WorkspaceProvider is missing');
  return value;
};

/** The open session. Only for what stands inside the workspace gate, where a session is open. */
export const useSession = (): Session => {
  const { state } = useWorkspace();
  if (state.kind !== 'open') throw new Error('no session is open here');
  return state.session;
};
