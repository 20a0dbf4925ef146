/** The sections of Methods in their order; each is an anchor of the page. */
export const SECTIONS = ['in-force', 'entries', 'agreement', 'compare', 'own', 'paragraph'] as const;

export type SectionId = (typeof SECTIONS)[number];
