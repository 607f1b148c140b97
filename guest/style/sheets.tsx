import { GlassArc } from '../../shared/ui/glass-arc.tsx';
import { PrintPage } from '../../shared/ui/print-page.tsx';
import { words } from './sample-words.ts';

export function Sheets() {
  return (
    <section class="style-section">
      <h2>Paper</h2>
      <PrintPage
        title="A place at the table"
        running="The ferry house, an evening in March"
        foot={<p>{words.sheetFoot}</p>}
      >
        <GlassArc
          glasses={['waiting', 'waiting', 'waiting', 'waiting', 'waiting', 'waiting']}
          label="A mat with six glasses"
          caption="Six glasses"
        />
        <p class="say">{words.say}</p>
      </PrintPage>
    </section>
  );
}
