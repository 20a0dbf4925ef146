import { strToU8, zipSync } from 'fflate';

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const LINKS = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';

interface Parts {
  readonly sheets: Readonly<Record<string, string>>;
  readonly texts?: readonly string[];
  readonly formats?: readonly string[];
  readonly is1904?: boolean;
  readonly hidden?: readonly string[];
}

/** The bytes of a workbook after ECMA-376-1 whose sheets' rows are given as XML; style n shows by format n. */
export const makeWorkbook = ({ sheets, texts = [], formats = [], is1904 = false, hidden = [] }: Parts) => {
  const names = Object.keys(sheets);
  const files: Record<string, string> = {
    '[Content_Types].xml': '<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"/>',
    'xl/workbook.xml': `<workbook xmlns="${MAIN}" xmlns:r="${LINKS}"><workbookPr date1904="${is1904 ? '1' : '0'}"/><sheets>${names
      .map(
        (name, index) =>
          `<sheet name="${name}" sheetId="${String(index + 1)}" r:id="rId${String(index)}"${hidden.includes(name) ? ' state="hidden"' : ''}/>`,
      )
      .join('')}</sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': `<Relationships>${names
      .map(
        (_, index) =>
          `<Relationship Id="rId${String(index)}" Type="${LINKS}/worksheet" Target="worksheets/s${String(index)}.xml"/>`,
      )
      .join(
        '',
      )}<Relationship Id="a" Type="${LINKS}/sharedStrings" Target="/xl/texts.xml"/><Relationship Id="b" Type="${LINKS}/styles" Target="styles.xml"/></Relationships>`,
    'xl/texts.xml': `<sst xmlns="${MAIN}">${texts.map((text) => `<si>${text}</si>`).join('')}</sst>`,
    'xl/styles.xml': `<styleSheet xmlns="${MAIN}"><numFmts>${formats
      .map(
        (code, index) => `<numFmt numFmtId="${String(200 + index)}" formatCode="${code.replaceAll('"', '&quot;')}"/>`,
      )
      .join('')}</numFmts><cellStyleXfs><xf numFmtId="14"/></cellStyleXfs><cellXfs><xf numFmtId="0"/>${formats
      .map((_, index) => `<xf numFmtId="${String(200 + index)}"/>`)
      .join('')}</cellXfs></styleSheet>`,
  };
  names.forEach((name, index) => {
    files[`xl/worksheets/s${String(index)}.xml`] =
      `<?xml version="1.0"?><worksheet xmlns="${MAIN}"><dimension ref="A1"/><sheetData>${sheets[name] ?? ''}</sheetData><pageMargins/></worksheet>`;
  });
  return zipSync(Object.fromEntries(Object.entries(files).map(([path, text]) => [path, strToU8(text)])));
};
