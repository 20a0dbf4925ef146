import { deflateRawSync } from 'node:zlib';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { crc32 } from '../../lib/formats/zip/crc-32';
import { readDirectory } from '../../lib/formats/zip/read-directory';
import { unpackToBlob } from '../../lib/formats/zip/unpack';

const archive = (files: Parameters<typeof zipSync>[0]) => new Blob([zipSync(files)]);

describe('the check sum', () => {
  test('of 123456789 is the published check value CBF43926', () => {
    expect(crc32(strToU8('123456789')).toString(16)).toBe('cbf43926');
    expect(crc32(strToU8('6789'), crc32(strToU8('12345')))).toBe(0xcbf43926);
  });
});

describe('a zip archive', () => {
  const TEXT = 'a,b\n1,2\n'.repeat(50_000);

  test('gives its members packed or stored, folders and all', async () => {
    const blob = archive({
      'two/b.csv': [strToU8(TEXT), { level: 9 }],
      'a.csv': [strToU8('x'), { level: 0 }],
      'folder/': new Uint8Array(),
    });
    const entries = await readDirectory(blob);
    expect(entries.map(({ path, bytes, method }) => [path, bytes, method])).toEqual([
      ['two/b.csv', TEXT.length, 8],
      ['a.csv', 1, 0],
      ['folder/', 0, 8],
    ]);
    const texts = await Promise.all(entries.map(async (entry) => (await unpackToBlob(blob, entry)).text()));
    expect(texts).toEqual([TEXT, 'x', '']);
  });

  test('may have a comment behind it', async () => {
    const bytes = zipSync({ 'a.csv': strToU8('x') });
    bytes[bytes.length - 2] = 5;
    expect((await readDirectory(new Blob([bytes, 'hello']))).length).toBe(1);
  });

  test('whose member is not what the directory says is damaged', async () => {
    const bytes = zipSync({ 'a.csv': [strToU8(TEXT), { level: 0 }] });
    bytes[5000] = (bytes[5000] ?? 0) ^ 1;
    const blob = new Blob([bytes]);
    const [entry] = await readDirectory(blob);
    expect(entry).toBeDefined();
    if (entry !== undefined) await expect(unpackToBlob(blob, entry)).rejects.toMatchObject({ name: 'DamagedFile' });
  });

  test('that unpacks to more than it says is stopped at once', async () => {
    const packed = deflateRawSync(new Uint8Array(60_000_000));
    const header = new DataView(new ArrayBuffer(30));
    header.setUint32(0, 0x04034b50, true);
    const blob = new Blob([header, packed]);
    const entry = {
      path: 'a',
      isEncrypted: false,
      method: 8,
      crc32: 0,
      packedBytes: packed.length,
      bytes: 10,
      offset: 0,
    };
    await expect(unpackToBlob(blob, entry)).rejects.toMatchObject({
      message: expect.stringContaining('larger') as string,
    });
  });

  test('of large numbers (ZIP64) is read', async () => {
    const name = strToU8('a.csv');
    const body = strToU8('x,y\n');
    const local = new DataView(new ArrayBuffer(30));
    local.setUint32(0, 0x04034b50, true);
    local.setUint16(26, name.length, true);
    const entry = new DataView(new ArrayBuffer(46));
    entry.setUint32(0, 0x02014b50, true);
    entry.setUint32(16, crc32(body), true);
    for (const place of [20, 24, 42]) entry.setUint32(place, 0xffffffff, true);
    entry.setUint16(28, name.length, true);
    entry.setUint16(30, 28, true);
    const extra = new DataView(new ArrayBuffer(28));
    extra.setUint16(0, 1, true);
    extra.setUint16(2, 24, true);
    extra.setBigUint64(4, BigInt(body.length), true);
    extra.setBigUint64(12, BigInt(body.length), true);
    const start = 30 + name.length + body.length;
    const end = new DataView(new ArrayBuffer(56 + 20 + 22));
    end.setUint32(0, 0x06064b50, true);
    end.setBigUint64(40, BigInt(46 + name.length + 28), true);
    end.setBigUint64(48, BigInt(start), true);
    end.setUint32(56, 0x07064b50, true);
    end.setBigUint64(64, BigInt(start + 46 + name.length + 28), true);
    end.setUint32(76, 0x06054b50, true);
    const blob = new Blob([local, name, body, entry, name, extra, end]);
    const [read] = await readDirectory(blob);
    expect(read).toMatchObject({ path: 'a.csv', bytes: 4, packedBytes: 4, offset: 0 });
    if (read !== undefined) expect(await (await unpackToBlob(blob, read)).text()).toBe('x,y\n');
  });
});
