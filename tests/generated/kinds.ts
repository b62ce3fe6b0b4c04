/** What generated work may be. */
export type Kind =
  | 'right'
  | 'misread'
  | 'carried'
  | 'typed'
  | 'unanswered'
  | 'damaged'
  | 'oversized'
  | 'unknown'
  | 'repeated';

export interface KindOfWork {
  /** How many of a hundred pieces are of this kind. */
  readonly share: number;
  /** Whether it is marked, or refused with a sentence. */
  readonly comesOut: 'row' | 'refusal';
}

/** Every kind with its share. An oversized piece is half a megabyte, so there are few. */
export const kinds: Readonly<Record<Kind, KindOfWork>> = {
  right: { share: 30, comesOut: 'row' },
  misread: { share: 25, comesOut: 'row' },
  carried: { share: 10, comesOut: 'row' },
  typed: { share: 9, comesOut: 'row' },
  unanswered: { share: 8, comesOut: 'row' },
  damaged: { share: 8, comesOut: 'refusal' },
  oversized: { share: 1, comesOut: 'refusal' },
  unknown: { share: 4, comesOut: 'refusal' },
  repeated: { share: 5, comesOut: 'row' },
};
