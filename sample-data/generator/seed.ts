/** The seed of the committed clinic: one whose realised errors lie in their bands and whose planted clients land as planned. */
export const SEED = 110;
