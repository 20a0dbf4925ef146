import { Parser } from 'saxen';
import { DamagedFile } from '../raw-table';

/** The value of an attribute, found by its name without a prefix. */
export type Attribute = (name: string) => string | undefined;

export interface XmlHandler {
  open?(name: string, attribute: Attribute): void;
  text?(text: string): void;
  close?(name: string): void;
}

const withoutPrefix = (name: string): string => name.slice(name.indexOf(':') + 1);

const valueOf = (attributes: Readonly<Record<string, string>>, name: string): string | undefined => {
  const direct = attributes[name];
  if (direct !== undefined) return direct;
  for (const key in attributes) if (withoutPrefix(key) === name) return attributes[key];
  return undefined;
};

/** Walks over an XML text. Names come without their prefix, text with its entities resolved. Throws a `DamagedFile`. */
export const parseXml = (xml: string, handler: XmlHandler): void => {
  const parser = new Parser();
  parser.on('openTag', (name, attributes, decode) => {
    let read: Readonly<Record<string, string>> | null = null;
    handler.open?.(withoutPrefix(name), (wanted) => {
      read ??= attributes();
      const value = valueOf(read, wanted);
      return value?.includes('&') === true ? decode(value) : value;
    });
  });
  parser.on('closeTag', (name) => handler.close?.(withoutPrefix(name)));
  parser.on('text', (text, decode) => handler.text?.(text.includes('&') ? decode(text) : text));
  parser.on('cdata', (text) => handler.text?.(text));
  parser.on('error', (cause) => {
    throw new DamagedFile('A part of the workbook is not well-formed.', { cause });
  });
  parser.parse(xml);
};
