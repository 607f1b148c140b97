import { useState } from 'preact/hooks';
import { seatWords } from '../../shared/language/en/seat.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Choice } from '../../shared/ui/choice.tsx';
import { Dialog } from '../../shared/ui/dialog.tsx';
import { LanguageChoice } from '../../shared/ui/language-choice.tsx';
import { Switch } from '../../shared/ui/switch.tsx';
import { TextField } from '../../shared/ui/text-field.tsx';
import { applyTheme, readTheme, saveTheme, type ThemeChoice, themeChoices } from '../../shared/ui/theme.ts';
import type { SeatView } from '../../shared/wire/views.ts';
import { words } from '../language.ts';
import { PageTitle } from '../page/page-title.tsx';
import { useRoom } from '../room/room.ts';
import { soundOn, tryChime, turnSound } from '../sound/chime.ts';
import { promptsSpoken, turnPrompts } from '../sound/spoken-prompt.ts';
import { Cautions } from './cautions.tsx';
import { OtherDevice } from './other-device.tsx';
import { SeatDevices } from './seat-devices.tsx';
import { nameError } from './seat-form.tsx';

/** What a guest may change about their own place and their own device. */
export function MySeat({ own }: { readonly own: SeatView }) {
  const room = useRoom();
  const [cautions, setCautions] = useState(false);
  const back = () => {
    room.page.value = { at: 'room' };
  };
  if (cautions) return <Cautions acceptLabel={seatWords.close} onAccept={() => setCautions(false)} />;
  return (
    <main class="page">
      <PageTitle>{seatWords.title}</PageTitle>
      <Rename own={own} />
      <section class="stack-tight">
        <Switch
          label={seatWords.leftHanded}
          on={own.leftHanded}
          onTurn={(leftHanded) => void room.ask({ type: 'ChangeSeat', leftHanded })}
        />
        <Switch
          label={seatWords.atHome}
          on={own.remote}
          onTurn={(remote) => void room.ask({ type: 'ChangeSeat', remote })}
        />
        <Switch label={seatWords.sound} hint={seatWords.soundHint} on={soundOn.value} onTurn={turnSound} />
        {soundOn.value && (
          <Button kind="quiet" onPress={tryChime}>
            {seatWords.tryIt}
          </Button>
        )}
        <Switch
          label={words.seat.spoken}
          hint={seatWords.spokenHint}
          on={promptsSpoken.value}
          onTurn={turnPrompts}
        />
      </section>
      <ThemeChooser />
      <LanguageChoice />
      <OtherDevice />
      <SeatDevices />
      <section class="stack">
        <Button kind="quiet" onPress={() => setCautions(true)}>
          {seatWords.cautions}
        </Button>
        <Leave />
      </section>
      <div class="foot">
        <Button kind="primary" size="big" onPress={back}>
          {words.notes.back}
        </Button>
      </div>
    </main>
  );
}

function Rename({ own }: { readonly own: SeatView }) {
  const room = useRoom();
  const [name, setName] = useState(own.name);
  const [error, setError] = useState<string>();
  const change = async (): Promise<void> => {
    const wrong = nameError(name);
    setError(wrong);
    if (wrong !== undefined) return;
    if (await room.ask({ type: 'ChangeSeat', name: name.trim() })) room.status.say(seatWords.saved);
  };
  return (
    <form
      class="stack-tight"
      onSubmit={(event) => {
        event.preventDefault();
        void change();
      }}
    >
      <TextField
        label={seatWords.name}
        error={error}
        value={name}
        onInput={setName}
        autocomplete="given-name"
      />
      {name.trim() !== own.name && (
        <button type="submit" class="button">
          {seatWords.rename}
        </button>
      )}
    </form>
  );
}

function ThemeChooser() {
  const [theme, setTheme] = useState(readTheme);
  const choose = (choice: ThemeChoice): void => {
    setTheme(choice);
    saveTheme(choice);
    applyTheme(choice, document.documentElement);
  };
  return (
    <Choice
      legend={seatWords.theme}
      across
      options={themeChoices.map((value) => ({ value, label: seatWords.themes[value] }))}
      value={theme}
      onChoose={choose}
    />
  );
}

function Leave() {
  const room = useRoom();
  const [asking, setAsking] = useState(false);
  return (
    <>
      <Button kind="danger" onPress={() => setAsking(true)}>
        {seatWords.leave}
      </Button>
      {asking && (
        <Dialog
          title={seatWords.leave}
          onClose={() => setAsking(false)}
          close={seatWords.stay}
          actions={
            <Button
              kind="danger"
              onPress={() => {
                setAsking(false);
                void room.ask({ type: 'LeaveTable' });
              }}
            >
              {seatWords.leave}
            </Button>
          }
        >
          <p>{seatWords.leaveSure}</p>
        </Dialog>
      )}
    </>
  );
}
