/** Control characters that XML cannot hold are written as `_x000D_`. Source: ECMA-376-1, section 22.9.2.19 (ST_Xstring). */
export const unescapeText = (text: string): string =>
  (text.includes('_x')
    ? text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)))
    : text
  ).replace(/\r\n?/g, '\n');
