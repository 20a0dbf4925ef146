import type { Formatters } from '../../formatters';

/** Two checklists for the room, in general words. Common practice, no source. */
export const checklist = (f: Formatters) => ({
  title: 'Checklists for the room',
  headline: 'Two checklists for the room: standing and lying.',
  lead: 'In general words. The device’s own instructions and the clinic’s rules come first.',
  show: 'Show',
  shows: { standing: 'Standing', lying: 'Lying', both: 'Both' },
  print: 'Print',
  toSheet: 'Visit sheet',
  heading: { standing: 'Before a reading, standing', lying: 'Before a reading, lying' },
  source: 'Common practice, no source.',
  parts: {
    ask: 'Ask first',
    conditions: 'Standard conditions',
    position: 'Position',
    write: 'Write down',
    caution: 'Read with care',
  },
  ask: [
    'An implanted electronic device (heart, nerve, pump): follow the device’s instructions and the clinic’s rule before measuring. Published series found no interference in small groups (6 cohorts, 531 patients; Heart Rhythm O2 2025;6(12)); that is not a clearance.',
    'Pregnant, or a birth within the last twelve weeks: no estimates are made.',
    'Swelling or fluid collected in the body, heart failure, cirrhosis, an infusion: note it; kilograms of muscle or fat are not reliable.',
    'Dialysis: note the hours since the last session; only visits at the same time after one are compared.',
    'A limb lost, paralysis or swelling of one side, large metal in the body: note it.',
    'Fever, an acute illness, a change of medication: note it, or choose another day.',
    'Under 18: adult estimates are not used.',
  ],
  conditions: (p: { fasting: number; exercise: number; alcohol: number }) => [
    `Nothing eaten for ${f.number(p.fasting)} hours.`,
    `No exercise for ${f.number(p.exercise)} hours, no alcohol for ${f.number(p.alcohol)} hours.`,
    'No large drink just before.',
    'Bladder emptied.',
    'Rested, neither cold nor sweating.',
    'Light clothing, the same as last time; shoes and socks off; jewellery and metal laid aside.',
    'Skin clean and dry, without cream where the electrodes touch.',
  ],
  position: {
    standing: [
      'Stand as the device’s instructions say, exactly as last time.',
      'The same device and the same hand-electrode position as last time.',
      'Both bare feet on their electrodes, weight on both.',
      'Arms away from the trunk, thighs not touching; a dry cloth between where skin touches skin.',
      'Stand still and do not speak until the reading is done.',
      'For a second reading step off and on again.',
    ],
    lying: [
      'Lie as the device’s instructions say, exactly as last time, on a surface that does not conduct.',
      'The same device and the same electrode sites as last time, on the same side of the body.',
      'The same time lying before the reading as last time.',
      'Arms away from the trunk, legs apart; a dry cloth between where skin touches skin.',
      'Lie still and do not speak until the reading is done.',
      'For a second reading sit up, lie down again, and place the electrodes again.',
    ],
  },
  write: [
    'Device, hand-electrode position or electrode sites, posture, side, time.',
    'Weight and, once, height measured here; who measured.',
    'Every condition that was not met: an empty field is unknown, never “no”.',
    'Both readings where there are two; none is thrown away.',
  ],
  caution: [
    'Estimates from electrical measurements support and never replace examination and judgement by a licensed professional and the local rules.',
    'Impedance cannot tell water from muscle with one pair of visits.',
  ],
});
