/** How far a client's change from baseline may be relied on. A look at one client; never on a list. */
export interface ChangeConfidence {
  /** T_ν(|d|/√V): confidence in the direction from error alone, 0.5–1. */
  readonly fromError: number;
  /** ν. */
  readonly df: number;
  /** Beside the changes of others in the program; null under 30 people, or where error explains all their spread. */
  readonly beside: {
    readonly program: string;
    readonly people: number;
    /** Mean change of the others, and SD of what error leaves over. */
    readonly mean: number;
    readonly sd: number;
    /** Best guess for a typical client with this reading, with its SD, in the value's unit. */
    readonly guess: number;
    readonly guessSd: number;
    /** Share of such clients whose change has the direction shown, 0–1. */
    readonly sameDirection: number;
  } | null;
}
