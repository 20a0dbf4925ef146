import type { Formatters } from '../../formatters';

/** What a clinic keeps about one client, and energy and waist for orientation. */
export const clientOwn = (f: Formatters) => ({
  title: 'About this client',
  lead: 'Kept with the clinic, in no export but everything about this person; erased with the person. Every change is in the log and can be undone.',
  goal: 'One goal, in the client’s own words',
  goalHint: 'For example: carry the shopping up the stairs.',
  displayName: 'Name to show',
  alsoKnownAs: 'Also known as',
  save: 'Save',
  saved: 'Saved. Undo takes it back.',
  knownAs: (p: { names: string }) => `also known as ${p.names}`,
  noWeight: 'No weight or fat on anything the client sees',
  noWeightOn: 'Weight and fat are left off what this client sees. Undo brings them back.',
  noWeightOff: 'Weight and fat may stand on what this client sees. Undo takes it back.',
  setAside: (p: { n: number }) =>
    f.plural(p.n, '# reading of this client is set aside.', '# readings of this client are set aside.'),
  sex: {
    title: 'Sex coding of the equations',
    lead: 'One coding serves every visit. Equations use it as a number; it says nothing else about a person.',
    choice: 'Coding for every visit',
    result: (p: { value: string; coding: string; amount: string; date: string }) =>
      `With ${p.coding}: ${p.value} ${p.amount} on ${p.date}.`,
    recorded: (p: { recorded: string }) => `Recorded as ${p.recorded}.`,
    sameChange: 'A change between visits stays nearly the same under either.',
    saved: (p: { sex: string }) => `${p.sex} is used for every visit. Undo takes it back.`,
  },
  energy: {
    title: 'Energy, for orientation',
    lead: 'An estimate for orientation, not a prescription. No target intake is given.',
    resting: 'Resting expenditure',
    total: 'Total expenditure',
    spread: (p: { low: string; high: string }) => `for one person anywhere from ${p.low} to ${p.high} (± 10–15 %)`,
    equation: (p: { name: string; mark: string | null; from: string }) =>
      `${p.name}${p.mark === null ? '' : ` (${p.mark})`}${p.from === '' ? '' : `, from ${p.from}`}`,
    on: (p: { equation: string; date: string }) => `${p.equation}, visit of ${p.date}`,
    stopped: (p: { reasons: string }) => `Not estimated: ${p.reasons}.`,
    incomplete: 'Not estimated: weight, height, age or sex coding is missing.',
    outside: (p: { reasons: string }) => `Read with care: ${p.reasons}.`,
    level: 'Physical activity level',
    levelHelp: (p: { bands: readonly string[]; source: string }) =>
      `A number from a record of activity. Orientation: ${f.list(p.bands)} (${p.source}).`,
    levelRecorded: (p: { level: string; date: string }) => `${p.level}, from the record of ${p.date}.`,
    levelEntered: (p: { level: string; when: string; by: string }) =>
      `${p.level}, entered ${p.when}${p.by === '' ? '' : ` by ${p.by}`}.`,
    levelNone: 'No physical activity level is known: no total.',
    levelInvalid: 'Write a number from 1 to 3, for example 1.60; or leave it empty to use the record.',
    tissue: (p: { from: string; to: string; energy: string; fm: string; ffm: string; mark: string | null }) =>
      `The tissue that changed from ${p.from} to ${p.to} (fat ${p.fm}, fat-free ${p.ffm}${p.mark === null ? '' : `; ${p.mark}`}) holds about ${p.energy}: energy of tissue, not what was eaten or spent. A lean change can be water, which holds none.`,
    noTissue:
      'No energy of tissue: neither fat nor fat-free mass changed by more than error, or one of them is not judged.',
  },
  waist: {
    title: 'Waist',
    value: (p: { waist: string; ratio: string | null; date: string }) =>
      `${p.waist}${p.ratio === null ? '' : `, waist-to-height ${p.ratio}`}, on ${p.date}.`,
    none: 'No waist was measured.',
    stopped: 'No cut-off is applied to this visit.',
    choice: 'Cut-off, chosen by the clinic or with the client',
    notChosen: 'as the clinic offers',
    others: 'Other sets answer differently:',
    same: 'The other sets that fit answer alike.',
    unclassed: 'No cut-off fits: choose one with the client, or switch one on under Methods.',
    note: 'Sets differ between guidelines and groups. Nobody’s group is guessed: a set for one group stands here only when it was chosen.',
    saved: 'The cut-off is kept for this client. Undo takes it back.',
  },
});
