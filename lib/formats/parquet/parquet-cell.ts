import type { SchemaElement } from 'hyparquet';
import { utf8OrNull } from '../csv/text-encoding';
import type { RawCell } from '../raw-table';

const two = (value: number): string => String(value).padStart(2, '0');

const isoOrEmpty = (milliseconds: number, length: number): string => {
  const date = new Date(milliseconds);
  return Number.isNaN(date.getTime()) ? '' : date.toISOString().slice(0, length);
};

/** Parsers of dates and times as ISO text; fractions of a second are dropped. An instant is given in UTC. */
export const isoParsers = {
  timestampFromMilliseconds: (value: bigint) => isoOrEmpty(Number(value), 19),
  timestampFromMicroseconds: (value: bigint) => isoOrEmpty(Number(value / 1000n), 19),
  timestampFromNanoseconds: (value: bigint) => isoOrEmpty(Number(value / 1_000_000n), 19),
  dateFromDays: (value: number) => isoOrEmpty(value * 86_400_000, 10),
  jsonFromBytes: (bytes: Uint8Array | undefined) => (bytes === undefined ? undefined : (utf8OrNull(bytes) ?? '')),
};

const clock = (seconds: number): string =>
  `${two(Math.floor(seconds / 3600))}:${two(Math.floor(seconds / 60) % 60)}:${two(Math.floor(seconds) % 60)}`;

const perSecond = ({ converted_type: converted, logical_type: logical }: SchemaElement): number | null => {
  if (converted === 'TIME_MILLIS') return 1e3;
  if (converted === 'TIME_MICROS') return 1e6;
  if (logical?.type !== 'TIME') return null;
  return { MILLIS: 1e3, MICROS: 1e6, NANOS: 1e9 }[logical.unit];
};

/** The shortest number that is this one in single precision: 70.3, not 70.30000305. */
const shortest = (single: number): number => {
  for (let digits = 6; digits <= 8; digits += 1) {
    const candidate = Number(single.toPrecision(digits));
    if (Math.fround(candidate) === single) return candidate;
  }
  return single;
};

const integerOf = (bytes: Uint8Array): bigint => {
  let value = 0n;
  for (const byte of bytes) value = value * 256n + BigInt(byte);
  return BigInt.asIntN(8 * bytes.length, value);
};

/** Text where a number would lose digits. */
const plainNumber = (text: string): RawCell => {
  const digits = text.replace(/\D/g, '').replace(/^0+/, '').length;
  return digits <= 15 ? Number(text) : text;
};

const decimal = (value: number | bigint | Uint8Array, scale: number): RawCell => {
  const whole = value instanceof Uint8Array ? integerOf(value) : BigInt(value);
  const digits = String(whole < 0n ? -whole : whole).padStart(scale + 1, '0');
  const point = digits.length - scale;
  return plainNumber(`${whole < 0n ? '-' : ''}${digits.slice(0, point)}${scale > 0 ? `.${digits.slice(point)}` : ''}`);
};

const jsonText = (value: object): string =>
  JSON.stringify(value, (_, part: unknown) => {
    if (typeof part === 'bigint') return Number(part);
    return part instanceof Uint8Array ? (utf8OrNull(part) ?? '') : part;
  });

/** A value of a Parquet column as a cell. `scale`: the value is a DECIMAL as it is stored. */
export const parquetCell = (value: unknown, element: SchemaElement, scale: number | null): RawCell => {
  if (value === null || value === undefined) return '';
  if (scale !== null && (typeof value === 'number' || typeof value === 'bigint' || value instanceof Uint8Array))
    return decimal(value, scale);
  const unit = perSecond(element);
  if (unit !== null && (typeof value === 'number' || typeof value === 'bigint')) return clock(Number(value) / unit);
  if (typeof value === 'string' || typeof value === 'boolean') return value;
  if (typeof value === 'bigint') return plainNumber(String(value));
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) return Number.isNaN(value) ? '' : String(value);
    return element.type === 'FLOAT' ? shortest(value) : value;
  }
  if (value instanceof Uint8Array)
    return utf8OrNull(value) ?? [...value].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return typeof value === 'object' ? jsonText(value) : '';
};
