import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** A source of chance that gives the same numbers for the same seed in every engine. */
export interface Chance {
  /** A whole number from `least` to `most`, both included, each as likely. */
  whole(least: number, most: number): number;
  /** Normally distributed, mean 0 and deviation 1, as nearly as `normal` says. */
  normal(): number;
}

const FINE = 2 ** 24;

/**
 * Chance from a seed: xoroshiro128+ (Blackman and Vigna 2018), started from the seed's 32-bit FNV-1a hash.
 * Normal values are twelve uniform ones added up, less 6: only whole numbers, sums and a division by a power of two,
 * so that no engine's own logarithm or cosine can change a figure. (Box and Muller's method would need both.)
 */
export function chanceOf(seed: string | number): Chance {
  const generator = xoroshiro128plus(hashOf(String(seed)));
  const whole = (least: number, most: number): number => uniformInt(generator, least, most);
  const normal = (): number => {
    let sum = 0;
    for (let i = 0; i < 12; i += 1) sum += whole(0, FINE - 1) + 0.5;
    return sum / FINE - 6;
  };
  return { whole, normal };
}

/**
 * FNV-1a, 32 bits (Fowler, Noll and Vo; RFC 9923), of the text in UTF-8. The text is brought to Unicode form NFC first,
 * so that a name gives the same figures however its accents were typed.
 */
export function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (const byte of utf8Of(text.normalize('NFC'))) hash = Math.imul(hash ^ byte, 0x01000193);
  return hash | 0;
}

/** The bytes of a text in UTF-8, with the names of the language alone: a TextEncoder is the platform's. */
function utf8Of(text: string): readonly number[] {
  const escaped = encodeURIComponent(text.toWellFormed());
  return (escaped.match(/%[0-9A-F]{2}|[^%]/g) ?? []).map((piece) =>
    piece.length === 1 ? piece.charCodeAt(0) : Number.parseInt(piece.slice(1), 16),
  );
}
