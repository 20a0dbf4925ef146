/** What can be done with one reading. */
export type ReadingAct = 'correct' | 'set-aside' | 'bring-back';
