/** A share in whole hundredths. */
export function percent(share: number): string {
  return String(Math.round(share * 100));
}

/** A coefficient to a hundredth. */
export function hundredth(value: number): string {
  return (Math.round(value * 100) / 100).toFixed(2);
}
