import { seatWords } from '../../shared/language/en/seat.ts';
import { Button } from '../../shared/ui/button.tsx';
import { soundOn, tryChime } from '../sound/chime.ts';

/** While the room gathers a tone does not disturb, and whoever hears none learns it before they wait for it. */
export function ToneTest() {
  if (!soundOn.value) return null;
  return (
    <section class="stack-tight">
      <Button onPress={tryChime}>{seatWords.tryTone}</Button>
      <p class="soft small">{seatWords.tryToneHint}</p>
    </section>
  );
}
