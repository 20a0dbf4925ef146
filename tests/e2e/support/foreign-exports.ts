/** A number between −1 and 1 that depends on its place alone: the same file every time. */
const wave = (place: number): number => Math.sin(place * 12.9898) * Math.cos(place * 4.1414);

interface ForeignVisit {
  readonly client: number;
  readonly day: number;
  readonly month: number;
  readonly heightCm: number;
  readonly weightKg: number;
  readonly r: number;
  readonly xc: number;
}

const CLIENTS = 8;

/** Eight invented people, three visits each, on days that read either way round (3.4., 5.4., 6.7. …). */
export const foreignVisits = (): readonly ForeignVisit[] =>
  Array.from({ length: CLIENTS }, (_, index) => index + 1).flatMap((client) =>
    [
      { day: 3, month: 4 },
      { day: 5, month: 4 },
      { day: 6, month: 7 },
    ].map(({ day, month }, visit) => ({
      client,
      day,
      month,
      heightCm: 160 + client * 2,
      weightKg: 62 + client * 3 + visit * 0.5 + wave(client * 10 + visit),
      r: 480 + client * 7 + wave(client + visit) * 5,
      xc: 52 + wave(client * 3 + visit) * 2,
    })),
  );

const two = (value: number): string => String(value).padStart(2, '0');
const comma = (value: number, digits: number): string => value.toFixed(digits).replace('.', ',');

/** As a practice in Germany would save it: preamble, semicolons, decimal commas, day before month, sex as 1 and 2. */
export const germanExport = (): Buffer => {
  const rows = foreignVisits().map(({ client, day, month, heightCm, weightKg, r, xc }) =>
    [
      `P-${String(client)}`,
      client % 2 === 0 ? '1' : '2',
      `${two(day)}.${two(month)}.2025`,
      comma(heightCm / 100, 2),
      comma(weightKg, 1),
      comma(r, 1),
      comma(xc, 1),
      'Raum 2',
    ].join(';'),
  );
  const header = 'Kundennr.;Geschlecht;Messdatum;Größe (m);Gewicht (kg);R 50kHz;Xc 50kHz;Raum';
  return Buffer.from(['Praxis am Hafen', '', header, ...rows].join('\r\n'), 'latin1');
};

/** As an American spreadsheet would save it: pounds, inches, month before day, two readings side by side. */
export const wideExport = (): string => {
  const rows = foreignVisits().map(({ client, day, month, heightCm, weightKg, r, xc }) =>
    [
      `W-${String(client)}`,
      `${two(month)}/${two(day + 20)}/2025`,
      (heightCm / 2.54).toFixed(1),
      (weightKg / 0.45359237).toFixed(1),
      r.toFixed(1),
      (r + 2).toFixed(1),
      xc.toFixed(1),
      (xc + 0.5).toFixed(1),
    ].join(','),
  );
  return ['Patient ID,Visit Date,Height (in),Weight (lb),R1,R2,Xc1,Xc2', ...rows].join('\n');
};

/** Exported values alone: no resistance, no reactance. */
export const compositionExport = (): string => {
  const rows = foreignVisits().map(({ client, day, month, weightKg }) =>
    [`C-${String(client)}`, `2025-${two(month)}-${two(day)}`, weightKg.toFixed(1), (weightKg * 0.7).toFixed(1)].join(
      ',',
    ),
  );
  return ['client_id,visit_date,weight_kg,ffm_kg', ...rows].join('\n');
};
