/** What an expression comes to: a length in mm, an angle in radians, or a bare number. */
export interface Quantity {
  readonly dimension: 'length' | 'angle' | 'number';
  readonly value: number;
}

export function millimetres(value: number): Quantity {
  return { dimension: 'length', value };
}

export function radians(value: number): Quantity {
  return { dimension: 'angle', value };
}

export function bare(value: number): Quantity {
  return { dimension: 'number', value };
}
