/**
 * Call `bark` when `seconds` have been counted; the returned function calls the dog off.
 *
 * It counts single seconds because a phone that slept through one long timer would let it run out
 * at once on waking, with the awaited reply still on its way. A nap costs one second here.
 */
export function watchdog(seconds: number, bark: () => void): () => void {
  let left = seconds;
  const timer = setInterval(() => {
    left -= 1;
    if (left > 0) return;
    clearInterval(timer);
    bark();
  }, 1000);
  return () => clearInterval(timer);
}
