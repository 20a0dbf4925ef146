import type { Formatters } from '../../core/formatters';
import type { MethodsWords } from '../../core/messages/en/methods-paragraph';
import type { MethodsInput, Recorded, RecordedInstrument } from './methods-input';

/** What the data hold, and whether they are invented. */
export const dataSentences = (
  { settings, summary }: MethodsInput,
  words: MethodsWords,
  date: Formatters['date'],
): readonly string[] => [
  ...(settings.clinic.invented ? [words.invented] : []),
  words.data({
    readings: summary.readings,
    visits: summary.visits,
    people: summary.clients,
    from: date(summary.firstVisit),
    asOf: date(summary.asOf),
  }),
];

const counted = <T>(all: readonly Recorded<T>[], write: (value: T) => string) =>
  all.map(({ value, visits }) => ({ value: write(value), n: visits }));

const instrumentSentences = (instrument: RecordedInstrument, words: MethodsWords): readonly string[] => {
  const { visits: of, devices, electrodePaths, postures, frequenciesKhz } = instrument;
  const { recorded, notRecorded } = words;
  const orNone = (n: number, sentence: () => string, none: string): string => (n === 0 ? none : sentence());
  return [
    words.instrument({ visits: of }),
    orNone(
      electrodePaths.length,
      () => recorded.path({ all: counted(electrodePaths, (path) => path), of }),
      notRecorded.path,
    ),
    orNone(
      postures.length,
      () => recorded.posture({ all: counted(postures, (posture) => words.postureName[posture]), of }),
      notRecorded.posture,
    ),
    orNone(
      frequenciesKhz.length,
      () => recorded.frequency({ all: counted(frequenciesKhz, words.kilohertz), of }),
      notRecorded.frequency,
    ),
    orNone(
      devices.length,
      () => words.devices({ devices: devices.length, n: devices.reduce((total, { visits }) => total + visits, 0), of }),
      notRecorded.devices,
    ),
  ];
};

/** How was measured, as far as the data record it, and how readings become a visit’s value. */
export const measurementSentences = ({ summary, instrument }: MethodsInput, words: MethodsWords): readonly string[] => [
  ...(!summary.hasImpedance
    ? [words.noImpedance]
    : instrument === null
      ? [words.posture[summary.posture]]
      : instrumentSentences(instrument, words)),
  words.visitMeans,
  words.height,
];
