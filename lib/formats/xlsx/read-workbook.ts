import { DamagedFile, TooLargeFile, type ReadOptions } from '../raw-table';
import { unpack } from '../zip/unpack';
import type { ZipEntry } from '../zip/zip-entry';
import { builtInKind, kindOfCode, type NumberKind } from './number-format';
import { parseXml } from './parse-xml';
import { unescapeText } from './rich-text';

/** A sheet of a workbook and the part that holds it. */
export interface Sheet {
  readonly name: string;
  readonly entry: ZipEntry;
}

/** What all sheets of a workbook share. */
export interface Workbook {
  readonly sheets: readonly Sheet[];
  readonly is1904: boolean;
  readonly texts: readonly string[];
  /** What a number with the style of this place stands for. */
  readonly kinds: readonly NumberKind[];
}

/** More shared text than this is not held. */
const LARGEST_PART = 400 * 1024 * 1024;

const partText = async (blob: Blob, entry: ZipEntry, options: ReadOptions): Promise<string> => {
  const { limitBytes = LARGEST_PART } = options;
  if (entry.bytes > limitBytes) throw new TooLargeFile('workbook', limitBytes);
  const decoder = new TextDecoder();
  let text = '';
  for await (const piece of unpack(blob, entry, options)) text += decoder.decode(piece, { stream: true });
  return text + decoder.decode();
};

const resolved = (base: string, target: string): string => {
  const parts = target.startsWith('/') ? [] : base.split('/').slice(0, -1);
  for (const step of target.split('/'))
    if (step === '..') parts.pop();
    else if (step !== '.' && step !== '') parts.push(step);
  return parts.join('/');
};

interface Relation {
  readonly id: string;
  readonly kind: string;
  readonly path: string;
}

const relationsOf = (xml: string, base: string): readonly Relation[] => {
  const relations: Relation[] = [];
  parseXml(xml, {
    open: (name, attribute) => {
      if (name !== 'Relationship') return;
      const kind = attribute('Type') ?? '';
      relations.push({
        id: attribute('Id') ?? '',
        kind: kind.slice(kind.lastIndexOf('/') + 1),
        path: resolved(base, attribute('Target') ?? ''),
      });
    },
  });
  return relations;
};

const textsOf = (xml: string): readonly string[] => {
  const texts: string[] = [];
  let [current, inText, inPhonetic] = ['', false, false];
  parseXml(xml, {
    open: (name) => {
      if (name === 'si') current = '';
      if (name === 't') inText = true;
      if (name === 'rPh') inPhonetic = true;
    },
    text: (text) => {
      if (inText && !inPhonetic) current += text;
    },
    close: (name) => {
      if (name === 't') inText = false;
      if (name === 'rPh') inPhonetic = false;
      if (name === 'si') texts.push(unescapeText(current));
    },
  });
  return texts;
};

const kindsOf = (xml: string): readonly NumberKind[] => {
  const codes = new Map<number, NumberKind>();
  const kinds: NumberKind[] = [];
  let inCells = false;
  parseXml(xml, {
    open: (name, attribute) => {
      if (name === 'numFmt') codes.set(Number(attribute('numFmtId')), kindOfCode(attribute('formatCode') ?? ''));
      if (name === 'cellXfs') inCells = true;
      if (name !== 'xf' || !inCells) return;
      const id = Number(attribute('numFmtId') ?? 0);
      kinds.push(codes.get(id) ?? builtInKind(id));
    },
    close: (name) => {
      if (name === 'cellXfs') inCells = false;
    },
  });
  return kinds;
};

/** Names and relations of the sheets; visible ones first. */
const sheetsOf = (xml: string): { is1904: boolean; sheets: readonly { name: string; id: string }[] } => {
  const sheets: { name: string; id: string; isHidden: boolean }[] = [];
  let is1904 = false;
  parseXml(xml, {
    open: (name, attribute) => {
      if (name === 'workbookPr') is1904 = ['1', 'true', 'on'].includes(attribute('date1904') ?? '');
      if (name !== 'sheet') return;
      const isHidden = (attribute('state') ?? 'visible') !== 'visible';
      sheets.push({ name: attribute('name') ?? '', id: attribute('id') ?? '', isHidden });
    },
  });
  return { is1904, sheets: sheets.sort((a, b) => Number(a.isHidden) - Number(b.isHidden)) };
};

/** The part that holds the workbook itself; null where the archive is none. */
export const workbookPath = (entries: readonly ZipEntry[]): string | null =>
  entries.find(({ path }) => /(^|\/)workbook\d*\.xml$/.test(path))?.path ?? null;

/**
 * The sheets, shared texts and cell styles of an Office Open XML workbook. Rejects with a `DamagedFile`.
 *
 * Source: ECMA-376-1, sections 18.2 (workbook), 18.4 (shared strings), 18.8 (styles).
 */
export const readWorkbook = async (
  blob: Blob,
  entries: readonly ZipEntry[],
  options: ReadOptions = {},
): Promise<Workbook> => {
  const byPath = new Map(entries.map((entry) => [entry.path, entry]));
  const main = workbookPath(entries) ?? '';
  const read = async (path: string | undefined): Promise<string | null> => {
    const entry = byPath.get(path ?? '');
    return entry === undefined ? null : partText(blob, entry, options);
  };
  const workbook = await read(main);
  const links = await read(resolved(main, `_rels/${main.slice(main.lastIndexOf('/') + 1)}.rels`));
  if (workbook === null || links === null) throw new DamagedFile('The workbook has no list of sheets.');
  const relations = relationsOf(links, main);
  const pathOf = (kind: string): string | undefined => relations.find((relation) => relation.kind === kind)?.path;
  const { is1904, sheets } = sheetsOf(workbook);
  return {
    is1904,
    texts: textsOf((await read(pathOf('sharedStrings'))) ?? '<sst/>'),
    kinds: kindsOf((await read(pathOf('styles'))) ?? '<styleSheet/>'),
    sheets: sheets.flatMap(({ name, id }) => {
      const relation = relations.find((candidate) => candidate.id === id && candidate.kind === 'worksheet');
      const entry = byPath.get(relation?.path ?? '');
      return entry === undefined ? [] : [{ name, entry }];
    }),
  };
};
