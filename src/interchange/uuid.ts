/*
 * Identifiers that follow from what they name, by RFC 9562, version 5: the same record gives the same ones, here and elsewhere. SHA-1 is
 * written out, since the platform's own is asynchronous; nothing here is a secret.
 */

const turn = (word: number, by: number): number => (word << by) | (word >>> (32 - by));

/** The bytes followed by the padding of SHA-1: one bit, zeros, and the length in bits. */
function padded(bytes: Uint8Array): DataView {
  const length = Math.ceil((bytes.length + 9) / 64) * 64;
  const whole = new Uint8Array(length);
  whole.set(bytes);
  whole[bytes.length] = 0x80;
  const view = new DataView(whole.buffer);
  view.setUint32(length - 8, Math.floor(bytes.length / 0x20000000));
  view.setUint32(length - 4, (bytes.length * 8) >>> 0);
  return view;
}

const ROUNDS = [0x5a827999, 0x6ed9eba1, 0x8f1bbcdc, 0xca62c1d6];

/** SHA-1 (FIPS 180-4) of some bytes. */
function sha1(bytes: Uint8Array): Uint8Array {
  const view = padded(bytes);
  const state = [0x67452301, 0xefcdab89, 0x98badcfe, 0x10325476, 0xc3d2e1f0];
  const words = new Int32Array(80);
  for (let at = 0; at < view.byteLength; at += 64) {
    for (let i = 0; i < 16; i += 1) words[i] = view.getInt32(at + i * 4);
    for (let i = 16; i < 80; i += 1)
      words[i] = turn(
        (words[i - 3] as number) ^
          (words[i - 8] as number) ^
          (words[i - 14] as number) ^
          (words[i - 16] as number),
        1,
      );
    let [a, b, c, d, e] = state as [number, number, number, number, number];
    for (let i = 0; i < 80; i += 1) {
      const round = Math.floor(i / 20);
      const mix = round === 0 ? (b & c) | (~b & d) : round === 2 ? (b & c) | (b & d) | (c & d) : b ^ c ^ d;
      const next = (turn(a, 5) + mix + e + (ROUNDS[round] as number) + (words[i] as number)) | 0;
      e = d;
      d = c;
      c = turn(b, 30);
      b = a;
      a = next;
    }
    [a, b, c, d, e].forEach((word, i) => (state[i] = ((state[i] as number) + word) | 0));
  }
  const out = new DataView(new ArrayBuffer(20));
  state.forEach((word, i) => out.setInt32(i * 4, word));
  return new Uint8Array(out.buffer);
}

/** The namespace of this library's identifiers, made once by chance. */
const NAMESPACE = 'd4a3f0c2-6f0e-4b57-9d3a-2a5b7c1e8f46';
const SPACE = (NAMESPACE.replaceAll('-', '').match(/../g) ?? []).map((hex) => Number.parseInt(hex, 16));
const HEX = Array.from({ length: 256 }, (_, byte) => byte.toString(16).padStart(2, '0'));

/** A version 5 UUID of a text. */
export function uuidOf(name: string): string {
  const text = new TextEncoder().encode(name);
  const named = new Uint8Array(SPACE.length + text.length);
  named.set(SPACE);
  named.set(text, SPACE.length);
  const bytes = sha1(named).slice(0, 16);
  bytes[6] = ((bytes[6] as number) & 0x0f) | 0x50;
  bytes[8] = ((bytes[8] as number) & 0x3f) | 0x80;
  const hex = Array.from(bytes, (byte) => HEX[byte]).join('');
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join('-');
}
