/** An expected failure: a code for programs, a message for a person, and what to do next. */
export interface AppError {
  readonly code: string;
  readonly message: string;
  readonly remedy: string;
}
