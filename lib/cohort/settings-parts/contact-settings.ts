import { z } from 'zod';

/** The rules by which somebody stands on Talk to. */
export const TALK_TO_RULES = ['lean-change', 'lean-slope', 'lean-share', 'weight-loss'] as const;
export type TalkToRule = (typeof TALK_TO_RULES)[number];

/** How the contact lists are made. */
export const contactSettingsSchema = z.strictObject({
  /** How many people the clinic can call in a week. */
  callsPerWeek: z.number().int().positive().optional(),
  /** A first sight with an excess below this many thresholds is measured again before anybody is called. */
  nearFactor: z.number().min(1).max(3).default(1.15),
  /** Rules that the clinic switched off. */
  rulesOff: z.array(z.enum(TALK_TO_RULES)).default([]),
});

export type ContactSettings = z.infer<typeof contactSettingsSchema>;
