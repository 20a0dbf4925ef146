import type { AppError } from '../../lib/core/app-error';
import type { Messages } from '../../lib/core/messages/en';

const isAppError = (reason: unknown): reason is AppError =>
  typeof reason === 'object' && reason !== null && 'code' in reason && 'message' in reason && 'remedy' in reason;

/** What a person reads when something was thrown: the error's own words where it has some, never a raw message. */
export const asAppError = (reason: unknown, messages: Messages): AppError =>
  isAppError(reason)
    ? reason
    : { code: 'unexpected', message: messages.shell.unexpected, remedy: messages.shell.unexpectedRemedy };
