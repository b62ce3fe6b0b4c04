/**
 * Tells of states no oftener than every `pause` ms, the latest always in the end; a state that `isFinal` is told at once. What is
 * told of is shown, and showing a large class costs more than marking a few pieces more of it.
 */
export function atLeisure<S>(
  tell: (state: S) => void,
  isFinal: (state: S) => boolean,
  pause: number,
): (state: S) => void {
  let timer: ReturnType<typeof setTimeout> | null = null;
  let waiting: { readonly state: S } | null = null;
  const rest = (): void => {
    timer = setTimeout(() => {
      timer = null;
      if (waiting === null) return;
      const { state } = waiting;
      waiting = null;
      tell(state);
      rest();
    }, pause);
  };
  return (state) => {
    if (isFinal(state)) {
      if (timer !== null) clearTimeout(timer);
      timer = null;
      waiting = null;
      tell(state);
    } else if (timer === null) {
      tell(state);
      rest();
    } else waiting = { state };
  };
}
