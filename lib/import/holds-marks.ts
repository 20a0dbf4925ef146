/** No-break and other wide spaces, zero-width characters, marks of writing direction: on screen a cell looks the same without them. */
const MARKS = '\u0000\u00A0\u00AD\u2000-\u200F\u2028-\u202F\u205F-\u2064\u2066-\u2069\u3000\uFEFF';
const SOME_MARK = new RegExp(`[${MARKS}]`);

/**
 * Whether a text holds a character that cannot be seen, or is text as a formula (`="00123"`), so that most files are not
 * searched cell by cell.
 */
export const holdsMarks = (text: string): boolean => text.startsWith('="') || SOME_MARK.test(text);
